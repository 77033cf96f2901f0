package cornerpost.workbook;

/** The columns of sheet Cost report. */
enum CostReportColumn implements TableColumn {
  LINE("Line", 24),
  DESCRIPTION("Description", 32),
  STAGE("Stage", 23),
  ORIGINAL("Original budget", 12),
  CHANGES("Approved changes", 11),
  REVISED("Revised budget", 12),
  COMMITTED("Committed", 12),
  UNCOMMITTED("Uncommitted", 12),
  INVOICED("Invoiced", 12),
  PAID("Paid", 12),
  RETAINED("Retained", 11),
  PAYABLE("Payable", 11),
  SHARE("Work in place", 8),
  IN_PLACE("Value in place", 12),
  STORED("Stored materials", 11),
  EARNED("Earned", 12),
  DRAWN("Drawn", 12),
  TO_DATE("Cost to date", 12),
  TO_COMPLETE("Cost to complete", 12),
  AT_COMPLETION("At completion", 12),
  VARIANCE("Variance", 11),
  BY_PRICE("By price", 10),
  BY_QUANTITY("By quantity", 10),
  BY_SCOPE("By scope", 10),
  BY_TIME("By time", 10),
  OVER("Over revised budget", 11),
  KIND("Reckoned as", 12),
  PROGRESS("In place by progress", 9),
  AMOUNT("Amount today", 12),
  QUANTITY("Quantity today", 10),
  LEAST("Days to come over days paid for", 12),
  NO_FIRM_PRICE("Large, no quote or contract", 12),
  QUOTE_ENDED("Quote ended", 8);

  private final String header;
  private final int width;

  CostReportColumn(String header, int width) {
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

  /** Its total, from any sheet. */
  String total() {
    return "'Cost report'!$" + letter() + "$" + (Addresses.HEADER_ROW - 1);
  }

  /** Its cells from one row to another, from any sheet. */
  String rows(int first, int last) {
    return "'Cost report'!" + range(first, last);
  }
}
