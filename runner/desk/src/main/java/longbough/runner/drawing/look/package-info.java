/**
 * What every drawing shares: the states to draw, how the species looks, our palette, and the
 * furniture of a picture (labels, legend, scale bar). Nothing here knows which drawing is made.
 */
package longbough.runner.drawing.look;
