/**
 * A picture as data: shapes in painting order with a title and a description in words. Two writers
 * turn the same scene into SVG text and into a PNG, so that both show the same.
 */
package longbough.runner.drawing.scene;
