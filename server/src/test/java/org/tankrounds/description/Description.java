package org.tankrounds.description;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.testing.Browserless.Answer;

/**
 * The public interface as {@code openapi.yaml} describes it, to hold answers against. Its objects are open
 * for the names of later versions; here they are closed, so that a name which nobody described is found.
 */
public final class Description {
    private static final String ADDRESS = "https://description.example/openapi";
    private static final String PLACE = "#/components/schemas/";
    /** A schema by itself keeps its parts here; the rest of the description is none. */
    private static final String DEFINITIONS = "#/$defs/";
    private static final Set<String> METHODS = Set.of("get", "head", "post", "put", "patch", "delete");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Description KEPT = new Description();

    /** @param path with its parameters in braces */
    public record Operation(String method, String path) {}

    private final JsonNode root;
    private final SchemaRegistry schemas;

    private Description() {
        try (InputStream in = Description.class.getResourceAsStream("/openapi.yaml")) {
            root = new YAMLMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        JsonNode closed = closed(root.at("/components/schemas"));
        schemas = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12, builder -> builder
                .schemas(Map.of(ADDRESS,
                        "{\"$defs\": " + closed.toString().replace(PLACE, DEFINITIONS) + "}"))
                .schemaRegistryConfig(SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build()));
    }

    public static Description get() {
        return KEPT;
    }

    public List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        root.path("paths").properties()
                .forEach(path -> path.getValue().fieldNames().forEachRemaining(name -> {
            if (METHODS.contains(name)) {
                operations.add(new Operation(name.toUpperCase(), path.getKey()));
            }
        }));
        return operations;
    }

    JsonNode operation(Operation operation) {
        return root.path("paths").path(operation.path()).path(operation.method().toLowerCase());
    }

    /** Those of the path and of the operation itself. */
    List<JsonNode> parameters(Operation operation) {
        List<JsonNode> parameters = new ArrayList<>();
        root.path("paths").path(operation.path()).path("parameters")
                .forEach(one -> parameters.add(resolved(one)));
        operation(operation).path("parameters").forEach(one -> parameters.add(resolved(one)));
        return parameters;
    }

    /** Every schema by itself. */
    Iterable<String> schemaNames() {
        return () -> root.at("/components/schemas").fieldNames();
    }

    JsonNode root() {
        return root;
    }

    /** @return what the description does not know of this answer; empty where it is as described */
    public List<String> differences(Operation operation, Answer answer) {
        String status = Integer.toString(answer.status());
        JsonNode response = resolved(operation(operation).path("responses").path(status));
        if (response.isMissingNode()) {
            return List.of("status " + status + " is not described");
        }
        List<String> found = new ArrayList<>();
        response.path("headers").properties().forEach(header -> {
            if (resolved(header.getValue()).path("required").asBoolean()
                    && answer.header(header.getKey()).isEmpty()) {
                found.add("header " + header.getKey() + " is missing");
            }
        });
        found.addAll(differencesOfBody(response, answer));
        return found;
    }

    private List<String> differencesOfBody(JsonNode response, Answer answer) {
        String type = answer.header("content-type").map(value -> value.split(";")[0]).orElse("");
        JsonNode media = response.path("content").path(type);
        if (media.isMissingNode()) {
            boolean bare = answer.body().isEmpty() || !response.has("content");
            return bare ? List.of() : List.of("type " + type + " is not described");
        }
        return check(media.path("schema"), type, answer.body());
    }

    /** @return what is wrong with a text of a media type */
    List<String> check(JsonNode schema, String type, String body) {
        if (schema.has("contentSchema")) {
            return body.lines().flatMap(line -> check(schema.path("contentSchema"), line).stream()).toList();
        }
        return type.endsWith("json") ? check(schema, body) : List.of();
    }

    private List<String> check(JsonNode schema, String json) {
        try {
            return validator(schema).validate(JSON.readTree(json)).stream().map(Object::toString).toList();
        } catch (IOException e) {
            return List.of("no JSON: " + e.getMessage());
        }
    }

    private Schema validator(JsonNode schema) {
        return schema.has("$ref")
                ? schemas.getSchema(SchemaLocation.of(absolute(schema.get("$ref").asText())))
                : schemas.getSchema(byItself(schema));
    }

    JsonNode resolved(JsonNode node) {
        return node.has("$ref") ? root.at(node.get("$ref").asText().substring(1)) : node;
    }

    /** The media type of a message that has only one. */
    Optional<Map.Entry<String, JsonNode>> onlyMedia(JsonNode message) {
        return message.path("content").properties().stream().findFirst();
    }

    private static JsonNode byItself(JsonNode schema) {
        JsonNode copy = closed(schema);
        copy.findParents("$ref")
                .forEach(node -> ((ObjectNode) node).put("$ref", absolute(node.get("$ref").asText())));
        return copy;
    }

    private static String absolute(String reference) {
        return ADDRESS + reference.replace(PLACE, DEFINITIONS);
    }

    private static JsonNode closed(JsonNode schema) {
        JsonNode copy = schema.deepCopy();
        close(copy);
        return copy;
    }

    /** Those inside of others too. */
    private static void close(JsonNode node) {
        node.forEach(Description::close);
        if (node.path("properties").isObject() && node.has("type") && !node.has("additionalProperties")) {
            ((ObjectNode) node).put("additionalProperties", false);
        }
    }
}
