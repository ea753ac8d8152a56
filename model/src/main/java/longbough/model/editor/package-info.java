/**
 * One editor for each operation of a regime: it decides which limbs and how much, the surgery does
 * the physical edit. An editor sees one operation and the tree, never the regime.
 */
package longbough.model.editor;
