/**
 * Elementary functions in plain arithmetic. They give the same bits on every machine, which the
 * platform's own do not promise.
 */
package longbough.model.numeric;
