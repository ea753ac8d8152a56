/**
 * Ranges, and checks that return the value they checked. They refuse NaN and name the quantity, its
 * unit and its limit.
 */
package longbough.shared.quantity;
