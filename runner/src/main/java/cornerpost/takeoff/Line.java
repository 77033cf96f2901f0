package cornerpost.takeoff;

import static java.util.Objects.requireNonNull;

import cornerpost.measure.Unit;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One measured quantity.
 *
 * @param id stable: rule and subject, such as {@code opening/W1/frame-steel}; never a row number
 * @param quantity net, as it stands in the finished work; waste and whole packs come with the price
 * @param shownIn the unit it is shown in
 * @param because how it is measured, in a few words, and its source where there is one
 * @param resources what it asks for; none for a measurement that others build on
 * @param pieces what a length is cut as; none where bars of it need no plan
 */
public record Line(
    String id,
    Stage stage,
    String description,
    Figure quantity,
    Unit shownIn,
    String because,
    List<Resource> resources,
    List<Piece> pieces) {
  public Line {
    requireNonNull(id, "id");
    requireNonNull(stage, "stage");
    quantity.in(shownIn); // fails at once if the unit does not fit
    resources = List.copyOf(resources);
    pieces = List.copyOf(pieces);
  }

  public static Line of(
      String id,
      Stage stage,
      String description,
      Figure quantity,
      Unit shownIn,
      String because,
      Resource... resources) {
    return new Line(
        id, stage, description, quantity, shownIn, because, List.of(resources), List.of());
  }

  /** The same, cut from bars as these pieces; together they are as long as the quantity. */
  public Line cutAs(List<Piece> cut) {
    return new Line(id, stage, description, quantity, shownIn, because, resources, cut);
  }

  /** The quantity as a row: whoever uses it points at the row. */
  public Figure named() {
    return quantity.named(id, description, shownIn);
  }

  /** The share of waste that it allows for an item it buys; empty where there is none. */
  public Optional<Figure> waste(String item) {
    return resources.stream()
        .flatMap(
            r ->
                r instanceof Resource.Buy b && b.item().equals(item)
                    ? Stream.of(b)
                    : Stream.empty())
        .findFirst()
        .flatMap(Resource.Buy::waste);
  }
}
