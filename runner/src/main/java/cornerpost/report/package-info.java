/**
 * The page, the drawings, the JSON and the calendar file; calculates nothing. The only package that
 * imports Freemarker. Imports what stands above it, {@code workbook} left aside.
 */
package cornerpost.report;
