/**
 * One-dimensional cutting stock: which pieces to saw from which bar of one stock length. Whole
 * numbers in, whole numbers out; knows nothing of houses, prices or units. Imports nothing of ours.
 */
package cornerpost.takeoff.cutting;
