package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.BuiltInWorkshop;
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
import java.util.Optional;
import java.util.stream.Stream;

/** What must be true of every audit that the command gives. */
final class WholeAudit {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Sums of a few hundred numbers in another order differ by no more, in parts of their size. */
    private static final double ROUND_OFF = 1e-9;

    private WholeAudit() {}

    /**
     * Audits a house and holds its exit code and its data against one another; one that is refused is let pass. What was solved
     * for earlier houses is taken from a store, whole runs are not.
     *
     * @param folder for its documents
     * @param store for what is solved
     * @param again whether the audit is made once more from nothing, to be the same to the byte
     */
    static void check(Path house, Path folder, Path store, boolean again) throws IOException {
        Path kept = Files.createDirectories(folder.resolve("kept"));
        Run run = audited(house, kept, "--store", store.toString());
        assertTrue(run.code() <= Exit.REFUSED.code(), run::err);
        if (again) {
            Path anew = Files.createDirectories(folder.resolve("anew"));
            Run other = audited(house, anew, "--no-store");
            assertEquals(other.code(), run.code(), "exit code with a store");
            assertEquals(other.out().replace(anew.toString(), kept.toString()), run.out(), "told with a store");
            if (run.code() != Exit.REFUSED.code()) {
                same(anew, kept);
            }
        }
        if (run.code() == Exit.REFUSED.code()) {
            assertTrue(!run.err().isBlank(), "a refusal says why");
        } else {
            coherent(run, Files.readString(kept.resolve("audit.json")));
        }
    }

    /** By a workshop that remembers nothing, of no build: it keeps no whole runs. */
    private static Run audited(Path house, Path folder, String... more) {
        return Run.with(
                new BuiltInWorkshop(Optional::empty),
                Stream.concat(
                                Stream.of(
                                        "audit",
                                        house.toString(),
                                        "-o",
                                        folder.resolve("audit.pdf").toString(),
                                        "--json",
                                        folder.resolve("audit.json").toString(),
                                        "--csv",
                                        folder.resolve("audit.csv").toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private static void same(Path anew, Path kept) throws IOException {
        try (Stream<Path> documents = Files.list(anew)) {
            for (Path each : documents.toList()) {
                assertEquals(
                        -1,
                        Files.mismatch(each, kept.resolve(each.getFileName())),
                        () -> each.getFileName() + " with a store is the same to the byte");
            }
        }
    }

    private static void coherent(Run run, String data) throws IOException {
        JsonNode audit = MAPPER.readTree(data);
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
