package coldseam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.engine.GroundRow;
import coldseam.audit.engine.Sample;
import coldseam.files.AtomicFiles;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class AuditJsonTest {

    private static final Audit AUDIT = SampleAudit.create();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String shipped() throws IOException {
        try (InputStream in = AuditJson.class.getResourceAsStream("/coldseam/report/audit.schema.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<Error> errors(JsonNode document) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(MAPPER.readTree(shipped()));
        return schema.validate(document);
    }

    @Test
    void keepsToTheShippedSchema() throws IOException {
        assertEquals(List.of(), errors(MAPPER.readTree(AuditJson.text(AUDIT))));
    }

    @Test
    void shipsTheSchemaOfWhatItWrites() throws IOException {
        if (Boolean.getBoolean("coldseam.write")) {
            AtomicFiles.write(Path.of("src/main/resources/coldseam/report/audit.schema.json"), AuditJson.schema());
            return; // The copy on the class path is older.
        }
        assertEquals(AuditJson.schema(), shipped());
    }

    @Test
    void schemaRefusesWhatIsMissingOrUnknown() throws IOException {
        ObjectNode without = (ObjectNode) MAPPER.readTree(AuditJson.text(AUDIT));
        without.remove("verdict");
        assertFalse(errors(without).isEmpty());
        ObjectNode more = (ObjectNode) MAPPER.readTree(AuditJson.text(AUDIT));
        ((ObjectNode) more.get("heatLoss")).put("total", 3);
        assertFalse(errors(more).isEmpty());
        ObjectNode text = (ObjectNode) MAPPER.readTree(AuditJson.text(AUDIT));
        ((ObjectNode) text.at("/heatLoss/total_W_per_K")).put("lower", "96.7");
        assertFalse(errors(text).isEmpty());
    }

    @Test
    void carriesUnroundedBoundsUnderKeysWithUnits() throws IOException {
        JsonNode json = MAPPER.readTree(AuditJson.text(AUDIT));
        assertEquals(
                AUDIT.heatLoss().total().lower(),
                json.at("/heatLoss/total_W_per_K/lower").asDouble());
        assertEquals(
                0.58104, json.at("/junctionSheets/0/psiExternal_W_per_mK/lower").asDouble());
        assertEquals(
                0.58131, json.at("/junctionSheets/0/psiExternal_W_per_mK/upper").asDouble());
        assertEquals(AUDIT.junctions().size(), json.get("edges").size());
        assertEquals(AUDIT.findings().size(), json.get("findings").size());
        assertEquals("gap", json.at("/findings/0/severity").asText());
    }

    /** ISO 13370's sizes in the data are those of the page, and hold together. */
    @Test
    void carriesWhatUOfTheGroundFollowsFrom() throws IOException {
        JsonNode json = MAPPER.readTree(AuditJson.text(AUDIT));
        assertEquals(1, json.at("/floorsOnGround").size());
        JsonNode floor = json.at("/floorsOnGround/0");
        double perimeter = floor.get("exposedPerimeter_m").asDouble();
        assertEquals(json.at("/shell/exposedPerimeter_m").asDouble(), perimeter, 1e-9);
        assertEquals(
                json.at("/shell/groundFloorArea_m2").asDouble(),
                floor.get("area_m2").asDouble(),
                1e-9);
        assertEquals(
                2 * floor.get("area_m2").asDouble() / perimeter,
                floor.get("characteristicDimension_m").asDouble(),
                1e-9);
        GroundRow row = GroundRow.of(AUDIT).getOnly();
        assertEquals(
                row.method().equivalentThickness(),
                floor.get("equivalentThickness_m").asDouble());
        assertEquals(
                row.method().transmittance(),
                floor.get("transmittance_W_per_m2K").asDouble());
        assertFalse(floor.has("depth_m"), "of a slab on the ground");
    }

    @Test
    void aFindingBearsTheValuesItWasFoundBy() throws IOException {
        JsonNode json = MAPPER.readTree(AuditJson.text(AUDIT));
        JsonNode breach = json.at("/findings/0/breaches/1");
        assertEquals("transmittance-over-limit", breach.at("/rule").asText());
        assertEquals("psi", breach.at("/values/0/name").asText());
        assertEquals(0.58104, breach.at("/values/0/lower").asDouble());
        assertEquals(0.58131, breach.at("/values/0/upper").asDouble());
        assertEquals("W/(m·K)", breach.at("/values/0/unit").asText());
        assertEquals(0.01, breach.at("/values/1/lower").asDouble());
        assertEquals("layer-broken", json.at("/findings/0/rule").asText());
        assertEquals("J1", json.at("/findings/0/sheet").asText());
    }

    @Test
    void aSourceIsAWordWithItsSentenceBeside() throws IOException {
        JsonNode json = MAPPER.readTree(AuditJson.text(AUDIT));
        assertEquals("computed", json.at("/edges/0/source").asText());
        JsonNode corner = json.at("/edges/4");
        assertEquals("own", corner.at("/source").asText());
        assertEquals("from a handbook", corner.at("/sourceSays").asText());
    }

    @Test
    void isTheSameTextTwice() {
        assertEquals(AuditJson.text(AUDIT), AuditJson.text(SampleAudit.create()));
    }

    @Test
    void csvHasOneRowForEachEdgeAndEachLine() {
        var units = coldseam.files.quantity.UnitSystem.SI;
        String[] edges = AuditCsv.EDGES.text(AUDIT, units).split("\r\n");
        assertEquals(AUDIT.junctions().size() + 1, edges.length);
        assertTrue(edges[0].contains("psi lower W/(m·K)"), edges[0]);
        assertTrue(edges[1].startsWith("\"slab edge: floor, south wall\",slab edge,floor,south wall,"), edges[1]);
        assertTrue(edges[1].endsWith(",10,0.58104,0.58131,1,5.8104,5.8131,,gap,computed,1,,,"), edges[1]);
        String[] lines = AuditCsv.HEAT_LOSS.text(AUDIT, units).split("\r\n");
        assertEquals(AUDIT.heatLoss().lines().size() + 2, lines.length);
        assertTrue(lines[lines.length - 1].startsWith("total,,"), lines[lines.length - 1]);
    }

    /** As the page says "in ψ": whoever reckons with b of the two surfaces would count it twice. */
    @Test
    void csvSaysWherePsiHoldsTheFactorsOfItsSurfaces() {
        var units = coldseam.files.quantity.UnitSystem.SI;
        Audit beside = Sample.besideAGarage(Sample.yaml(), Sample.computer()::compute);
        String[] edges = AuditCsv.EDGES.text(beside, units).split("\r\n");
        for (int i = 1; i < edges.length; i++) {
            JunctionRow row = beside.junctions().get(i - 1);
            boolean garage = row.name().contains("south wall");
            assertEquals(garage, edges[i].contains(",yes,"), edges[i]);
        }
        String table = AuditCsv.HEAT_LOSS.text(beside, units);
        assertTrue(table.contains(",1,yes,") && table.contains(",1,,"), table);
    }

    /** However many places a finding names in words, its status is that of every set it is about. */
    @Test
    void pointsInCsvBearTheStatusOfWhatWasFoundAboutThem() {
        String[] rows = AuditCsv.POINTS
                .text(SampleAudit.withPoints(), coldseam.files.quantity.UnitSystem.SI)
                .split("\r\n");
        assertEquals(7, rows.length);
        for (int i = 1; i <= 5; i++) {
            assertTrue(rows[i].endsWith(",weak,computed,1"), rows[i]);
        }
        assertTrue(rows[6].endsWith(",in order,computed,"), rows[6]);
    }

    @Test
    void moistureIsDataToo() throws IOException {
        JsonNode json = MAPPER.readTree(AuditJson.text(AUDIT));
        assertEquals(0.75, json.at("/mould/designNeed").asDouble());
        assertEquals(9, json.at("/mould/monthly/months").size());
        assertTrue(json.at("/mould/surfaces/0/wetAtDesign").asBoolean());
        assertFalse(json.at("/mould/surfaces/1/wetAtDesign").asBoolean());
        assertEquals(12, json.at("/assemblies/0/condensation/months").size());
        assertFalse(json.at("/assemblies/2/condensation/checked").asBoolean());
        String[] rows = AuditCsv.MOISTURE
                .text(AUDIT, coldseam.files.quantity.UnitSystem.SI)
                .split("\r\n");
        assertEquals(AUDIT.assemblies().size() + 1, rows.length);
        assertTrue(rows[0].contains("most kg/m²"), rows[0]);
        assertTrue(rows[3].contains("not checked") && rows[3].contains("meets the ground"), rows[3]);
        assertEquals(
                ((coldseam.audit.Subject.Bridges) AUDIT.findings().getFirst().subject())
                        .rows()
                        .size(),
                json.at("/findings/0/edges").size());
    }

    /** A row for each surface and opening. */
    @Test
    void areasAreDataToo() throws IOException {
        var units = coldseam.files.quantity.UnitSystem.SI;
        String[] surfaces = AuditCsv.SURFACES.text(AUDIT, units).split("\r\n");
        assertEquals(AUDIT.shell().surfaces().size() + 1, surfaces.length);
        assertTrue(surfaces[0].contains("net area, external dimensions m²"), surfaces[0]);
        assertEquals("floor,below,floor,slab on foam,ground,1,80,72,0,80", surfaces[1]);
        String[] openings = AuditCsv.OPENINGS.text(AUDIT, units).split("\r\n");
        assertEquals(AUDIT.house().openings().size() + 1, openings.length);
        JsonNode json = MAPPER.readTree(AuditJson.text(AUDIT));
        assertEquals(AUDIT.house().openings().size(), json.get("openings").size());
    }

    @Test
    void csvGivesTheUnitsAskedFor() {
        String us = AuditCsv.EDGES.text(AUDIT, coldseam.files.quantity.UnitSystem.US);
        assertTrue(us.startsWith("edge,kind,"), us);
        assertTrue(us.contains("psi lower Btu/(h·ft·°F)"), us);
        assertFalse(us.contains("W/(m·K)"), us);
    }
}
