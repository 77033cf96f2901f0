package cornerpost.price;

import cornerpost.measure.Unit;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Party;
import cornerpost.scope.PricePoint;
import cornerpost.scope.Trade;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Resource;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Hours of work. Hired hours cost the trade's rate; a crew of the trade's name on sheet Crews with
 * a rate of its own replaces the book's. The owner's hours are the trade's times the owner's time
 * factor, and cost nothing. Mixed work is split by the owner's share of the trade's hours.
 */
final class LabourLines {
  private final Costing costing;
  private final PriceBook book;

  LabourLines(Costing costing, PriceBook book) {
    this.costing = costing;
    this.book = book;
  }

  void add(Line line, Resource.Labour labour) {
    var who = costing.scope.assignment(labour.trade());
    var share = who.ownerShare();
    switch (who.party()) {
      case HIRED -> hired(line, labour, Figure.count(1));
      case OWNER -> own(line, labour, Figure.count(1));
      case MIXED -> {
        hired(line, labour, Figure.count(1).minus(share));
        own(line, labour, share);
      }
    }
  }

  private Figure hours(Line line, Resource.Labour labour, PricePoint point, Figure factor) {
    var row = book.findHours(labour.activity()).orElseThrow();
    return line.named().times(book.hours(row, point)).times(factor);
  }

  private void hired(Line line, Resource.Labour labour, Figure part) {
    var id = line.id() + ":" + labour.activity();
    var rate = book.findRate(labour.trade()).orElseThrow();
    var bookRate = book.price(rate, costing.point);
    var ownRate = ownRate(labour.trade());
    var hours = hours(line, labour, costing.point, part);
    var low = hours(line, labour, PricePoint.LOW, part).value();
    var high = hours(line, labour, PricePoint.HIGH, part).value();
    costing.add(
        draft(
            id,
            line,
            labour,
            CostLine.Kind.LABOUR,
            hours,
            bookRate,
            ownRate.orElse(bookRate),
            ownRate.isPresent() ? CostLine.Basis.OWN : CostLine.Basis.PRICE_BOOK,
            Party.HIRED,
            rate.taxed(),
            low.multiply(ownRate.map(Figure::value).orElse(rate.low())),
            high.multiply(ownRate.map(Figure::value).orElse(rate.high()))));
    costing.hours.add(
        new TaskHours(id, labour.task(), labour.trade(), Party.HIRED, hours, low, high));
  }

  private void own(Line line, Resource.Labour labour, Figure part) {
    var id = line.id() + ":" + labour.activity() + ":own";
    var factor = part.times(costing.scope.options().figure(OptionsQuestions.OWNER_FACTOR));
    var hours = hours(line, labour, costing.point, factor);
    var free = Figure.constant("0", costing.money().per(Unit.HOUR));
    costing.add(
        draft(
            id,
            line,
            labour,
            CostLine.Kind.OWN_LABOUR,
            hours,
            free,
            free,
            CostLine.Basis.OWN,
            Party.OWNER,
            false,
            BigDecimal.ZERO,
            BigDecimal.ZERO));
    costing.hours.add(
        new TaskHours(
            id,
            labour.task(),
            labour.trade(),
            Party.OWNER,
            hours,
            hours(line, labour, PricePoint.LOW, factor).value(),
            hours(line, labour, PricePoint.HIGH, factor).value()));
  }

  private Optional<Figure> ownRate(Trade trade) {
    return costing.scope.crews().stream()
        .filter(c -> c.name().equalsIgnoreCase(trade.label()))
        .findFirst()
        .flatMap(CrewEntry::rate)
        .map(costing::asMoneyPerHour);
  }

  private Costing.Draft draft(
      String id,
      Line line,
      Resource.Labour labour,
      CostLine.Kind kind,
      Figure hours,
      Figure bookRate,
      Figure rate,
      CostLine.Basis basis,
      Party party,
      boolean taxed,
      BigDecimal low,
      BigDecimal high) {
    var row = book.findHours(labour.activity()).orElseThrow();
    return new Costing.Draft(
        id,
        Optional.of(line.id()),
        line.stage(),
        kind,
        line.description() + ": " + row.description(),
        hours,
        Unit.HOUR,
        bookRate,
        rate,
        basis,
        party,
        Optional.of(labour.task().id()),
        Optional.empty(),
        taxed,
        low,
        high);
  }
}
