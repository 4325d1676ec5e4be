package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.AllCores;
import coldseam.conduction.Interval;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Prices;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Once;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Cost;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.tuple.Pair;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.eclipse.collections.impl.tuple.Tuples;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Lengths of a detail's own that a house sets, the depth of a cellar, and prices. */
class DetailParametersTest {

    private static final BridgeComputer COMPUTER = BridgeComputers.computer(new Accuracy(1e-2, 60_000));

    private static Detail builtIn(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    private static JunctionSetup cellar(OptionalDouble depth) {
        JunctionSetup typical = TypicalBuild.MASONRY.setup(JunctionKind.CELLAR_SLAB_EDGE);
        return new JunctionSetup(
                typical.kind(),
                typical.first(),
                typical.second(),
                typical.angle(),
                typical.firstExposure(),
                typical.secondExposure(),
                typical.opening(),
                typical.floorThickness(),
                typical.upstand(),
                Optional.of(new JunctionSetup.GroundBlock(2.0, 8, 0.4, depth, Optional.empty())),
                typical.indoorTemperature(),
                typical.outdoorTemperature());
    }

    @Test
    void aParameterThatIsSetMovesTheDrawing() {
        Detail strip = builtIn("cellar-slab-edge-strip");
        DetailParameter own = strip.parameters().detect(each -> each.name().equals("strip"));
        assertEquals(0.05, own.value());
        assertFalse(own.given());
        Detail thick = strip.with(Maps.immutable.of("strip", 0.1));
        assertTrue(
                thick.parameters().detect(each -> each.name().equals("strip")).given());
        JunctionSetup setup = cellar(OptionalDouble.empty());
        double thin = COMPUTER.compute(strip, setup).psiExternal().lower();
        assertTrue(COMPUTER.compute(thick, setup).psiExternal().upper() < thin, "a thicker strip loses less");
        assertThrows(IllegalArgumentException.class, () -> strip.with(Maps.immutable.of("strip", 0.11)));
        assertThrows(IllegalArgumentException.class, () -> strip.with(Maps.immutable.of("stripe", 0.1)));
    }

    /** What advice raises helps in one of the usual build-ups at least; in others it may not, and is not taken there. */
    @Test
    @Tag("slow")
    void lengthsThatInsulateDo() {
        ImmutableList<Pair<Detail, DetailParameter>> lengths = CatalogueFile.builtIn()
                .junctions()
                .flatCollect(detail -> detail.parameters()
                        .select(DetailParameter::insulates)
                        .collect(length -> Tuples.pair(detail, length)));
        ImmutableList<Boolean> helps =
                AllCores.collect(lengths, each -> helps(each.getOne(), each.getTwo()), done -> {});
        assertEquals(
                "",
                lengths.zip(helps)
                        .reject(Pair::getTwo)
                        .collect(pair -> pair.getOne().getOne().id() + ": "
                                + pair.getOne().getTwo().name())
                        .makeString("\n"));
        assertTrue(lengths.size() > 200, lengths.size() + " tried");
    }

    private static boolean helps(Detail given, DetailParameter length) {
        // A skirt goes down no farther than the foundation, which the house has.
        Detail detail = given.with(given.parameters()
                .select(each -> each.name().equals("foundation depth"))
                .toImmutableMap(DetailParameter::name, DetailParameter::most));
        Detail greater = detail.with(Maps.immutable.of(length.name(), length.most()));
        return Lists.immutable
                .of(TypicalBuild.values())
                .collect(build -> build.setup(detail))
                .anySatisfy(
                        setup -> losesLess(greater, detail, setup, 1e-2) || losesLess(greater, detail, setup, 1e-3));
    }

    /** At both ends of its range a length can be drawn in usual build-ups; or what the file requires says why not, or the house says it. */
    @Test
    @Tag("slow")
    void rangesAreThoseThatAreDrawn() {
        ImmutableList<Pair<Detail, JunctionSetup>> drawn = CatalogueFile.builtIn()
                .junctions()
                .flatCollect(detail -> Lists.immutable
                        .of(TypicalBuild.values())
                        .collect(build -> Tuples.pair(detail, build.setup(detail))))
                .select(pair -> misfit(pair.getOne(), pair.getTwo()).isEmpty());
        ImmutableList<Pair<Detail, JunctionSetup>> ends = drawn.flatCollect(pair -> pair.getOne()
                .parameters()
                .flatCollect(length -> Lists.immutable
                        .of(length.least(), length.most())
                        .collect(end -> Tuples.pair(
                                pair.getOne().with(Maps.immutable.of(length.name(), end)), pair.getTwo()))));
        ImmutableList<Optional<String>> misfits =
                AllCores.collect(ends, pair -> misfit(pair.getOne(), pair.getTwo()), done -> {});
        assertEquals(
                "",
                misfits.select(Optional::isPresent)
                        .collect(Optional::get)
                        .reject(why -> why.contains(") needs ")
                                || why.contains(") fits where ")
                                || why.contains("but the house itself says"))
                        .makeString("\n"));
        assertTrue(ends.size() > 2000, ends.size() + " tried");
    }

    /** Why a detail does not fit, if it does not. */
    private static Optional<String> misfit(Detail detail, JunctionSetup setup) {
        try {
            BuiltIn.composed(detail, setup);
            return Optional.empty();
        } catch (DetailDoesNotFit misfit) {
            return Optional.of(misfit.reasons().collect(Phrase::toString).makeString("; "));
        }
    }

    /** Whether one provably loses less than the other, both solved to a width; not where one does not fit. */
    private static boolean losesLess(Detail one, Detail other, JunctionSetup setup, double width) {
        Optional<Interval> ofOther = PSI.answer(new Heat(other, setup, width));
        return PSI.answer(new Heat(one, setup, width))
                .filter(psi ->
                        ofOther.isPresent() && psi.upper() < ofOther.get().lower())
                .isPresent();
    }

    private record Heat(Detail detail, JunctionSetup setup, double width) {}

    private static final Once<Heat, Optional<Interval>> PSI = new Once<>(DetailParametersTest::psi);

    private static Optional<Interval> psi(Heat asked) {
        try {
            return Optional.of(CatalogueBreadthTest.psi(asked.detail, asked.setup, new Accuracy(asked.width, 60_000)));
        } catch (DetailDoesNotFit misfit) {
            return Optional.empty();
        }
    }

    @Test
    void theHousesDepthGoesBeforeTheParameter() {
        Detail tight = builtIn("cellar-slab-tight-to-wall");
        JunctionSetup deep = cellar(OptionalDouble.of(2.8));
        JunctionResult ofHouse = COMPUTER.compute(tight, deep);
        JunctionResult ofParameter =
                COMPUTER.compute(tight.with(Maps.immutable.of("depth", 2.8)), cellar(OptionalDouble.empty()));
        assertEquals(ofParameter.coupling(), ofHouse.coupling());
        assertEquals(
                2.8,
                ofHouse.legs()
                        .detect(leg -> leg.name().equals("wall in the ground"))
                        .internalLength(),
                1e-9);
        assertEquals(
                2.0,
                COMPUTER.compute(tight, cellar(OptionalDouble.empty()))
                        .legs()
                        .detect(leg -> leg.name().equals("wall in the ground"))
                        .internalLength(),
                1e-9);
    }

    @Test
    void depthsTheDetailIsNotDrawnForAreRefused() {
        Detail tight = builtIn("cellar-slab-tight-to-wall");
        DetailDoesNotFit tooDeep =
                assertThrows(DetailDoesNotFit.class, () -> COMPUTER.compute(tight, cellar(OptionalDouble.of(5))));
        assertTrue(
                tooDeep.reasons()
                        .collect(Phrase::toString)
                        .getFirst()
                        .contains("is at most 4000 mm; here it is 5000 mm"),
                tooDeep.reasons().collect(Phrase::toString).toString());
        Detail set = tight.with(Maps.immutable.of("depth", 1.5));
        DetailDoesNotFit contradicted =
                assertThrows(DetailDoesNotFit.class, () -> COMPUTER.compute(set, cellar(OptionalDouble.of(2.8))));
        assertTrue(
                contradicted
                        .reasons()
                        .collect(Phrase::toString)
                        .getFirst()
                        .contains("was given depth 1500 mm, but the house itself says 2800 mm"),
                contradicted.reasons().collect(Phrase::toString).toString());
    }

    @Test
    void pricesComeFromTheHouseAndKeepTheirSource() {
        Detail own = builtIn("hip-mitred-lapped").at(Cost.perMetre(20, "", "the detail's own file"));
        Catalogue catalogue = new Catalogue(Lists.immutable.of(own, builtIn("valley-foamed"), builtIn("valley-gap")))
                .priced(new Prices(
                        OptionalDouble.empty(),
                        "EUR",
                        30,
                        Maps.immutable.of("valley-foamed", new Prices.OfDetail(35, "quotation of 3 October"))));
        assertEquals(
                Lists.immutable.of(
                        Optional.of(Cost.perMetre(20, "EUR", "the detail's own file")),
                        Optional.of(Cost.perMetre(35, "EUR", "quotation of 3 October")),
                        Optional.empty()),
                catalogue.details().collect(Detail::cost));
        Cost cost = catalogue.find("valley-foamed").orElseThrow().cost().orElseThrow();
        assertEquals("35.00 EUR/m (quotation of 3 October)", cost.sourced(UnitSystem.SI));
        // 35 / m times 0.3048 m / ft
        assertEquals("10.67 EUR/ft", cost.text(UnitSystem.US));
        assertEquals("35.00 per m, no currency given", Cost.perMetre(35, "", "").text(UnitSystem.SI));
    }

    @Test
    void noBuiltInDetailInventsAPrice() {
        assertTrue(CatalogueFile.builtIn()
                .details()
                .noneSatisfy(each -> each.cost().isPresent()));
    }
}
