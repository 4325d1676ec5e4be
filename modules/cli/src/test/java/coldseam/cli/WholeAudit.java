package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.report.AuditJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What must be true of every audit that the command gives. */
final class WholeAudit {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Sums of a few hundred numbers in another order differ by no more, in parts of their size. */
    private static final double ROUND_OFF = 1e-9;

    private WholeAudit() {}

    /** Audits a house and holds its exit code and its data against one another; one that is refused is let pass. */
    static void check(Path house, Path folder) throws IOException {
        Path data = folder.resolve("audit.json");
        Run run = Run.of(
                "audit",
                house.toString(),
                "-o",
                folder.resolve("audit.pdf").toString(),
                "--json",
                data.toString(),
                "--csv",
                folder.resolve("audit.csv").toString());
        assertTrue(run.code() <= Exit.REFUSED.code(), run::err);
        if (run.code() == Exit.REFUSED.code()) {
            assertTrue(!run.err().isBlank(), "a refusal says why");
            return;
        }
        JsonNode audit = MAPPER.readTree(Files.readString(data));
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(MAPPER.readTree(AuditJson.schema()));
        assertEquals(List.of(), schema.validate(audit), "the data keep to their schema");
        assertEquals(
                run.code() == Exit.UNBROKEN.code(), audit.at("/findings").isEmpty(), "exit code and findings agree");
        ordered(audit, "");
        assertTrue(!run.out().contains("NaN") && !run.out().contains("Infinity"), run::out);
        JsonNode loss = audit.at("/heatLoss");
        for (String bound : List.of("lower", "upper")) {
            double sum = 0;
            double size = 0;
            for (JsonNode line : loss.get("lines")) {
                double one = line.at("/loss_W_per_K/" + bound).asDouble();
                sum += one;
                size += Math.abs(one);
            }
            double total = loss.at("/total_W_per_K/" + bound).asDouble();
            assertEquals(total, sum, ROUND_OFF * size, "H_T is the sum of its lines, " + bound);
        }
    }

    /** Every interval has its bounds in order. */
    private static void ordered(JsonNode node, String at) {
        if (node.has("lower") && node.has("upper")) {
            assertTrue(node.get("lower").asDouble() <= node.get("upper").asDouble(), () -> at + ": " + node);
        }
        node.fieldNames().forEachRemaining(name -> ordered(node.get(name), at + "/" + name));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            ordered(node.get(i), at + "/" + i);
        }
    }
}
