package cornerpost.workbook.parts;

/**
 * A cell as the file has it.
 *
 * @param row counted from nothing
 * @param column counted from nothing
 * @param style its place in the list of cell formats
 * @param type as the standard spells it (ISO/IEC 29500 part 1, 18.18.11): b, d, e, inlineStr, n, s,
 *     str; a file may hold anything
 * @param value what it holds, or the stored result of its formula; of a shared text its place in
 *     the list; empty where the file says nothing
 * @param text text that stands in the cell itself
 * @param formula its formula, without the sign before it; empty of a later cell that shares one
 * @param calculated whether there is a formula
 */
public record StoredCell(
    int row,
    int column,
    int style,
    String type,
    String value,
    String text,
    String formula,
    boolean calculated) {}
