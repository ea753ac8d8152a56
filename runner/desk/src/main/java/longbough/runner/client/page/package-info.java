/**
 * The client report, part by part: a few pages for the one who owns the tree, as one self-contained
 * page for the screen and as the page that becomes paper. Every sentence comes from the messages.
 */
package longbough.runner.client.page;
