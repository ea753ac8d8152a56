/**
 * What a client wants of a tree, and how far a tree fulfils it: read off the limbs and the foliage
 * of its crown. Knows nothing of plans.
 */
package longbough.runner.wish;
