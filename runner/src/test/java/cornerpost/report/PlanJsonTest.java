package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import cornerpost.plan.Plan;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
  private static final Path SCHEMA = Path.of("..", "docs", "plan.schema.json");

  private static JsonNode read(Plan plan) throws IOException {
    return JSON.readTree(PlanJson.write(plan));
  }

  private static List<String> faults(JsonNode schema, String json) {
    var config = SchemaValidatorsConfig.builder().formatAssertionsEnabled(true).build();
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(schema, config)
        .validate(json, InputFormat.JSON)
        .stream()
        .map(Object::toString)
        .toList();
  }

  private static String text(Plan plan) {
    return new String(PlanJson.write(plan), StandardCharsets.UTF_8);
  }

  /** The schema with every object closed: a field it does not tell of is then a fault. */
  private static JsonNode closed() throws IOException {
    var schema = JSON.readTree(SCHEMA.toFile());
    for (var n : schema.findParents("properties")) {
      if (n.has("required")) ((ObjectNode) n).put("additionalProperties", false);
    }
    return schema;
  }

  @Test
  void schema_is_itself_valid_by_json_schema_2020_12() throws IOException {
    var meta = JSON.createObjectNode();
    meta.put("$ref", "https://json-schema.org/draft/2020-12/schema");
    assertThat(faults(meta, Files.readString(SCHEMA))).isEmpty();
  }

  @Test
  void json_keeps_to_its_schema_and_writes_nothing_the_schema_does_not_tell_of()
      throws IOException {
    for (var plan : List.of(SamplePlan.metric(), SamplePlan.us())) {
      assertThat(faults(closed(), text(plan))).isEmpty();
    }
  }

  @Test
  void schema_refuses_a_wrong_date_a_missing_field_and_an_unknown_relation() throws IOException {
    var good = text(SamplePlan.metric());
    var schema = closed();
    assertThat(faults(schema, good.replace("\"2027-03-15\"", "\"15 March\""))).isNotEmpty();
    assertThat(faults(schema, good.replace("\"indirect\"", "\"overhead\""))).isNotEmpty();
    assertThat(faults(schema, good.replace("\"finish-to-start\"", "\"after\""))).isNotEmpty();
  }

  @Test
  void fixed_part_is_there_under_its_names() throws IOException {
    var json = read(SamplePlan.us());
    var project = json.get("project");
    assertThat(project.get("name").asText()).isEqualTo("Quarrow Field house");
    assertThat(project.get("currency").asText()).isEqualTo("USD");
    assertThat(project.get("units").asText()).isEqualTo("US customary");
    assertThat(project.get("start").asText()).isEqualTo("2027-03-01");
    assertThat(project.get("statusDate").asText()).isEqualTo("2027-03-15");
    var task = json.at("/schedule/tasks/0");
    assertThat(task.get("id").asText()).isEqualTo("survey");
    assertThat(task.get("start").asText()).isEqualTo("2027-03-01");
    assertThat(task.get("startAt").asText()).isEqualTo("2027-03-01T08:00:00");
    assertThat(task.get("totalFloatDays").decimalValue()).isEqualByComparingTo("3.5");
    assertThat(json.at("/schedule/criticalPath").size()).isPositive();
    assertThat(json.at("/problems/0/sheet").asText()).isEqualTo("Quotes");
  }

  @Test
  void quantity_is_given_in_its_unit_at_full_precision() throws IOException {
    // 12.032 m x 2.352 m = 28.299264 m2, by hand
    var floor = read(SamplePlan.metric()).at("/quantities/0");
    assertThat(floor.get("id").asText()).isEqualTo("floor/A/area");
    assertThat(floor.get("unit").asText()).isEqualTo("m2");
    assertThat(floor.get("value").decimalValue()).isEqualTo(new BigDecimal("28.299264"));
    assertThat(floor.at("/sources/0/key").asText()).isEqualTo("box.40hc.inside-length");
    // 96 in x 82 in = 7,872 sq in; 1 sq in = 0.00064516 m2 exactly
    var cut = read(SamplePlan.us()).at("/quantities/1");
    assertThat(cut.get("value").decimalValue()).isEqualByComparingTo("5.07869952");
  }

  @Test
  void lines_parts_and_stages_each_add_up_to_the_total() throws IOException {
    var json = read(SamplePlan.metric());
    var lines = BigDecimal.ZERO;
    for (var l : json.get("costLines")) lines = lines.add(l.get("amount").decimalValue());
    var stages = BigDecimal.ZERO;
    for (var s : json.at("/totals/byStage")) stages = stages.add(s.decimalValue());
    var parts = BigDecimal.ZERO;
    for (var p : List.of("direct", "indirect", "contingency", "tax")) {
      parts = parts.add(json.get("totals").get(p).decimalValue());
    }
    assertThat(json.at("/totals/total").decimalValue()).isPositive();
    assertThat(lines).isEqualByComparingTo(json.at("/totals/total").decimalValue());
    assertThat(stages).isEqualByComparingTo(lines);
    assertThat(parts).isEqualByComparingTo(lines);
  }

  @Test
  void lag_is_given_in_its_own_unit() throws IOException {
    var link = read(SamplePlan.metric()).at("/schedule/links/1");
    assertThat(link.get("lagMinutes").asLong()).isEqualTo(960); // two days of eight hours
    assertThat(link.get("lag").decimalValue()).isEqualByComparingTo("2");
    assertThat(link.get("lagUnit").asText()).isEqualTo("d");
  }

  @Test
  void offsets_count_working_days_of_the_plans_calendar() throws IOException {
    // The second Monday of the plan, 8 March 2027, begins after five working days.
    for (var t : read(SamplePlan.metric()).at("/schedule/tasks")) {
      if (t.get("earlyStartAt").asText().equals("2027-03-08T08:00:00")) {
        assertThat(t.get("earlyStartOffsetDays").decimalValue()).isEqualByComparingTo("5");
        return;
      }
    }
    throw new AssertionError("the sample has no task on that Monday");
  }

  @Test
  void same_plan_gives_the_same_bytes_with_two_space_indent_and_plain_numbers() {
    var bytes = PlanJson.write(SamplePlan.us());
    assertThat(PlanJson.write(SamplePlan.us())).isEqualTo(bytes);
    var text = new String(bytes, StandardCharsets.UTF_8);
    assertThat(text).startsWith("{\n  \"format\": \"cornerpost plan\"").endsWith("}\n");
    assertThat(text).doesNotContain("\r").doesNotContainPattern("[0-9]E[+-]?[0-9]");
    assertThat(text).doesNotContain(System.getProperty("user.name") + "@");
  }
}
