/**
 * Puts a finished client report into its folder: the page for the screen, the same on paper, its
 * tables and the manifest. Only knows what goes where; each thing is made in its own package.
 */
package longbough.runner.client.publish;
