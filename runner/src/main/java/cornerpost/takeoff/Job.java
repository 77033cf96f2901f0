package cornerpost.takeoff;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.scope.Scope;
import cornerpost.trace.Figure;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a rule measures from: the choices, the facts, and the lines of the rules before it. */
public final class Job {
  private final Scope scope;
  private final Facts facts;
  private final Map<String, Line> lines = new LinkedHashMap<>();

  Job(Scope scope, Facts facts) {
    this.scope = scope;
    this.facts = facts;
  }

  public Scope scope() {
    return scope;
  }

  public Facts facts() {
    return facts;
  }

  public Figure fact(String id) {
    return facts.figure(id);
  }

  /** A quantity measured before, as a row to point at. */
  public Optional<Figure> find(String lineId) {
    return Optional.ofNullable(lines.get(lineId)).map(Line::named);
  }

  /**
   * @throws IllegalStateException if no rule before measured it
   */
  public Figure measured(String lineId) {
    return find(lineId)
        .orElseThrow(
            () -> new IllegalStateException("No line '" + lineId + "' so far: " + lines.keySet()));
  }

  /** The lines so far whose id begins so. */
  public List<Line> linesOf(String idStem) {
    return lines.values().stream().filter(l -> l.id().startsWith(idStem)).toList();
  }

  public Collection<Line> lines() {
    return Collections.unmodifiableCollection(lines.values());
  }

  void add(Line line) {
    if (lines.put(line.id(), line) != null) {
      throw new IllegalStateException("Two lines have the id '" + line.id() + "'");
    }
  }

  // The units in which this workbook's reader expects to see things.

  public Unit length() {
    return scope.units().choose(Unit.M, Unit.FT);
  }

  public Unit shortLength() {
    return scope.units().choose(Unit.MM, Unit.IN);
  }

  public Unit area() {
    return scope.units().choose(Unit.M2, Unit.SQ_FT);
  }

  public Unit volume() {
    return scope.units().choose(Unit.M3, Unit.CU_YD);
  }

  public Unit liquid() {
    return scope.units().choose(Unit.LITRE, Unit.GALLON);
  }

  public Unit pressure() {
    return scope.units().choose(Unit.KPA, Unit.PSF);
  }

  public Unit mass() {
    return scope.units().choose(Unit.KG, Unit.LB);
  }
}
