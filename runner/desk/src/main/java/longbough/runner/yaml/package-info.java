/**
 * Reads hostile YAML safely and binds it, key by key, to plain records: first the limits of the
 * file, then its events, then its nodes. Every mistake is kept with its line and column, so that a
 * whole file's mistakes are reported together.
 */
package longbough.runner.yaml;
