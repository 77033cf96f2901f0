package cornerpost.finance;

/** Something an examiner looks for. */
public enum Sign {
  SHORT("Money short of what is needed", "to be brought before the next draw"),
  CASH("Cash below nothing in a coming month", "to be bridged until the lender pays"),
  ABOVE_LOAN("Drawn above the loan", "check column Drawn of Cost ledger, and the loan"),
  TOO_MUCH(
      "Drawn above what is in place for the loan",
      "nothing can be drawn until the work has caught up"),
  AHEAD("Draws ahead of the work in place", "stop draws for these stages until the work is there"),
  FRONT("Schedule of values front-loaded", "early stages claim more than their share of the cost"),
  OVER("Lines above their revised budget", "to be covered by contingency or by the borrower"),
  CONTINGENCY(
      "Contingency below the budget's share of the work left", "too little for what may come"),
  NO_QUOTE("Large lines without quote or contract", "ask for quotes or contracts"),
  ENDED("Quotes that have ended", "ask for new ones"),
  LICENSED("Licensed trades done by the owner", "ask for the licence or the department's consent"),
  EARLY("Paid before it was invoiced", "ask for the invoices or the order with its deposit"),
  MATURITY("Finish after the loan matures, days", "extend the loan or shorten the work"),
  VALUE("Loan above 85 % of the value on completion", "above the supervisory limit");

  private final String label;
  private final String advice;

  Sign(String label, String advice) {
    this.label = label;
    this.advice = advice;
  }

  /** What it would take to tell, where it cannot be told. */
  public String needs() {
    return switch (this) {
      case LICENSED -> "own tasks have no trade; ask who does the electrical and plumbing work";
      case MATURITY -> "enter Maturity on sheet Loan";
      case VALUE -> "enter Value on completion on sheet Loan";
      default -> "";
    };
  }

  /** What it asks for. */
  public String advice() {
    return advice;
  }

  public String label() {
    return label;
  }
}
