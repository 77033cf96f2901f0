/**
 * The page, the drawings, the JSON and the calendar file; calculates nothing. The only package that
 * imports the template engine.
 */
package cornerpost.report;
