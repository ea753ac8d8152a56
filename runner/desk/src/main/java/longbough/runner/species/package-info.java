/**
 * Shows the species library on the terminal: the whole list, or one species number by number. Each
 * number is shown with its unit, range, basis and source, and says whether it is the species' own.
 */
package longbough.runner.species;
