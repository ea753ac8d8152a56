/**
 * How fast the model is: benchmarks that are built with the rest and run by hand. Nothing depends
 * on this package, and nothing here is part of the product.
 */
package longbough.runner.bench;
