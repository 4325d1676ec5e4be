package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.files.AtomicFiles;
import coldseam.files.Faults;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped schema follows from the file records, and judges files as an independent validator reads it. */
class HouseSchemaTest {

    private static final Path ROOT = Path.of(System.getProperty("coldseam.root"));
    private static final Path SHIPPED = ROOT.resolve("modules/envelope/src/main/resources/schema/house.schema.json");
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(HouseFile.schema());

    /** Run with -DargLine=-Dcoldseam.write=true to write it anew. */
    @Test
    void theShippedSchemaIsTheOneTheRecordsGive() throws IOException {
        if (Boolean.getBoolean("coldseam.write")) {
            AtomicFiles.write(SHIPPED, HouseFile.schema());
        }
        assertEquals(HouseFile.schema(), Files.readString(SHIPPED));
    }

    static List<Path> houses() throws IOException {
        try (Stream<Path> files = Files.list(ROOT.resolve("fixtures/houses"))) {
            return files.filter(each -> each.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("houses")
    void acceptsEachHouse(Path house) {
        assertEquals(List.of(), SCHEMA.validate(json(house)));
    }

    @Test
    void acceptsTheHouseTheFaultyOnesAreMadeFrom() {
        assertEquals(List.of(), SCHEMA.validate(json(ROOT.resolve("fixtures/faulty/good.yaml"))));
    }

    /** What an editor should underline while the file is typed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "unknown-key-at-top",
                "unknown-key-in-layer",
                "missing-key-in-site",
                "bare-number",
                "two-corners",
                "point-of-three-numbers",
                "assembly-of-no-layers",
                "framing-share",
                "list-at-top",
                "enum-word-misspelt",
                "value-left-empty",
                "name-that-is-a-number",
                "true-that-is-a-text",
                "list-for-a-value",
                "value-for-a-list",
                "no-body",
                "two-bodies",
                "explicit-surfaces",
                "neighbour-of-no-kind",
                "opening",
                "seam",
                "limits",
                "points"
            })
    void refuses(String name) throws IOException {
        Path file;
        try (Stream<Path> files = Files.list(ROOT.resolve("fixtures/faulty"))) {
            file = files.filter(each -> each.getFileName().toString().matches("\\d+-" + name + "\\.yaml"))
                    .findFirst()
                    .orElseThrow();
        }
        assertFalse(SCHEMA.validate(json(file)).isEmpty());
    }

    private static JsonNode json(Path file) {
        Faults faults = new Faults();
        JsonNode node = json(SourceDocument.read(file, faults).orElseThrow());
        assertTrue(faults.isEmpty());
        return node;
    }

    private static JsonNode json(SourceNode node) {
        if (node instanceof SourceNode.Mapping mapping) {
            ObjectNode object = NODES.objectNode();
            mapping.entries().forEach(each -> object.set(each.key(), json(each.value())));
            return object;
        }
        if (node instanceof SourceNode.Sequence sequence) {
            ArrayNode array = NODES.arrayNode();
            sequence.items().forEach(each -> array.add(json(each)));
            return array;
        }
        SourceNode.Scalar scalar = (SourceNode.Scalar) node;
        return switch (scalar.kind()) {
            case NUMBER -> DecimalNode.valueOf(new BigDecimal(scalar.text()));
            case BOOLEAN -> NODES.booleanNode(scalar.text().equals("true"));
            case TEXT -> NODES.textNode(scalar.text());
            default -> NODES.nullNode();
        };
    }
}
