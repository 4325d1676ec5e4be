package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What is written as data, against the schemas that are shipped. */
final class DataSchemas {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String SHIPPED = "coldseam/report/%s.schema.json";

    private DataSchemas() {}

    /** Fails where the text breaks the schema, a text of another shape would not, or another schema is shipped. */
    static void check(String name, String schema, String text) throws IOException {
        Schema read = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(MAPPER.readTree(schema));
        ObjectNode data = (ObjectNode) MAPPER.readTree(text);
        assertEquals(List.of(), read.validate(data));
        data.put("surprise", 1);
        assertFalse(read.validate(data).isEmpty(), "an unknown key");
        data.remove("surprise");
        data.remove("formatVersion");
        assertFalse(read.validate(data).isEmpty(), "a key left out");
        String path = SHIPPED.formatted(name);
        if (Boolean.getBoolean("coldseam.write")) {
            Files.writeString(CommittedReport.ROOT.resolve(Path.of("modules/report/src/main/resources", path)), schema);
            return; // The copy on the class path is older.
        }
        try (InputStream in = DataSchemas.class.getResourceAsStream("/" + path)) {
            assertEquals(new String(in.readAllBytes(), StandardCharsets.UTF_8), schema, name);
        }
    }
}
