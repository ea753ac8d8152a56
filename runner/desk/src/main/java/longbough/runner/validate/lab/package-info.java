/**
 * Trees on trial: plays a mean tree of a species under given visits over common futures. The
 * experiments behind the published checks are set up from it.
 */
package longbough.runner.validate.lab;
