package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import java.util.List;

/** Paper before ground: survey, drawings, engineer, permit, loan, insurance, utilities. */
final class PreparationSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    var report = facts.figure("time.lag.survey-report").in(Unit.ONE).toPlainString();
    var letter = facts.figure("time.lag.engineer-letter").in(Unit.ONE).toPlainString();
    return new Ties()
        .after(report, SURVEY, DRAWINGS, "levels and soil are known when the report is in")
        .after(report, SURVEY, ENGINEERING, "levels and soil are known when the report is in")
        .then(DRAWINGS, ENGINEERING, "the engineer works from the drawings")
        .then(DRAWINGS, PERMIT_APPLY, "they go in with the application")
        .after(letter, ENGINEERING, PERMIT_APPLY, "the signed design goes in with the application")
        .inTurn("the permit takes its course", PERMIT_APPLY, PERMIT_REVIEW, PERMIT_GRANTED)
        .then(DRAWINGS, LOAN_CLOSING, "the lender sees drawings and budget")
        .then(DRAWINGS, UTILITY_APPLY, "the application names loads and places")
        .then(UTILITY_APPLY, UTILITY_WAIT, "they come when asked")
        .then(CHOOSE_BOXES, BOOK_CRANE, "the crane is chosen for the box")
        .then(PERMIT_GRANTED, BOOK_CRANE, "a day is booked when work may begin")
        .then(DRAWINGS, INSURANCE, "the insurer asks what is built")
        .then(BOOK_CRANE, DELIVERY, "crane and truck are one booking")
        .then(PERMIT_GRANTED, SITE_SET_UP, "no work on the ground before the permit")
        .then(LOAN_CLOSING, SITE_SET_UP, "the loan closes before the work it pays for")
        .then(INSURANCE, SITE_SET_UP, "the site is insured before anybody works on it")
        .then(SITE_SET_UP, TEMPORARY_POWER, "the supply post stands inside the fence")
        .then(TEMPORARY_POWER, List.of(FORMWORK, MAKE_FRAMES), "saws and welders need power")
        .all();
  }
}
