/**
 * Trees as people note them on site, metric or in US units, turned into scenario files. Each value
 * remembers the cell it came from, so that whatever a scenario may not hold is told by row and
 * column.
 */
package longbough.runner.survey;
