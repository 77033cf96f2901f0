package cornerpost.fact;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import cornerpost.measure.Unit;
import cornerpost.trace.Figure;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The table of facts. Rows are {@code id,name,value,unit,source,certainty}; a row without a source,
 * with an unknown unit or with an id used before does not load, and the message names file and
 * line.
 */
public final class Facts {
  /** The files of the table, under {@code /facts} on the class path. */
  private static final List<String> FILES =
      List.of(
          "boxes.csv",
          "steel.csv",
          "ground.csv",
          "rooms.csv",
          "framing.csv",
          "services.csv",
          "envelope.csv",
          "finishes.csv",
          "outside.csv",
          "waste.csv",
          "cutting.csv",
          "item-masses.csv",
          "time.csv",
          "masses.csv",
          "limits.csv");

  private static final Set<String> COLUMNS =
      Set.of("id", "name", "value", "unit", "source", "certainty");
  private static final Set<String> CERTAINTIES =
      Set.of("confirmed", "computed", "from memory", "common practice");

  private static final CsvFactory CSV =
      new CsvFactory()
          .enable(CsvParser.Feature.TRIM_SPACES)
          .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
          .enable(CsvParser.Feature.ALLOW_COMMENTS);

  private final Map<String, Fact> byId;

  private Facts(Map<String, Fact> byId) {
    this.byId = Collections.unmodifiableMap(byId);
  }

  /** The facts that come with the program. */
  public static Facts supplied() {
    var all = new LinkedHashMap<String, Fact>();
    for (var file : FILES) {
      try (var in = Facts.class.getResourceAsStream("/facts/" + file)) {
        if (in == null) throw new IllegalStateException("Facts file " + file + " is missing");
        read(file, in, all);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return new Facts(all);
  }

  /**
   * Reads one table, for tests and for tables of a firm's own.
   *
   * @throws IllegalArgumentException naming file and line of the first row that does not load
   */
  public static Facts read(String file, InputStream in) throws IOException {
    var all = new LinkedHashMap<String, Fact>();
    read(file, in, all);
    return new Facts(all);
  }

  private static void read(String file, InputStream in, Map<String, Fact> all) throws IOException {
    try (var rows = CSV.createParser(in)) {
      rows.setSchema(CsvSchema.emptySchema().withHeader());
      while (rows.nextToken() == JsonToken.START_OBJECT) {
        var row = new LinkedHashMap<String, String>();
        for (var column = rows.nextFieldName(); column != null; column = rows.nextFieldName()) {
          row.put(column, rows.nextTextValue());
        }
        int line = rows.currentLocation().getLineNr() - 1;
        var fact = fact(row, file + " line " + line);
        if (all.put(fact.id(), fact) != null) {
          throw new IllegalArgumentException(
              file + " line " + line + ": the id '" + fact.id() + "' is used before");
        }
      }
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(file + ": " + e.getOriginalMessage(), e);
    }
  }

  private static Fact fact(Map<String, String> row, String at) {
    if (!row.keySet().containsAll(COLUMNS)) {
      throw new IllegalArgumentException(at + ": the columns must be " + COLUMNS);
    }
    var unit =
        Unit.find(row.get("unit"))
            .orElseThrow(
                () -> new IllegalArgumentException(at + ": no unit '" + row.get("unit") + "'"));
    if (!CERTAINTIES.contains(row.get("certainty"))) {
      throw new IllegalArgumentException(
          at
              + ": certainty must be one of "
              + CERTAINTIES
              + ", found '"
              + row.get("certainty")
              + "'");
    }
    try {
      return new Fact(
          row.get("id"),
          row.get("name"),
          new BigDecimal(row.get("value")),
          unit,
          row.get("source"),
          row.get("certainty"));
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          at + ": the value must be a number, found '" + row.get("value") + "'", e);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(at + ": " + e.getMessage(), e);
    }
  }

  public Optional<Fact> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * @throws IllegalArgumentException if there is no such fact, naming those that begin alike
   */
  public Fact get(String id) {
    return find(id)
        .orElseThrow(
            () -> {
              var stem = id.contains(".") ? id.substring(0, id.indexOf('.')) : id;
              var alike = byId.keySet().stream().filter(k -> k.startsWith(stem)).toList();
              return new IllegalArgumentException("No fact '" + id + "'. Maybe one of " + alike);
            });
  }

  /** The fact as a traceable number. */
  public Figure figure(String id) {
    return get(id).figure();
  }

  public Collection<Fact> all() {
    return byId.values();
  }
}
