package cornerpost.workbook;

/** The columns of sheet Cost plan; the first nine are fixed, so that others can read them. */
enum CostPlanColumn implements TableColumn {
  ID("Id", 44),
  STAGE("Stage", 23),
  DESCRIPTION("Description", 62),
  QUANTITY("Quantity", 11),
  UNIT("Unit", 8),
  RATE("Rate", 11),
  AMOUNT("Amount", 13),
  BASIS("Basis", 11),
  PARTY("Party", 8),
  BOOK_PRICE("Book price", 11),
  QUOTE_EACH("Quote each", 11),
  QUOTE_WHOLE("Quote whole line", 13),
  COUNTS("Counts as", 11),
  TAXED("Taxed", 7),
  PART("Part of cost", 12),
  TASK("Task", 20),
  ITEM("Item", 20),
  LOW("Low", 12),
  HIGH("High", 12),
  STAGE_TOTAL("Stage total", 13),
  AT_RUN("Amount at this run", 13),
  FOLLOWS("Follows the choices", 22);

  private final String header;
  private final int width;

  CostPlanColumn(String header, int width) {
    this.header = header;
    this.width = width;
  }

  @Override
  public String header() {
    return header;
  }

  @Override
  public int width() {
    return width;
  }
}
