/**
 * The pictures of the client report: the tree under each plan over the years, and a few charts.
 * Their words come from the messages, so that a report is in one language throughout.
 */
package longbough.runner.client.picture;
