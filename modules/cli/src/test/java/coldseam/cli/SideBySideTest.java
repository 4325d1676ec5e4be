package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.engine.Unknown;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.pair.PairObstacle;
import coldseam.report.AuditCsv;
import coldseam.report.words.FindingWords;
import coldseam.report.words.PairWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house whose windows stand close under a floor and close together: every two seams that touch are solved in one section. */
@Tag("slow")
class SideBySideTest {

    private static final Path HOUSE =
            Path.of(System.getProperty("coldseam.root"), "fixtures/houses/side-by-side/alder-eaves.yaml");

    private static Audit audit(Path file) {
        return HouseAudit.of(file, Bench.SHARED).compute();
    }

    /**
     * A cellar's window 157 mm under the lower face of the ground floor's floor, which elsewhere lies over a cold store and is
     * 400 mm thick: the sheet of both says as much as the table, and not how far the floor's upper face is.
     */
    @Test
    void aSheetSaysAsTheTableHowFarApartTheyAre(@TempDir Path folder) throws IOException {
        String text = Files.readString(HOUSE.resolveSibling("../shapes/part-cellar.yaml"));
        Path file = folder.resolve("house.yaml");
        Files.writeString(
                file,
                text.substring(0, text.indexOf("  other-bases:"))
                                .replace("body:", "neighbours: {store: {temperature-factor: 0.6}}\n\nbody:")
                                .replace(
                                        "    height: 2.7 m\n    walls: wall",
                                        "    height: 2.7 m\n    walls: {all: wall, east: {assembly: wall, faces: store}}")
                                .replace(
                                        "    base: {kind: slab on ground, assembly: slab}",
                                        "    base: {kind: over unheated, assembly: timber floor, faces: store}")
                                .replace("depth: 2.4 m", "depth: 1.2 m")
                        + text.substring(text.indexOf("  roof: {form"), text.indexOf("openings:"))
                        + """
                        openings:
                          light: {kind: window, surface: cellar west wall, width: 1 m, height: 0.5 m, sill: 1.643 m, transmittance: 0.8 W/(m²·K)}

                        """
                        + text.substring(text.indexOf("junctions:")));
        Audit audit = audit(file);
        PairRow row = audit.pairs().getOnly();
        assertEquals(0.157, row.pair().distance(), 1e-9);
        assertEquals(0.157, PairWords.apart(audit, row.sheet().orElseThrow()), 1e-9);
    }

    @Test
    void itIsUnbrokenAndKnownThroughThem(@TempDir Path folder) throws IOException {
        Audit external = audit(HOUSE);
        assertEquals(Lists.immutable.empty(), external.findings());
        assertTrue(external.verdict().unbroken());
        assertTrue(Unknown.of(external).none());
        assertEquals(4, external.pairs().size());
        assertTrue(external.pairs().allSatisfy(row -> row.sheet().isPresent()));
        assertEquals(
                Lists.immutable.of("head beside wall under an overhang", "jamb beside jamb"),
                external.pairSheets().collect(PairSheet::kind).toSortedList().toImmutable());
        // Three windows 1.2 m wide under the floor, and two beside each other 1.4 m high.
        assertEquals(
                3 * 1.2 + 1.4, external.pairs().sumOfDouble(row -> row.pair().length()), 1e-9);
        assertTrue(
                PairWords.count(external, UnitSystem.SI).orElseThrow().startsWith("4 of 4 pairs of seams that touch"));
        assertEquals(
                5, AuditCsv.PAIRS.text(external, UnitSystem.SI).lines().count(), "a head and a line for each pair");

        Path file = folder.resolve("internal.yaml");
        Files.writeString(file, Files.readString(HOUSE).replace("dimensions: external", "dimensions: internal"));
        Audit internal = audit(file);
        assertEquals(
                external.heatLoss().pairs(), internal.heatLoss().pairs(), "what both lose more than apart is the same");
        // Lines are rounded to a thousandth, some forty of them.
        assertEquals(
                external.heatLoss().otherSystemTotal().middle(),
                internal.heatLoss().total().middle(),
                0.02);
        for (PairSheet sheet : external.pairSheets()) {
            double shift = sheet.psi(DimensionSystem.INTERNAL).middle()
                    - sheet.psi(DimensionSystem.EXTERNAL).middle();
            double alone = Lists.immutable
                    .of(sheet.one(), sheet.other())
                    .collect(BridgeSheet::result)
                    .sumOfDouble(each ->
                            each.psiInternal().middle() - each.psiExternal().middle());
            assertEquals(alone, shift, 1e-9);
        }
    }

    /** Two windows 1 m apart, and heads that are not under the floor, disturb nothing. */
    @Test
    void fartherApartNothingIsSolvedTogether(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("apart.yaml");
        Files.writeString(
                file,
                Files.readString(HOUSE)
                        .replace("spacing: 120 mm", "spacing: 1 m")
                        .replace("sill: 0.9 m", "sill: 0.3 m"));
        Audit apart = audit(file);
        assertEquals(Lists.immutable.<PairRow>empty(), apart.pairs());
        assertEquals(0, apart.heatLoss().pairs().upper());
    }

    /** Sets and stages solve no pair, but know which cannot be solved: what is nobody's knowledge in the house is none's in them. */
    @Test
    void setsAndStagesSayWhatCannotBeSolved(@TempDir Path folder) throws IOException {
        Audit sections = HouseAudit.of(HOUSE, Bench.SHARED).computeSections();
        assertTrue(Unknown.of(sections).none());
        assertTrue(sections.pairs().allSatisfy(row -> row.sheet().isEmpty() && !row.unknown()));

        // The lintels reach into the drawing of a floor they are not cast with, and between two windows nothing is
        // left.
        Path file = folder.resolve("near.yaml");
        Files.writeString(
                file,
                Files.readString(HOUSE)
                        .replace("spacing: 120 mm", "spacing: 40 mm")
                        .replace("sill: 0.9 m", "sill: 1.0 m")
                        .replace("reinforced concrete", "cross-laminated timber")
                        .replace(
                                "detail: head-middle-lapped",
                                "detail: head-middle-lapped, parameters: {lintel: 400 mm}"));
        Audit near = audit(file);
        Audit named = HouseAudit.of(file, Bench.SHARED).computeSections();
        assertEquals(
                Lists.immutable.of(PairObstacle.NARROW, PairObstacle.REACHES),
                named.pairs()
                        .collect(row -> row.obstacle().orElseThrow())
                        .distinct()
                        .toSortedList()
                        .toImmutable());
        assertEquals(near.pairs().collect(PairRow::obstacle), named.pairs().collect(PairRow::obstacle));
        assertEquals(near.pairs().collect(PairRow::lacking), named.pairs().collect(PairRow::lacking));
        assertEquals(
                Unknown.of(near).touching().size(), Unknown.of(named).touching().size());
        ImmutableList<String> steps = named.findings()
                .select(finding -> finding.rule().equals("seams-touch"))
                .collect(new FindingWords(UnitSystem.SI)::toDo);
        assertTrue(steps.anySatisfy(step -> step.contains("are one window as large as both")), steps::toString);
        assertTrue(steps.noneSatisfy(step -> step.contains("faces of walls")), steps::toString);
    }
}
