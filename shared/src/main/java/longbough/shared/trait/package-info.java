/**
 * What is known about each species: its names, its classes and its numbers. The library inherits
 * what a species file leaves out from the functional group it names.
 */
package longbough.shared.trait;
