/**
 * The tree at one moment, as plain arrays without biology: trunk, limbs, pools, sprouts, wounds,
 * roots. Owned by one thread and reused from future to future, so that the yearly loop allocates
 * nothing.
 */
package longbough.model.state;
