package org.tankrounds.description;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tankrounds.description.Description.Operation;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** The description by itself: well made, and at one with its own examples. */
class DescriptionTest {
    private static final Description DESCRIPTION = Description.get();

    static Stream<Operation> operations() {
        return DESCRIPTION.operations().stream();
    }

    @Test
    void theDescription_isOpenApi31() {
        assertThat(DESCRIPTION.root().path("openapi").asText()).isEqualTo("3.1.0");
        SwaggerParseResult parsed = parse(DESCRIPTION.root());
        assertThat(parsed.getMessages()).isEmpty();
        assertThat(parsed.getOpenAPI().getPaths()).hasSize(DESCRIPTION.root().path("paths").size());
    }

    @Test
    void theParser_wouldFindAFault() {
        ObjectNode broken = DESCRIPTION.root().deepCopy();
        ((ObjectNode) broken.at("/paths/~1healthz/get/responses/200")).remove("description");
        assertThat(parse(broken).getMessages()).isNotEmpty();
    }

    @Test
    void everySchema_isASchemaOfJsonSchema202012() {
        var dialect = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .loadSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        DESCRIPTION.schemaNames().forEach(name -> assertThat(
                dialect.validate(DESCRIPTION.root().at("/components/schemas/" + name))).as(name).isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "200 | application/json         | {\"readings\": []} | ",
        "200 | application/json         | {\"readings\": [], \"more\": 1}                                | additional",
        "200 | application/json         | {\"readings\": [{\"id\": 5}]}                                | string",
        "200 | text/html                | <p>fine</p>                                                 | text/html",
        "404 | application/problem+json | {\"type\": \"about:blank\", \"title\": \"No.\"}                | status",
        "418 | application/problem+json | {\"type\": \"about:blank\", \"title\": \"No.\", \"status\": 418} | 418",
        "429 | text/plain               | Wait.                                                       | Retry-After",
    })
    void anAnswerThatIsNotAsDescribed_isFound(int status, String type, String body, String difference) {
        Answer answer = new Answer(status, Map.of("content-type", List.of(type)), body);
        List<String> found =
                DESCRIPTION.differences(new Operation("GET", "/api/v1/tanks/{tank}/readings"), answer);
        assertThat(String.join(" ", found)).contains(difference == null ? "" : difference);
        assertThat(found.isEmpty()).isEqualTo(difference == null);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void everyExampleOfAnAnswer_isAsItsSchemaSays(Operation operation) {
        DESCRIPTION.operation(operation).path("responses").forEach(one ->
                DESCRIPTION.resolved(one).path("content").properties()
                        .forEach(DescriptionTest::checkExamples));
    }

    @ParameterizedTest
    @MethodSource("operations")
    void everyOperation_saysWhatRefusesIt(Operation operation) {
        JsonNode described = DESCRIPTION.operation(operation);
        assertThat(described.path("summary").asText()).isNotBlank();
        assertThat(described.path("security").isArray()).isTrue();
        if (operation.path().startsWith("/api/v1/")) {
            assertThat(described.path("responses").fieldNames()).toIterable().contains("401", "503");
        }
    }

    @Test
    void analytesAndUnits_areThoseThatTheServiceTakes() {
        JsonNode value = DESCRIPTION.root().at("/components/schemas/Value/properties");
        assertThat(texts(DESCRIPTION.root().at("/components/schemas/Analyte/enum")))
                .containsExactlyInAnyOrderElementsOf(Stream.of(Analyte.values()).map(Analyte::code).toList());
        List<UnitForm> forms = Stream.of(Analyte.values()).flatMap(analyte -> analyte.accepted().stream())
                .toList();
        assertThat(texts(value.at("/unit/enum"))).containsExactlyInAnyOrderElementsOf(
                forms.stream().map(UnitForm::unit).distinct().toList());
        assertThat(texts(value.at("/as/enum"))).containsExactlyInAnyOrderElementsOf(
                forms.stream().map(UnitForm::as).filter(as -> !as.isEmpty()).distinct().toList());
    }

    private static void checkExamples(Map.Entry<String, JsonNode> media) {
        JsonNode schema = media.getValue().path("schema");
        examples(media.getValue()).forEach(example -> assertThat(
                DESCRIPTION.check(schema, media.getKey(), text(example))).as("%s", example).isEmpty());
    }

    private static SwaggerParseResult parse(JsonNode document) {
        return new OpenAPIV3Parser().readContents(document.toString());
    }

    private static List<JsonNode> examples(JsonNode media) {
        List<JsonNode> examples = new ArrayList<>();
        if (media.has("example")) {
            examples.add(media.get("example"));
        }
        for (Map.Entry<String, JsonNode> named : media.path("examples").properties()) {
            examples.add(named.getValue().get("value"));
        }
        return examples;
    }

    private static String text(JsonNode example) {
        return example.isTextual() ? example.textValue() : example.toString();
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(one -> texts.add(one.asText()));
        return texts;
    }
}
