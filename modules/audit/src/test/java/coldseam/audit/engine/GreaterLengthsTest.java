package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailDrawing;
import coldseam.junctions.language.DetailParameter;
import java.util.Optional;
import java.util.function.BiFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.api.Test;

/** What is tried is more of a length than there is, in its range, and ends at the range's end. */
class GreaterLengthsTest {

    @Test
    void whatIsTriedIsMore() {
        for (int value = 1; value < 100; value++) {
            for (int left = 1; left < 200; left++) {
                isMore(value, left);
            }
        }
    }

    private static void isMore(int value, int left) {
        double most = (value + left) * 1e-3;
        DetailParameter length =
                new DetailParameter("lap", value * 1e-3, value * 1e-3, most, "how far boards lap", true, false);
        double before = length.value();
        for (int steps = 1; steps <= 3; steps++) {
            double tried = GreaterLengths.greaterLength(length, steps);
            assertTrue(
                    tried > length.value() && tried >= before && tried <= most, steps + " of " + length + ": " + tried);
            before = tried;
        }
        assertEquals(most, before, 1e-9, length::toString);
    }

    /** Whose lap of up to 140 mm fits, of the 240 mm that its file allows. */
    private record Lapped(double lap) implements DetailDrawing {

        private static final double FITS = 0.14;

        @Override
        public ImmutableList<DetailParameter> parameters() {
            return Lists.immutable.of(new DetailParameter("lap", lap, 0.02, 0.24, "how far boards lap", true, false));
        }

        @Override
        public DetailDrawing with(ImmutableMap<String, Double> values) {
            return new Lapped(values.get("lap"));
        }
    }

    private static double lap(JunctionResult result) {
        return ((Lapped) result.detail().drawing()).lap();
    }

    /** What is advised for places of kinds, each of which needs a lap of so much, m. */
    private static ImmutableList<Double> advised(ImmutableList<JunctionKind> kinds, double... mendsFrom) {
        BiFunction<Detail, JunctionSetup, JunctionResult> computed = (detail, setup) -> {
            double lap = ((Lapped) detail.drawing()).lap();
            boolean mended = lap >= mendsFrom[kinds.indexOf(setup.kind())];
            return Sample.result(Sample.Made.good("lapped", setup.kind()).fRsi(mended ? 0.9 : 0.3), detail, setup, 0);
        };
        ImmutableList<PlannedBridge<JunctionSetup>> places = kinds.collect(kind -> {
            ImmutableList<Detail> lapped = Lists.immutable.of(lapped(kind));
            return new PlannedBridge<>(
                    kind.label(),
                    Optional.empty(),
                    1,
                    Optional.of(TypicalBuild.MASONRY.setup(kind)),
                    lapped,
                    lapped,
                    Lists.immutable.empty(),
                    Lists.immutable.empty(),
                    false);
        });
        House house = Sample.house(Sample.yaml());
        return new GreaterLengths<JunctionSetup, JunctionResult>(
                        new Merit(house.limits(), house.site().dimensions()),
                        asked -> Answers.compute(
                                "lengths",
                                asked,
                                question -> {
                                    Detail of = question.details().getOnly();
                                    if (((Lapped) of.drawing()).lap() > Lapped.FITS + 1e-9) {
                                        throw DetailDoesNotFit.of("too long");
                                    }
                                    return computed.apply(of, question.setup());
                                },
                                Progress.SILENT))
                .of(
                        places,
                        places.collect(place -> computed.apply(
                                place.options().getOnly(), place.setup().orElseThrow())))
                .collect(GreaterLengthsTest::lap);
    }

    private static Detail lapped(JunctionKind kind) {
        Detail detail = Sample.Made.good("lapped", kind).detail();
        return new Detail(
                detail.id(),
                kind,
                detail.also(),
                detail.name(),
                detail.rank(),
                detail.suits(),
                detail.looksLike(),
                detail.order(),
                detail.connections(),
                detail.failures(),
                detail.photographs(),
                detail.cautions(),
                detail.cost(),
                new Lapped(0.02),
                false);
    }

    private static double advised(double mendsFrom) {
        return advised(Lists.immutable.of(JunctionKind.JAMB), mendsFrom).getOnly();
    }

    /** Of 20 to 140 mm the least that mends, in thirds: 240 mm, which fits nowhere, keeps none of them from being tried. */
    @Test
    void theGreatestThatFitsStandsForTheMost() {
        assertEquals(0.1, advised(0.09), 1e-9);
        assertEquals(0.14, advised(0.13), 1e-9);
    }

    @Test
    void whatNothingThatFitsMendsStays() {
        assertEquals(0.02, advised(0.2), 1e-9);
    }

    /** A door's threshold and the slab's edge beside it are set back alike; jambs of the same wall are none of theirs. */
    @Test
    void whatRunsOnIntoTheOtherIsTheGreaterInBoth() {
        ImmutableList<JunctionKind> kinds =
                Lists.immutable.of(JunctionKind.SLAB_EDGE, JunctionKind.SLAB_THRESHOLD, JunctionKind.OUTSIDE_CORNER);
        assertEquals(Lists.immutable.of(0.1, 0.1, 0.02), advised(kinds, 0.09, 0, 0));
        assertEquals(Lists.immutable.of(0.1, 0.1, 0.02), advised(kinds, 0.05, 0.09, 0));
    }
}
