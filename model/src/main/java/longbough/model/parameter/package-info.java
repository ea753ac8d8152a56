/**
 * The numbers that the processes read, one record a theme, filled from the sourced tables before
 * the first year; and the climate and site that drive one year. Never written while a tree is being
 * played.
 */
package longbough.model.parameter;
