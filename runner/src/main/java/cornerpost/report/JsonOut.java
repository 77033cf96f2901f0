package cornerpost.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.temporal.Temporal;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Writes JSON in the order it is told: two-space indent, line feeds, UTF-8, numbers in plain
 * notation at full precision. What is empty is written as null, so that a field is always there.
 */
final class JsonOut {
  /** Writes the inside of an object or an array. */
  interface Body {
    void write();
  }

  /** Writes one member of a list. */
  interface Each<T> {
    void write(T member);
  }

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final JsonGenerator out;

  JsonOut() {
    try {
      out =
          new JsonFactory()
              .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
              .createGenerator(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    var indent = new DefaultIndenter("  ", "\n");
    out.setPrettyPrinter(
        new DefaultPrettyPrinter(
                Separators.createDefaultInstance()
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER))
            .withObjectIndenter(indent)
            .withArrayIndenter(indent));
  }

  byte[] done() {
    try {
      out.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    bytes.writeBytes("\n".getBytes(StandardCharsets.UTF_8));
    return bytes.toByteArray();
  }

  /** An object that stands in an array or at the top. */
  void object(Body body) {
    run(out::writeStartObject);
    body.write();
    run(out::writeEndObject);
  }

  void object(String name, Body body) {
    name(name);
    object(body);
  }

  /** An array of objects. */
  <T> void objects(String name, Collection<T> members, Each<T> each) {
    name(name);
    run(out::writeStartArray);
    for (var m : members) object(() -> each.write(m));
    run(out::writeEndArray);
  }

  void texts(String name, Collection<String> members) {
    name(name);
    run(out::writeStartArray);
    for (var m : members) run(() -> out.writeString(m));
    run(out::writeEndArray);
  }

  /** An object with a number under each key, in the order of the map. */
  <N extends Number> void numbers(String name, Map<String, N> members) {
    object(name, () -> members.forEach((k, v) -> number(k, v)));
  }

  void text(String name, String value) {
    name(name);
    run(() -> out.writeString(value));
  }

  void text(String name, Optional<?> value) {
    name(name);
    if (value.isPresent()) run(() -> out.writeString(value.get().toString()));
    else run(out::writeNull);
  }

  /** ISO 8601: the forms in which java.time prints itself; date-times always with seconds. */
  void date(String name, Temporal value) {
    text(name, value.toString());
  }

  void yes(String name, boolean value) {
    name(name);
    run(() -> out.writeBoolean(value));
  }

  void number(String name, Number value) {
    name(name);
    run(() -> out.writeNumber(plain(value)));
  }

  void number(String name, Optional<? extends Number> value) {
    name(name);
    if (value.isPresent()) run(() -> out.writeNumber(plain(value.get())));
    else run(out::writeNull);
  }

  void number(String name, OptionalInt value) {
    number(name, value.isPresent() ? Optional.of(value.getAsInt()) : Optional.<Integer>empty());
  }

  private void name(String name) {
    run(() -> out.writeFieldName(name));
  }

  private static BigDecimal plain(Number value) {
    var exact = value instanceof BigDecimal b ? b : new BigDecimal(value.toString());
    // 1E+3 and 1000 are one number: one form for both keeps the bytes the same
    return exact.scale() < 0 ? exact.setScale(0) : exact;
  }

  private interface Step {
    void run() throws IOException;
  }

  private static void run(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e); // into memory: nothing of the sort happens
    }
  }
}
