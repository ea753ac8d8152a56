/**
 * Mistakes found in input, each with file, line, what was found, what is allowed and how to mend
 * it. They are collected and reported together rather than one at a time.
 */
package longbough.shared.problem;
