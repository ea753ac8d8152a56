/**
 * The validation table as a page in the style of the report. It is self-contained, opens from disk
 * without a network and prints well.
 */
package longbough.runner.validate.page;
