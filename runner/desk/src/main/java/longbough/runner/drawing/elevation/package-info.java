/**
 * The tree seen from the side, at chosen years and to one scale: trunk, limbs, foliage by zone,
 * sprouts, deadwood and wounds. Everything stands where the state says; only what the state doesn't
 * hold (the bends of a limb, the place of each leaf) is made up, always in the same way.
 */
package longbough.runner.drawing.elevation;
