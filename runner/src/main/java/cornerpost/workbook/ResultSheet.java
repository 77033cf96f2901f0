package cornerpost.workbook;

import cornerpost.finance.Finance;
import java.util.Arrays;
import java.util.Optional;

/** The sheets a run writes, in reading order, with the line that stands on top of each. */
enum ResultSheet {
  SUMMARY("Summary", "The plan at a glance: what is built, what it costs, when it is done."),
  QUANTITIES(
      "Quantities",
      "What is measured, net as it stands in the finished work. The quantities are live formulas:"
          + " they follow your choices."),
  COST_PLAN(
      "Cost plan",
      "The bill, line by line, waste and whole packs included. Live: it follows your choices, sheet"
          + " Prices used and sheet Quotes."),
  BUYING_LIST("Buying list", "What to buy, by kind of supplier, with the day to order it by."),
  CUTTING_PLANS(
      "Cutting plans",
      "Which pieces to saw from which bar. Worked out by an algorithm: a changed choice needs a new"
          + " run; only what the bill buys is live."),
  SCHEDULE(
      "Schedule",
      "The work in order, days shown as first and last working day. Durations and floats count"
          + " working days of the task's own calendar. Dates need a new run."),
  BAR_CHART("Bar chart", "The schedule by weeks. Dates need a new run."),
  LONGEST_PATH(
      "Longest path",
      "What decides how soon one event can follow another, named on sheet Options; days since the"
          + " step before. Dates need a new run."),
  INSPECTIONS(
      "Inspections",
      "Hold points: work behind them waits until they are passed. Local rules decide which are"
          + " asked for."),
  CREW_LOAD("Crew load", "Days of work of each crew, week by week. Dates need a new run."),
  CASH_FLOW("Cash flow", "What is paid out, drawn and owed, month by month. Needs a new run."),
  DRAWS(
      "Draws",
      "What the lender pays in, and what each payment waits for. The amounts are live; days need a new"
          + " run."),
  COST_TO_COMPLETE(
      "Cost to complete", "What each stage still costs, and whether the money left covers it."),
  BASELINE(
      "Baseline",
      "Plans that were kept, and this one against the last of them. Name another one under Keep as"
          + " baseline on sheet Options."),
  LOOK_AHEAD(
      "Look-ahead", "The next three weeks by crew, with what must be ready. Dates need a new run."),
  COST_REPORT(
      "Cost report",
      "Where the money of each line stands. Live: it follows sheets Cost ledger, Quotes and Loan;"
          + " shares by progress and dates need a new run."),
  SCHEDULE_OF_VALUES(
      "Schedule of values",
      "What is in place by stage, what was drawn for it, and what can be drawn now. Live."),
  MONEY_TO_COME(
      "Money to come",
      "The months from the status date to completion. The amounts are live; in which month a stage's"
          + " money falls needs a new run."),
  EARNED_VALUE(
      "Earned value",
      "Planned, earned and actual cost by the terms of ISO 21508. The amounts are live; planned"
          + " dates need a new run."),
  LENDER_REVIEW(
      "Lender review",
      "Is the loan in balance? The figures are live; dates, expired quotes and licences need a new"
          + " run."),
  DELAY_EFFECTS("Delay effects", "What each delay does to move-in and to the money."),
  RESEQUENCING(
      "Resequencing",
      "Other orders of the work while something is late, as moves to carry out. Needs a new run."),
  RECOVERY(
      "Recovery", "What it costs to win days back, the cheapest measure first. Needs a new run."),
  RISK("Risk", "How sure cost and finish are: many trials of the whole plan."),
  CHECKS(
      "Checks",
      "Advice on what was chosen, never a claim that it complies. Local codes and licensed"
          + " professionals decide."),
  PRICES_USED(
      "Prices used",
      "Every price, rate and hour this plan rests on. Change a price in the shaded column to try it:"
          + " the plan follows at once; a new run takes the price book's again."),
  FACTS_USED(
      "Facts used",
      "Every published fact and worked-out number the plan rests on, and below them the choices as"
          + " they stood at this run.");

  /** By this the line on top tells our sheet from one of the owner's with the same name. */
  static final String MARK = "Each run writes this sheet again";

  private final String title;
  private final String purpose;

  ResultSheet(String title, String purpose) {
    this.title = title;
    this.purpose = purpose;
  }

  /** Whether it has something to show: some only where there is a loan, or once money has moved. */
  boolean isNeeded(Finance finance) {
    return switch (this) {
      case COST_REPORT, SCHEDULE_OF_VALUES, MONEY_TO_COME, EARNED_VALUE, LENDER_REVIEW ->
          finance.status().isPresent();
      default -> true;
    };
  }

  /** What it is for, in a sentence. */
  String purpose() {
    return purpose;
  }

  String title() {
    return title;
  }

  /** What the sheet is for and what not to touch. */
  String topLine() {
    var rest =
        this == PRICES_USED
            ? ": enter nothing but prices, and to keep a price enter it on sheet Quotes."
            : ": enter nothing here.";
    return purpose + " " + MARK + rest;
  }

  static Optional<ResultSheet> find(String title) {
    return Arrays.stream(values()).filter(s -> s.title.equalsIgnoreCase(title)).findFirst();
  }
}
