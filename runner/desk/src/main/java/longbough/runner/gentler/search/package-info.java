/**
 * Makes plans out of a few numbers and looks for the best ones: by evolution strategy, then by
 * steps, then the plans that no other beats in every respect.
 */
package longbough.runner.gentler.search;
