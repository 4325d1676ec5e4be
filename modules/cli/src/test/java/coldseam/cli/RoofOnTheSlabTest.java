package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.rules.DetailNotChosenRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house whose two slopes come down to its slab: of a kind's seams some have an option that stands in, and some have none. */
@Tag("slow")
class RoofOnTheSlabTest {

    private static final String BODY = """
            body:
              points:
                a: [0 m, 0 m, 0 m]
                b: [10 m, 0 m, 0 m]
                c: [10 m, 14 m, 0 m]
                d: [0 m, 14 m, 0 m]
                e: [0 m, 7 m, HEIGHT]
                f: [10 m, 7 m, HEIGHT]
              surfaces:
                slab: {points: [a, d, c, b], assembly: slab, use: floor, faces: ground}
                south slope: {points: [a, b, f, e], assembly: roof, use: roof}
                north slope: {points: [c, d, e, f], assembly: roof, use: roof}
                east gable: {points: [b, c, f], assembly: wall, use: wall}
                west gable: {points: [d, a, e], assembly: wall, use: wall}
              levels: {ground floor: {height: 400.2 mm}}
            """;

    @TempDir
    Path folder;

    private Audit audit(String height) throws IOException {
        String first = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        Path file = Files.writeString(
                folder.resolve("house.yaml"),
                first.substring(0, first.indexOf("body:")) + BODY.replace("HEIGHT", height));
        return HouseAudit.of(file, Bench.SHARED).compute();
    }

    /** Slopes of 36°: no slab edge is drawn under one. */
    @Test
    void seamsThatNothingStandsInForAreToldApart() throws IOException {
        Audit audit = audit("5 m");
        ImmutableList<Finding> edges = audit.findings()
                .select(finding -> finding.breaches()
                        .anySatisfy(breach -> breach.evidence() instanceof DetailNotChosenRule.Found found
                                && found.rows().getFirst().kindLabel().equals("slab edge")));
        assertEquals(
                Lists.immutable.of(true, false),
                edges.collect(finding -> ((DetailNotChosenRule.Found)
                                finding.breaches().getFirst().evidence())
                        .standIn()
                        .isPresent()));
        assertEquals(
                Lists.immutable.of(
                        "south side, ground floor, where the lowest floor meets the roof",
                        "north side, ground floor, where the lowest floor meets the roof"),
                placesOfNone(audit));
    }

    /** Slopes of 61°. */
    @Test
    void aSteepRoofHasItsSlabEdgesAndItsRidge() throws IOException {
        Audit audit = audit("12.6 m");
        assertEquals(Lists.immutable.empty(), placesOfNone(audit));
        // 58° between the slopes, measured indoors.
        assertTrue(audit.junctions()
                .detect(row -> row.kindLabel().equals("ridge"))
                .sheet()
                .isPresent());
    }

    private static ImmutableList<String> placesOfNone(Audit audit) {
        return audit.junctions()
                .select(row ->
                        row.kindLabel().equals("slab edge") && row.sheet().isEmpty())
                .collect(row -> row.edge().place())
                .toImmutableList();
    }
}
