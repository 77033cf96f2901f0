package cornerpost.price;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import cornerpost.scope.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A file of comma-separated values with a header, by RFC 4180: quoted fields may hold commas,
 * doubled quotes and line ends. A byte-order mark is skipped, empty lines too. What cannot be read
 * is a problem with file and line, and reading goes on at the next row.
 *
 * @param rows the rows that have as many fields as the header
 */
record CsvTable(String file, List<Row> rows) {

  /** A row by column name, with the line it begins in, counted from 1. */
  record Row(String file, int line, Map<String, String> cells) {
    String get(String column) {
      return cells.getOrDefault(column, "");
    }

    Problem fault(String found, String expected) {
      return Problem.fault(file, "line " + line, found, expected);
    }
  }

  private record Record(int line, List<String> fields) {}

  private static final CsvFactory CSV =
      new CsvFactory()
          .enable(CsvParser.Feature.TRIM_SPACES)
          .enable(CsvParser.Feature.SKIP_EMPTY_LINES);

  static CsvTable read(String file, byte[] bytes, List<String> columns, List<Problem> problems) {
    String text;
    try {
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
    } catch (CharacterCodingException e) {
      problems.add(Problem.fault(file, "", "bytes that are not UTF-8", "save it as UTF-8 text"));
      return new CsvTable(file, List.of());
    }
    if (text.startsWith("\uFEFF")) text = text.substring(1);
    var records = records(file, text, problems);
    if (records.isEmpty()) {
      problems.add(
          Problem.fault(
              file, "line 1", "an empty file", "the columns " + String.join(",", columns)));
      return new CsvTable(file, List.of());
    }
    var header =
        records.get(0).fields.stream().map(f -> f.strip().toLowerCase(Locale.ROOT)).toList();
    return new CsvTable(file, rows(file, header, columns, records, problems));
  }

  private static List<Row> rows(
      String file,
      List<String> header,
      List<String> columns,
      List<Record> records,
      List<Problem> problems) {
    var at = "line " + records.get(0).line;
    var missing = columns.stream().filter(c -> !header.contains(c)).toList();
    if (!missing.isEmpty()) {
      boolean semicolons = header.size() == 1 && header.get(0).contains(";");
      problems.add(
          Problem.fault(
              file,
              at,
              semicolons
                  ? "columns parted by semicolons"
                  : "no column " + String.join(", ", missing),
              "the columns "
                  + String.join(",", columns)
                  + (semicolons ? ", parted by commas" : "")));
      return List.of();
    }
    var twice = new LinkedHashSet<String>();
    for (int i = 0; i < header.size(); i++) {
      if (!header.get(i).isEmpty() && header.indexOf(header.get(i)) != i) twice.add(header.get(i));
    }
    if (!twice.isEmpty()) {
      problems.add(Problem.fault(file, at, "two columns " + twice, "each column once"));
      return List.of();
    }
    header.stream()
        .filter(h -> !h.isEmpty() && !columns.contains(h)) // spreadsheets add empty columns
        .forEach(
            h ->
                problems.add(
                    Problem.remark(file, at, "a column '" + h + "'", "it is not used; leave it")));
    var rows = new ArrayList<Row>();
    for (var r : records.subList(1, records.size())) {
      if (r.fields.size() != header.size()) {
        problems.add(
            Problem.fault(
                file,
                "line " + r.line,
                r.fields.size() + " fields",
                header.size() + " fields, as in the header; a field with a comma is quoted"));
        continue;
      }
      var cells = new HashMap<String, String>();
      for (int i = 0; i < header.size(); i++) cells.put(header.get(i), r.fields.get(i).strip());
      rows.add(new Row(file, r.line, cells));
    }
    return rows;
  }

  private static List<Record> records(String file, String text, List<Problem> problems) {
    var records = new ArrayList<Record>();
    int line = 1;
    try (var parser = CSV.createParser(text)) {
      while (parser.nextToken() == JsonToken.START_ARRAY) {
        var fields = new ArrayList<String>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          if (fields.isEmpty()) line = parser.currentTokenLocation().getLineNr();
          fields.add(parser.getText());
        }
        if (!fields.stream().allMatch(String::isBlank)) records.add(new Record(line, fields));
      }
    } catch (JsonProcessingException e) {
      problems.add(
          Problem.fault(
              file,
              "line " + line,
              "a quote that does not end before the next comma or line",
              "a closing quote, and quotes inside it doubled"));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a text in memory has nothing to fail
    }
    return records;
  }
}
