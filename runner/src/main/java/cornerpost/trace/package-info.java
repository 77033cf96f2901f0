/**
 * The traceable number: a value that knows its unit and where it comes from, says so in words, and
 * writes itself as a spreadsheet formula. Imports {@code measure} only; knows cells by label, never
 * a spreadsheet library.
 */
package cornerpost.trace;
