/**
 * The .xlsx as what it is: a package of parts with XML in them (ISO/IEC 29500, parts 1 and 2). A
 * plan reads a few hundred cells and adds sheets it writes whole, so it works on the parts
 * themselves; whatever else is in the package stays as it was, byte for byte. Imports nothing of
 * ours but this.
 */
package cornerpost.workbook.parts;
