/**
 * Habitability, strength, moisture, electrical checks and cautions, as advice, never as a claim of
 * compliance. Imports what stands above it.
 */
package cornerpost.check;
