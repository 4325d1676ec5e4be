package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.VertexRow;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.InputRow;
import coldseam.report.words.InputWords;
import coldseam.report.words.VertexWords;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No corner of the demo houses that is at right angles is left out, whatever edges meet there. */
@Tag("slow")
class RightAngledCornersTest {

    /** Those in the ground, at a change of walls, where a floor ends in an inside corner, under a bay; and where blocks meet. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "shapes/bay",
                "shapes/cape-over-cellar",
                "shapes/hillside",
                "shapes/part-cellar",
                "shapes/split-level",
                "shapes/two-wings",
                "shapes/over-the-garage",
                "shapes/drained-wall",
                "old/jettied-frame",
                "larch-house",
                "heron-row"
            })
    void eachIsComputed(String house) {
        Audit audit = Bench.shared(house);
        assertTrue(audit.vertices().notEmpty());
        ImmutableList<String> left = audit.vertices()
                .select(row -> row.sheet().isEmpty() && !aslant(row) && !flat(row))
                .collect(row -> row.corner().name() + ": " + row.obstacle() + row.reasons());
        assertEquals(Lists.immutable.empty(), left);
    }

    /** Where two floors of one height, or two walls, go on from one another in one plane. */
    private static boolean flat(VertexRow row) {
        return row.obstacle().filter(VertexRow.Obstacle.NO_CORNER::equals).isPresent();
    }

    /** Slopes, and eaves whose rafters are drawn as they lie. */
    private static boolean aslant(VertexRow row) {
        return row.obstacle().filter(VertexRow.Obstacle.ASLANT::equals).isPresent()
                || row.reasons().notEmpty()
                        && row.reasons().allSatisfy(each -> each.toString().contains("aslant"));
    }

    /** Flush outside, stepped indoors; the eaves' rafters are drawn aslant over what conducts nothing. */
    @Test
    void thoseOfWallsThatStepIndoorsAreComputed() {
        Audit audit = Bench.shared("shapes/cape-over-cellar");
        String count = VertexWords.count(audit);
        assertTrue(
                count.startsWith(
                        "12 of 12 corners where edges meet are computed, 4 on the ground, 4 where walls change"),
                count);
        // Between the cellar's blocks and the frame above no ground is near: no floor's U holds what that corner loses.
        assertEquals(
                "not counted where layers change, in the U of the floor, ISO 13370",
                audit.vertexSheets()
                        .select(sheet -> sheet.result().heat().isEmpty())
                        .collect(sheet -> VertexWords.uncounted(sheet.result().setup()))
                        .makeString());
    }

    @Test
    void thoseBesideTheGroundAreToldApart() {
        Audit audit = Bench.shared("shapes/walk-out");
        assertEquals(
                "12 of 12 corners where edges meet are computed, 4 on the ground, 4 where walls change for their"
                        + " temperature alone; not: those of 9 windows and doors",
                VertexWords.count(audit));
    }

    /** What sheets draw and solve has its conductivity's source beside those of the layers. */
    @Test
    void whatDetailsAreBuiltOfHasItsSource() {
        ImmutableList<InputRow> inputs = InputWords.of(Bench.shared("shapes/cape-over-cellar"), UnitSystem.SI);
        for (String brought : new String[] {"cellular glass board", "structural foam block"}) {
            assertEquals(1, inputs.count(row -> row.what().equals("Conductivity of " + brought)), brought);
        }
        ImmutableList<String> names =
                inputs.collect(InputRow::what).select(what -> what.startsWith("Conductivity of "));
        assertEquals(names.distinct(), names);
    }
}
