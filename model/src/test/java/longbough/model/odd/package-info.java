/**
 * Writes the parts of {@code model/ODD.md} that follow from the code and the data files. A test
 * compares them with the committed file, so that the description can't drift.
 */
package longbough.model.odd;
