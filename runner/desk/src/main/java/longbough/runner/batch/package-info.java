/**
 * Many trees in one run: each is played left alone and under its own regimes, and ranked by how
 * much trouble it is in. A tree that can't be read or played is listed and does not stop the rest.
 */
package longbough.runner.batch;
