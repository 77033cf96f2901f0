package cornerpost.price;

import cornerpost.scope.Labelled;

/**
 * Who does the work that the money of a line is for, and beside it the money that is for no work:
 * rent and interest, price rise, tax and contingency. The owner's own hours cost nothing.
 */
public enum PaidFor implements Labelled {
  HIRED("hired work, with its materials"),
  MIXED("work shared with hired hands, with its materials"),
  OWNER("bought by the owner: boxes, services, materials of own work"),
  OWN_HOURS("the owner's own hours"),
  TIME("hire by the month, rent, interest"),
  PRICE_RISE("price rise"),
  TAX("tax"),
  CONTINGENCY("contingency");

  private final String label;

  PaidFor(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }

  static PaidFor of(CostLine line) {
    return switch (line.kind()) {
      case TAX -> TAX;
      case CONTINGENCY -> CONTINGENCY;
      case ESCALATION -> PRICE_RISE;
      case INTEREST, TIME -> TIME;
      case OWN_LABOUR -> OWN_HOURS;
      case MATERIAL, PLANT, SERVICE, FEE, LABOUR, OWN_ITEM ->
          switch (line.party()) {
            case HIRED -> HIRED;
            case MIXED -> MIXED;
            case OWNER -> OWNER;
          };
    };
  }

  /** The party in one word, for a column; money that is for no work has none. */
  String word() {
    return switch (this) {
      case HIRED -> "hired";
      case MIXED -> "mixed";
      case OWNER, OWN_HOURS -> "owner";
      case TIME, PRICE_RISE, TAX, CONTINGENCY -> "none";
    };
  }
}
