/**
 * The trunk cut open: lengthwise with decay columns and barrier zones, and across at its weakest
 * height with the sound wood that is left. Only what the state holds is shown.
 */
package longbough.runner.drawing.section;
