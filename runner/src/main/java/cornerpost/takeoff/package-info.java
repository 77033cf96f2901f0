/**
 * Rules that measure: a small class for each part of the build, from choices to quantities, with no
 * price in sight. Imports {@code measure}, {@code trace}, {@code fact} and {@code scope}.
 */
package cornerpost.takeoff;
