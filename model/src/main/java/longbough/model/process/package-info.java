/**
 * What happens in a tree, one class a process, each with its equation and source in its header. A
 * process knows the state, the parameters and the year at hand, but no other process.
 */
package longbough.model.process;
