/**
 * Reads and writes .xlsx; calculates nothing. The only package that imports the spreadsheet
 * library.
 */
package cornerpost.workbook;
