/**
 * The tree as an arborist measured it, before it is turned into state. What was not measured is
 * reconstructed and said so.
 */
package longbough.model.tree;
