package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.engine.Sample;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

class DifferenceWordsTest {

    private static Audit audit(String more) {
        return Sample.audit(
                Sample.yaml() + "openings:\n  pane: {kind: window, surface: ground floor south wall, width: 1 m,"
                        + " height: 1 m, sill: 0.8 m, transmittance: 0.9 W/(m²·K)" + more + "}\n",
                Sample.good());
    }

    /** Four corners of one detail are told once, as what all four are. */
    @Test
    void whatSeveralSeamsHaveAlikeIsToldOnce() {
        ImmutableList<Sample.Made> other = Sample.goodBut(
                Sample.Made.good("corner-good", JunctionKind.OUTSIDE_CORNER).psi(0.1));
        Audit worse = Sample.audit(
                Sample.yaml().replace("corner-good", "corner-other"),
                other.newWith(Sample.Made.good("corner-other", JunctionKind.OUTSIDE_CORNER)));
        assertEquals(
                Lists.immutable.of("Outside corner: corner good, now corner other"),
                DifferenceWords.between(Sample.audit(Sample.yaml(), Sample.good()), worse, UnitSystem.SI)
                        .collect(DifferenceWords.Difference::line)
                        .select(line -> line.startsWith("Outside corner")));
    }

    private static ImmutableList<String> lines(String before, String after) {
        return DifferenceWords.between(
                        Sample.audit(before, Sample.good()), Sample.audit(after, Sample.good()), UnitSystem.SI)
                .collect(DifferenceWords.Difference::line);
    }

    /** A wall that faces a garage now, and loses less through it. */
    @Test
    void whatASurfaceFacesIsTold() {
        String yaml = Sample.yaml();
        ImmutableList<String> lines = lines(
                yaml,
                yaml.replace("\nbody:", "\nneighbours: {garage: {temperature-factor: 0.8}}\nbody:")
                        .replace("walls: {all: wall}", "walls: {all: wall, east: {assembly: wall, faces: garage}}"));
        assertTrue(
                lines.contains("Ground floor east wall: wall, faces outdoors, now wall, faces garage"),
                lines::toString);
    }

    @Test
    void whatStaysOfAnOldHouseIsTold() {
        ImmutableList<String> lines =
                lines(Sample.yaml(), Sample.yaml() + "retrofit: {built-new: [lowest floor], taken-down: [parapet]}\n");
        assertTrue(lines.contains("Built new: new, lowest floor"), lines::toString);
        assertTrue(lines.contains("Taken down: new, parapet"), lines::toString);
    }

    @Test
    void howBoardsAreFixedAndLaidIsTold() {
        String yaml = Sample.yaml();
        int end = yaml.indexOf("  bare wall:");
        ImmutableList<String> lines = lines(
                yaml,
                yaml.substring(0, end).stripTrailing()
                        + "\n    gaps: bridging\n    fasteners: {material: stainless steel, diameter: 5 mm, number: 6 per m², recess: 20 mm}\n"
                        + yaml.substring(end));
        assertTrue(lines.anySatisfy(line -> line.contains("heads 20 mm deep; air gaps bridging")), lines::toString);
    }

    /** What the seams round a window hang on is told, whatever its size and U. */
    @Test
    void whatAWindowIsSetIntoIsTold() {
        assertEquals(
                Lists.immutable.of(
                        "Frame of pane: 80 mm deep, now 120 mm deep, under a shutter's box",
                        "Lintel of pane: new, timber"),
                DifferenceWords.between(
                                audit(", frame-depth: 80 mm"),
                                audit(", frame-depth: 120 mm, shutter-box: true, lintel: timber"),
                                UnitSystem.SI)
                        .collect(DifferenceWords.Difference::line)
                        .select(line -> line.contains("pane")));
    }
}
