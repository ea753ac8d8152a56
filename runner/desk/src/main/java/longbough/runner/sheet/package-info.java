/**
 * Tables that people bring along, from CSV files or workbooks (XLSX), as plain rows of text that
 * know their place. Nothing is believed of a file before it was bounded: size, rows, columns,
 * length of a cell, and for workbooks what they unpack to.
 */
package longbough.runner.sheet;
