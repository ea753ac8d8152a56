/**
 * Physical edits of a tree: limbs, trunk and sprouts cut, wounds opened, carbon booked. Knows no
 * operation and no regime; the editors of the operations are built from it.
 */
package longbough.model.surgery;
