package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BinderTest {

    enum Colour {
        DARK_RED,
        GREEN
    }

    @Positional
    record Spot(double x, double y, Position place) {}

    sealed interface Shape2 {}

    @Marked("radius")
    record Disc(@Unit(Dimension.LENGTH) double radius) implements Shape2 {}

    @Whole
    record Polyline(ImmutableList<Spot> spots) implements Shape2 {}

    @Short
    record Preset(String name) implements Shape2 {}

    @Noun("a thing")
    record Thing(
            String name,
            @Unit(Dimension.THICKNESS) double thickness,
            double plain,
            int count,
            boolean flag,
            Colour colour,
            @Default("green") Colour second,
            @Default("3 in") @Unit(Dimension.THICKNESS) double gap,

            @Default("7") @Bounds(atLeast = "1", below = "10")
            int few,

            Optional<String> note,
            OptionalDouble maybe,
            OptionalInt perhaps,
            @Default("") ImmutableSet<Colour> colours,
            @Default("") ImmutableList<Shape2> shapes,
            @Default("") ImmutableMap<String, Disc> discs,
            @Default("") ImmutableList<Named<Disc>> inOrder,
            Optional<Located<String>> marked,
            @Key("in") Optional<Spot> inside,
            Optional<SourceNode> raw,
            Position place) {}

    private static final String LEAST = "{name: a, thickness: 8 in, plain: 2.5, count: 3, flag: true, colour: dark red";

    private static <T> Optional<T> bind(String text, Class<T> type, Faults faults) {
        return SourceDocument.read("x.yaml", text.getBytes(StandardCharsets.UTF_8), faults)
                .flatMap(node -> Binder.bind(node, type, faults));
    }

    private static Thing good(String text) {
        Faults faults = new Faults();
        Optional<Thing> thing = bind(text, Thing.class, faults);
        assertEquals("", faults.sorted().collect(Fault::message).makeString("\n"));
        return thing.orElseThrow();
    }

    @Nested
    class AWordInPlaceOfAMapping {
        record Air(Colour colour, @Default("0") int openings) {}

        record Layer(Air air) {}

        @Test
        void isToldWithItsKey() {
            assertTrue(faults("{air: dark red}", Layer.class).contains("write it so: {colour: dark red}"));
            assertTrue(faults("{air: none}", Layer.class).endsWith("write it so: {colour: dark red}"));
        }
    }

    @Nested
    class AKeyByItsSymbol {
        record Pane(
                @Unit(Dimension.TRANSMITTANCE) double transmittance,
                @Unit(Dimension.TRANSMITTANCE) OptionalDouble frameTransmittance,
                @Unit(Dimension.CONDUCTIVITY) OptionalDouble conductivity) {}

        record Studs(@Unit(Dimension.SHARE) double share) {}

        /** Studs are known by their spacing, which is not what a share is; it says at least which key is meant. */
        @Test
        void isAskedForWhereStudsHaveASpacing() {
            assertTrue(faults("{spacing: 625 mm}", Studs.class).endsWith("did you mean \"share\"?"));
        }

        @Test
        void isAskedFor() {
            for (String symbol : List.of("U", "u-value", "Uw", "U_factor")) {
                String told = faults("{" + symbol + ": 1.1 W/(m2·K)}", Pane.class);
                assertTrue(told.endsWith("did you mean \"transmittance\"?"), told);
                assertFalse(told.contains("needs the key"), told);
            }
            String told = faults("{transmittance: 1 W/(m2·K), lambda: 0.03 W/(m·K)}", Pane.class);
            assertTrue(told.endsWith("did you mean \"conductivity\"?"), told);
            assertFalse(faults("{transmittance: 1 W/(m2·K), R: 3}", Pane.class).contains("did you mean"));
        }
    }

    private static String faults(String text, Class<?> type) {
        Faults faults = new Faults();
        assertTrue(bind(text, type, faults).isEmpty());
        return faults.sorted().collect(Fault::message).makeString("\n");
    }

    @Test
    void bindsEachTypeAndFillsInDefaults() {
        Thing thing = good(LEAST + "}");
        assertEquals("a", thing.name());
        assertEquals(0.2032, thing.thickness(), 1e-15);
        assertEquals(2.5, thing.plain());
        assertEquals(3, thing.count());
        assertTrue(thing.flag());
        assertEquals(Colour.DARK_RED, thing.colour());
        assertEquals(Colour.GREEN, thing.second());
        assertEquals(0.0762, thing.gap(), 1e-15);
        assertEquals(7, thing.few());
        assertEquals(Optional.empty(), thing.note());
        assertEquals(OptionalDouble.empty(), thing.maybe());
        assertEquals(OptionalInt.empty(), thing.perhaps());
        assertEquals(Sets.immutable.empty(), thing.colours());
        assertEquals(Lists.immutable.empty(), thing.inOrder());
        assertEquals(Maps.immutable.empty(), thing.discs());
        assertEquals(new Position("x.yaml", 1, 1), thing.place());
    }

    @Test
    void bindsWhatIsGiven() {
        Thing thing = good(LEAST + """
                , note: n, maybe: 1e3, perhaps: -2, colours: [green, dark red], few: 1,
                  shapes: [{radius: 2 ft}, [[1, 2], [3, 4]], round],
                  discs: {b: {radius: 1 m}, a: {radius: 2 m}},
                  in-order: {b: {radius: 1 m}, a: {radius: 2 m}},
                  marked: here, in: [5, 6], raw: [7]}""");
        assertEquals(Optional.of("n"), thing.note());
        assertEquals(OptionalDouble.of(1000), thing.maybe());
        assertEquals(OptionalInt.of(-2), thing.perhaps());
        assertEquals(Sets.immutable.with(Colour.GREEN, Colour.DARK_RED), thing.colours());
        assertEquals(new Disc(0.6096), thing.shapes().get(0));
        assertEquals(
                new Polyline(Lists.immutable.with(
                        new Spot(1, 2, new Position("x.yaml", 2, 29)), new Spot(3, 4, new Position("x.yaml", 2, 37)))),
                thing.shapes().get(1));
        assertEquals(new Preset("round"), thing.shapes().get(2));
        assertEquals(new Disc(2), thing.discs().get("a"));
        assertEquals("b, a", thing.inOrder().collect(Named::name).makeString());
        assertEquals(new Position("x.yaml", 4, 14), thing.inOrder().getFirst().place());
        assertEquals(
                new Located<>("here", new Position("x.yaml", 5, 11)),
                thing.marked().orElseThrow());
        assertEquals(5, thing.inside().orElseThrow().x());
        assertEquals("a list of 1", thing.raw().orElseThrow().shown());
    }

    @Test
    void reportsAllFaultsAtOnceByPosition() {
        assertEquals("""
                x.yaml:1:8: name is needed; got 7; allowed: a text; put it in quotes
                x.yaml:2:1: a thing has no such key; got "thicknes"; allowed: name, thickness, plain, count, flag, colour, \
                second, gap, few, note, maybe, perhaps, colours, shapes, discs, in-order, marked, in, raw; did you mean \
                "thickness"?
                x.yaml:3:8: plain is needed; got "much"; allowed: a number without a unit; write a number
                x.yaml:4:8: count is needed; got 2.5; allowed: a whole number; write a whole number
                x.yaml:5:7: flag is needed; got "on"; allowed: true, false; write one of them
                x.yaml:6:9: colour is needed; got "dark rde"; allowed: dark red, green; did you mean "dark red"?
                x.yaml:7:6: few is out of range; got 10; allowed: at least 1 and less than 10; check value and unit
                x.yaml:8:10: a shape2 is needed; got the keys radios; allowed: a mapping with the key radius, or a list \
                [[x, y], …], or one value; did you mean "radius"?
                x.yaml:8:23: a spot is needed; got a list of 1; allowed: a list [x, y]; write all of them
                x.yaml:9:5: in is needed; got "middle"; allowed: a list [x, y]; write its values in brackets, a comma between them""", faults("""
                        name:  7
                        thicknes: 8 in
                        plain: much
                        count: 2.5
                        flag: on
                        colour: dark rde
                        few: 10
                        shapes: [{radios: 1},[[1]]]
                        in: middle
                        """, Thing.class));
    }

    record Owner(
            @Defines("pet") @Default("") ImmutableList<Named<Disc>> pets,
            @Refers("pet") ImmutableList<String> walks) {}

    @Test
    void checksNamesOnceAllIsRead() {
        Faults none = new Faults();
        assertTrue(bind("{walks: [cat], pets: {cat: {radius: 1 m}}}", Owner.class, none)
                .isPresent());
        assertTrue(none.isEmpty());
        // The reference is right or wrong whatever else is: the dog exists although it has a fault of its own.
        assertEquals(
                "x.yaml:1:10: no pet has this name; got \"cat\"; allowed: dog; write one of these, or define it\n"
                        + "x.yaml:1:42: radius: a length is needed; got 1 without a unit; allowed: a number with its unit,"
                        + " such as 2.9 m or 9 ft 2 in; write the unit after the number",
                faults("{walks: [cat, dog], pets: {dog: {radius: 1}}}", Owner.class));
        assertEquals(
                "x.yaml:1:10: leader is needed; got a mapping with radius; allowed: the name of one pet; write its name"
                        + " here",
                faults("{leader: {radius: 1 m}, pets: {dog: {radius: 1 m}}}", Lead.class));
    }

    record Lead(
            @Defines("pet") @Default("") ImmutableList<Named<Disc>> pets,
            @Refers("pet") String leader) {}

    record Even(@Doc("Even.") int number, int other) {
        Even {
            if (number % 2 != 0) {
                throw new BadValueException("number", "an even number is needed", "" + number, "", "double it");
            }
        }
    }

    record Both(int a, int b, Position place) implements SelfChecking {
        @Override
        public void check(Faults faults) {
            faults.add(place, "a is never right", "" + a, "", "");
            faults.add(place, "b is never right", "" + b, "", "");
        }
    }

    @Test
    void placesWhatARecordRefusesItself() {
        assertEquals(
                "x.yaml:1:11: an even number is needed; got 3; double it",
                faults("{number:  3, other: 4}", Even.class));
        assertEquals(
                "x.yaml:1:1: a is never right; got 1\nx.yaml:1:1: b is never right; got 2",
                faults("{a: 1, b: 2}", Both.class));
    }

    record Plain(String name, @Inline Even even, int a, int b) {}

    @Noun("a thing said")
    record Said(String name, @Inline Even even, @Inline Both both, Optional<String> remark) {}

    /** What a file says is shown as it says it, to whoever thinks in feet, too. */
    @Test
    void whatIsReadIsShownAsItIsWritten() {
        Faults faults = new Faults();
        bind("{name: n, number: 1,200 mm, other: 4, a: 1, b: 2 m}", Said.class, faults);
        String said =
                faults.sorted().collect(each -> each.message(UnitSystem.US)).makeString("\n");
        assertTrue(said.contains("got \"200 mm\"; allowed"), said);
        assertTrue(said.contains("got \"2 m\"; allowed"), said);
    }

    @Test
    void theKeysOfWhatIsInlinedStandBesideTheOthers() {
        Faults none = new Faults();
        assertEquals(
                Optional.of("{name: n, other: 4}"),
                bind("{name: n, number: 2, other: 4, a: 1, b: 2}", Plain.class, none)
                        .map(said -> "{name: " + said.name() + ", other: "
                                + said.even().other() + "}"));
        assertTrue(none.isEmpty());
        assertEquals(
                "x.yaml:1:1: a thing said needs the key other; add it: other: …\n"
                        + "x.yaml:1:11: a thing said has no such key; got \"numbr\"; allowed: name, number, other, a, b, remark;"
                        + " did you mean \"number\"?",
                faults("{name: n, numbr: 2, a: 1, b: 2}", Said.class));
        assertEquals(
                "x.yaml:1:19: an even number is needed; got 3; double it",
                faults("{name: n, number: 3, other: 4, a: 1, b: 2}", Said.class));
        assertEquals(
                "x.yaml:1:1: a is never right; got 1\nx.yaml:1:1: b is never right; got 2",
                faults("{name: n, number: 2, other: 4, a: 1, b: 2}", Said.class));
        assertTrue(SchemaWriter.of(Said.class, "said").contains("\"number\""));
    }

    /** Holds its parts against one another, as far as they are there. */
    record Whole2(
            @Default("") ImmutableList<Named<Disc>> discs,
            ImmutableList<Both> pairs,
            @Unit(Dimension.LENGTH) double most)
            implements SelfChecking {

        @Override
        public void check(Faults faults) {
            discs.select(each -> each.value().radius() > 1)
                    .forEach(each -> faults.add(each.place(), "a disc is too large", each.name(), "", "shrink it"));
            faults.add(pairs.getFirst().place(), "the first pair is told", "", "", "do nothing");
        }
    }

    private static ImmutableList<String> asked(String text) {
        Faults faults = new Faults();
        SourceNode node = SourceDocument.read("test.yaml", text.getBytes(StandardCharsets.UTF_8), faults)
                .orElseThrow();
        assertTrue(Binder.bind(node, Whole2.class, faults).isEmpty());
        return faults.sorted().collect(Fault::asked);
    }

    /** A pair has faults of its own; the whole is checked though a pair or a disc of it is faulty. */
    @Test
    void faultsOfPartsDoNotHideTheWholesOwn() {
        assertEquals(
                Lists.immutable.of(
                        "a disc is too large",
                        "radius",
                        "a is never right",
                        "b is never right",
                        "the first pair is told"),
                asked("discs:\n  large: {radius: 2 m}\n  bad: {radius: 2 kg}\npairs: [{a: 1, b: 1}]\nmost: 1 m\n")
                        .collect(each -> each.contains("radius") ? "radius" : each));
    }

    /** What hangs on a part that is not there is not checked, and nothing is made up about it. */
    @Test
    void whatIsMissingIsNotCheckedAgainst() {
        assertEquals(
                Lists.immutable.of("a disc is too large", "pairs is needed"),
                asked("discs:\n  large: {radius: 2 m}\npairs: 7\nmost: 1 m\n"));
    }
}
