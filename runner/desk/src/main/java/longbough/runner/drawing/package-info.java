/**
 * Drawings of one tree under one regime at chosen years: from the side, with its trunk cut open
 * lengthwise, and cut across. Start at {@code TreeDrawing}; {@code Drawings} writes the files.
 */
package longbough.runner.drawing;
