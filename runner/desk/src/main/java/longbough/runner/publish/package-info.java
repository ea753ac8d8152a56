/**
 * Puts a finished comparison into its folder: tidy files, charts, drawings, report and manifest.
 * Only knows what goes where; each thing is made in its own package.
 */
package longbough.runner.publish;
