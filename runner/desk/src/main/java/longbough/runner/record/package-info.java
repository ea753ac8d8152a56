/**
 * One tree asked for in the terminal, question by question: with units, a default where the species
 * and the trunk suggest one, a check of every answer as it is given, and the way back.
 */
package longbough.runner.record;
