/**
 * Published facts as data files, each row with its source: dimensions, masses, sections, coverage,
 * room minima, waste. Imports {@code measure} and {@code trace}.
 */
package cornerpost.fact;
