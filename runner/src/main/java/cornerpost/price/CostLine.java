package cornerpost.price;

import cornerpost.measure.Unit;
import cornerpost.scope.Labelled;
import cornerpost.scope.Party;
import cornerpost.scope.Quote;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One line of the bill: a quantity at a rate.
 *
 * @param id the quantity's id, a colon and what is paid for: {@code
 *     opening/W1/frame-steel:steel-tube}
 * @param quantityId the measured quantity it comes from; empty for lines on money (tax,
 *     contingency) and for the owner's own items
 * @param quantity what is paid for, in {@code unit}: with waste, in whole packs where only those
 *     are sold; hours for labour; the base amount for tax and contingency
 * @param bookRate the price book's price of one unit; for own items the owner's
 * @param rate what is used: the book's or the quote's
 * @param amount quantity at rate, rounded to the cent; the owner's own hours cost nothing
 * @param task id of the task at which it falls due
 * @param low the amount at the book's low prices, {@code high} at its high ones; unrounded spread
 *     for the simulation, both the quoted amount where a quote is used
 */
public record CostLine(
    String id,
    Optional<String> quantityId,
    Stage stage,
    Kind kind,
    String description,
    Figure quantity,
    Unit unit,
    Figure bookRate,
    Figure rate,
    Figure amount,
    Basis basis,
    Party party,
    Optional<String> task,
    Optional<String> item,
    boolean taxed,
    Optional<Quote> quote,
    BigDecimal low,
    BigDecimal high) {

  /** What is paid for. */
  public enum Kind {
    MATERIAL,
    PLANT,
    SERVICE,
    FEE,
    TIME,
    LABOUR,
    /** The owner's own hours: no money. */
    OWN_LABOUR,
    OWN_ITEM,
    INTEREST,
    ESCALATION,
    TAX,
    CONTINGENCY;

    /** Part of the finished house. */
    public boolean direct() {
      return switch (this) {
        case MATERIAL, PLANT, SERVICE, LABOUR, OWN_LABOUR, OWN_ITEM -> true;
        case FEE, TIME, INTEREST, ESCALATION, TAX, CONTINGENCY -> false;
      };
    }

    /** Neither tax nor contingency, which are shown by themselves. */
    public boolean base() {
      return this != TAX && this != CONTINGENCY;
    }
  }

  /** Where the price comes from. */
  public enum Basis implements Labelled {
    PRICE_BOOK("price book"),
    QUOTE("quote"),
    OWN("own");

    private final String label;

    Basis(String label) {
      this.label = label;
    }

    @Override
    public String label() {
      return label;
    }
  }

  /** Whose work it is for, or what else. */
  public PaidFor paidFor() {
    return PaidFor.of(this);
  }

  /** Who does the work or buys the thing; {@code none} for money that is for neither. */
  public String partyWord() {
    return paidFor().word();
  }

  /** The rounded amount. */
  public BigDecimal money() {
    return amount.value();
  }
}
