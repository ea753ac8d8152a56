/**
 * Recovery or starvation: one thinning of several doses against dry years, the chance to live and
 * the years until the foliage is full again. Plays and counts; tables, charts and pages of it are
 * made elsewhere.
 */
package longbough.runner.dose;
