package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longbough.runner.yaml.KeyRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Keeps the published schema and the reader in step. */
class ScenarioSchemaTest {

  private static final String TEXT = ShippedScenarios.text("scenario.schema.json");
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final JsonNode ROOT = JSON.readTree(TEXT);
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(TEXT);

  static List<Path> shipped() {
    return ShippedScenarios.all();
  }

  static List<BadScenario> bad() {
    return BadScenarios.all().stream().filter(BadScenario::schema).toList();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void everyShippedScenarioIsValid(Path file) {
    assertThat(mistakes(ShippedScenarios.text(file.getFileName().toString()))).isEmpty();
  }

  @Test
  void theGoodScenarioOfTheTestsIsValid() {
    assertThat(mistakes(BadScenario.GOOD)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("bad")
  void whatTheReaderRefusesForItsShapeTheSchemaRefusesToo(BadScenario bad) {
    assertThat(mistakes(bad.text())).isNotEmpty();
  }

  @Test
  void theSchemaKnowsTheSameKeysAsTheReader() {
    for (String section : ScenarioReader.keys().sections()) {
      JsonNode block = block(section);
      List<KeyRow> rows = ScenarioReader.keys().section(section);
      assertThat(block.get("properties").propertyNames())
          .as(section)
          .containsExactlyElementsOf(rows.stream().map(KeyRow::key).toList());
      assertThat(block.get("additionalProperties").asBoolean()).as(section).isFalse();
      List<String> required = new ArrayList<>();
      block.path("required").forEach(name -> required.add(name.asString()));
      assertThat(required)
          .as("required in %s", section)
          .containsExactlyElementsOf(
              rows.stream().filter(KeyRow::required).map(KeyRow::key).toList());
    }
  }

  @Test
  void theSchemaSetsTheSameLimitsAsTheReader() {
    for (String section : ScenarioReader.keys().sections()) {
      for (KeyRow row : ScenarioReader.keys().section(section)) {
        JsonNode property = block(section).get("properties").get(row.key());
        assertThat(property.get("description").asString()).isNotBlank();
        List<JsonNode> alternatives = new ArrayList<>();
        if (property.has("anyOf")) {
          property.get("anyOf").forEach(alternatives::add);
        } else {
          alternatives.add(property);
        }
        assertThat(alternatives).as(row.key()).hasSameSizeAs(row.kinds());
        for (int i = 0; i < row.kinds().size(); i++) {
          sameLimits(row, row.kinds().get(i), alternatives.get(i));
        }
      }
    }
  }

  private static void sameLimits(KeyRow row, String kind, JsonNode schema) {
    String what = row.section() + "." + row.key();
    switch (kind) {
      case "number", "whole" -> {
        assertThat(schema.get("type").asString())
            .as(what)
            .isEqualTo(kind.equals("whole") ? "integer" : "number");
        sameRange(row, schema, what, "minimum", "maximum");
      }
      case "text" -> sameRange(row, schema, what, "minLength", "maxLength");
      case "list" -> sameRange(row, schema, what, "minItems", "maxItems");
      case "word" -> {
        List<String> words = new ArrayList<>();
        schema.get("enum").forEach(word -> words.add(word.asString()));
        assertThat(words).as(what).isEqualTo(row.words());
      }
      case "flag" -> assertThat(schema.get("type").asString()).as(what).isEqualTo("boolean");
      case "map" -> assertThat(schema.get("$ref").asString()).as(what).startsWith("#/$defs/");
      default -> throw new AssertionError(what + " is of the unknown kind " + kind);
    }
  }

  private static void sameRange(KeyRow row, JsonNode schema, String what, String low, String high) {
    assertThat(schema.get(low).asDouble()).as(what + " " + low).isEqualTo(row.range().low());
    assertThat(schema.get(high).asDouble()).as(what + " " + high).isEqualTo(row.range().high());
  }

  private static JsonNode block(String section) {
    JsonNode block = section.equals("scenario") ? ROOT : ROOT.get("$defs").get(section);
    assertThat(block).as("definition of " + section).isNotNull();
    return block;
  }

  private static List<Error> mistakes(String yaml) {
    LoadSettings settings =
        LoadSettings.builder().setSchema(new CoreSchema()).setAllowNonScalarKeys(true).build();
    Object tree = new Load(settings).loadFromString(yaml);
    return SCHEMA.validate(JSON.<JsonNode>valueToTree(tree));
  }
}
