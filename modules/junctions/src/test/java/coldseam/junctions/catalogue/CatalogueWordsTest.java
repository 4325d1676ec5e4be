package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** A detail's words are those of the house it is laid on. */
final class CatalogueWordsTest {

    /** What a frame house has none of, and what such words may stand beside. */
    private static final Pattern OF_MASONRY =
            Pattern.compile("\\b([Bb]rick(work)?|[Mm]asonry|[Rr]ender(ed)?|[Mm]ortar(ed)?)\\b");

    private static final Pattern BESIDE = Pattern.compile("\\bor\\b|\\b(a|the) frame\\b|\\bold masonry\\b");

    /** The words of a detail that fits framed walls name brick, render and mortar only beside what stands there in a frame. */
    @Test
    void wordsFollowTheHouse() {
        MutableList<String> faults = Lists.mutable.empty();
        int read = 0;
        for (Detail detail : CatalogueFile.builtIn().details().select(CatalogueWordsTest::fitsFrames)) {
            read++;
            told(detail)
                    .select(line -> OF_MASONRY.matcher(line).find()
                            && !BESIDE.matcher(line).find())
                    .forEach(line -> faults.add(detail.id() + ": " + line));
        }
        assertTrue(read > 150, read + " details");
        assertEquals("", faults.makeString("\n"));
    }

    private static ImmutableList<String> told(Detail detail) {
        return Lists.immutable
                .of(detail.name(), detail.looksLike())
                .newWithAll(detail.order())
                .newWithAll(detail.failures())
                .newWithAll(detail.photographs().collect(Photograph::shows));
    }

    /** Each length has its unit, or it is not put into inches with the rest: "150 to 8 in". */
    @Test
    void bothEndsOfARangeHaveTheirUnit() {
        Pattern bare = Pattern.compile("\\d to \\d+(\\.\\d+)? (mm|m)\\b");
        assertEquals(
                "",
                CatalogueFile.builtIn()
                        .details()
                        .select(detail -> told(detail)
                                .newWithAll(detail.cautions())
                                .anySatisfy(line -> bare.matcher(line).find()))
                        .collect(Detail::id)
                        .makeString("\n"));
    }

    /** A sheet that comes down from a roof over the wall laps over what sheds water there, unless that is a render on its face. */
    @Test
    void sheetsLapAsWaterRuns() {
        Pattern against = Pattern.compile("\\bdown behind the wall's (water layer|paper|membrane)\\b");
        assertEquals(
                "",
                CatalogueFile.builtIn()
                        .details()
                        .select(detail -> told(detail)
                                .anySatisfy(line -> against.matcher(line).find()))
                        .collect(Detail::id)
                        .makeString("\n"));
    }

    /** Whether it is laid on framed walls, or goes through what may be one; what is of masonry by its kind does not. */
    private static boolean fitsFrames(Detail detail) {
        if (detail.kind() instanceof PointKind kind) {
            return !kind.label().equals("chimney") && !kind.label().equals("joist end");
        }
        if (!(detail.kind() instanceof JunctionKind kind) || kind.label().equals("masonry veneer ledge")) {
            return false;
        }
        JunctionSetup setup = TypicalBuild.FRAME.setup(kind);
        boolean framed = Lists.immutable
                .of(setup.first())
                .newWithAll(setup.second().stream().toList())
                .zip(kind.faces())
                .select(pair -> pair.getTwo() == BridgeKind.Facing.SIDE)
                .allSatisfy(pair -> pair.getOne()
                        .layers()
                        .anySatisfy(layer -> layer.framing().isPresent()));
        try {
            return framed && BuiltIn.composed(detail, setup) != null;
        } catch (DetailDoesNotFit masonryAlone) {
            return false;
        }
    }
}
