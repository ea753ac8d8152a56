/**
 * Shapes of the trunk: cross-sections with decay on a polar grid, their area and section modulus.
 * Arithmetic only; nothing here knows how decay comes about.
 */
package longbough.model.geometry;
