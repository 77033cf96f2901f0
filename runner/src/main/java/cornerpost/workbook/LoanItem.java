package cornerpost.workbook;

/** The rows of the lender's workings on sheet Cost to complete, in their order; a heading each. */
enum LoanItem {
  BALANCE("Does the money finish the house"),
  LOAN("Loan"),
  DRAWN("Drawn so far"),
  UNDRAWN("Loan not drawn"),
  OWN("Own cash, as entered on Loan"),
  PAID("Paid so far"),
  CASH("Borrower's own cash"),
  ALL_TO_COMPLETE("Cost to complete and interest to come"),
  INTEREST("Interest to completion"),
  TO_COMPLETE("Cost to complete"),
  RETAINED("Held back by the borrower from invoices"),
  PAYABLE("Invoices to pay"),
  TO_DATE("Cost to date"),
  INVOICED("Invoiced so far"),
  NOT_INVOICED("In place without an invoice"),
  SURPLUS("Left over (below nothing: lacking)"),
  SHORT("Money short of what is needed"),
  BRING_BY("To be brought before the draw of"),
  ABOVE_LOAN("Drawn above the loan"),

  STRESS("What if"),
  HIRE_LATER("Hire, rent and insurance for the days of the delay"),
  INTEREST_LATER("Interest for those days on what is owed at completion"),
  LATER("Left over, later"),
  OPEN("Cost to complete of lines without order or contract"),
  PRICES_UP("Price rise on them"),
  DEARER("Left over, dearer"),
  LATER_AND_DEARER("Left over, later and dearer"),

  CONTINGENCY("Contingency"),
  CONTINGENCY_ORIGINAL("Contingency in the original budget"),
  CONTINGENCY_LEFT("Contingency left"),
  WORK_ORIGINAL("Original budget of the work"),
  WORK_LEFT("Cost to complete of the work"),
  CONTINGENCY_REQUIRED("Contingency for the work left"),
  CONTINGENCY_LACKING("Contingency below the budget's share of the work left"),
  CONTINGENCY_KEPT("Contingency in the cost to complete"),
  CONTINGENCY_RELEASE("Contingency the lender may release"),
  TO_BRING("To be brought if it is released"),
  CONTINGENCY_USED("Share of the contingency used"),
  COMPLETE("Share of the work in place"),
  PACE("Pace at which contingency burns"),

  RESERVE("Interest reserve"),
  RESERVE_BUDGET("Interest in the budget, with approved changes"),
  RESERVE_CHARGED("Interest charged so far"),
  RESERVE_LEFT("Interest reserve left"),
  RESERVE_BEYOND("Interest to come that the reserve does not carry"),
  RESERVE_MONTHS("Months the interest reserve still carries"),

  RATIOS("Loan, cost and value"),
  TOTAL("Total of the cost plan"),
  TO_COST("Loan to cost"),
  VALUE("Value on completion"),
  TO_VALUE("Loan to value"),
  ABOVE_VALUE("Loan above 85 % of the value on completion"),

  SIGNS("Behind what an examiner looks for"),
  CLAIMED("Share of the schedule of values in place"),
  SPENT("Share of the cost in place"),
  FRONT("Schedule of values front-loaded"),
  EARLY("Paid before it was invoiced"),
  ENDED("Quotes that have ended"),
  FINISH("Finish, as planned now"),
  MATURITY("Loan matures"),
  LATE("Finish after the loan matures, days");

  private final String label;

  LoanItem(String label) {
    this.label = label;
  }

  String label() {
    return label;
  }

  int row() {
    return Addresses.HEADER_ROW + ordinal();
  }

  /** Its figure, from any sheet. */
  String cell() {
    return Addresses.at(ResultSheet.COST_TO_COMPLETE, LoanWorkings.LETTER, row());
  }

  /** Its figure, on the sheet itself. */
  String here() {
    return "$" + LoanWorkings.LETTER + "$" + row();
  }
}
