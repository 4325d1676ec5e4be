package coldseam.junctions.point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.HeatFlow;
import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.PointKind;
import coldseam.files.FileFaultException;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Rank;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The built-in point files: complete, in the trade's order, and refused outside their range. */
@Tag("slow")
class PointCatalogueTest {

    private static final PointComputer COMPUTER = new PointComputer(new Accuracy(3e-5, 200_000));
    private static final PointCatalogue CATALOGUE = PointCatalogue.builtIn();

    @Test
    void everyFileIsWhole() {
        for (PointDetail detail : CATALOGUE.details()) {
            assertTrue(PointCatalogue.guide().contains(detail.kind().label().replaceFirst(" .*", "")), detail::id);
            assertTrue(detail.id().matches("[a-z]+(-[a-z]+)*"), detail::id);
            assertTrue(!detail.looksLike().isBlank() && !detail.drawnRound().isBlank(), detail::id);
            assertTrue(detail.order().notEmpty(), detail::id);
            assertTrue(detail.failures().notEmpty() && detail.photographs().notEmpty(), detail::id);
            assertTrue(detail.cautions().notEmpty(), () -> detail.id() + " has no caution");
            assertTrue(detail.drawing().content().startsWith("point: " + detail.id() + "\n"), detail::id);
        }
    }

    @ParameterizedTest
    @EnumSource(PointKind.class)
    void optionsGoFromWorstToBestAndEachLosesLess(PointKind kind) {
        ImmutableList<PointDetail> options = CATALOGUE.options(kind);
        assertEquals(Lists.immutable.of(Rank.values()), options.collect(PointDetail::rank));
        for (TypicalBuild build : TypicalBuild.values()) {
            ImmutableList<PointResult> results =
                    options.collect(each -> COMPUTER.compute(each, PointHost.typical(kind, build)));
            for (int i = 0; i + 1 < results.size(); i++) {
                PointResult worse = results.get(i);
                PointResult better = results.get(i + 1);
                assertTrue(
                        better.chi().upper() < worse.chi().lower(),
                        () -> build + ": " + worse.detail().id() + " " + worse.chi() + " then "
                                + better.detail().id() + " " + better.chi());
            }
            PointResult best = results.getLast();
            PointResult worst = results.getFirst();
            assertTrue(best.temperatureFactor() > worst.temperatureFactor(), () -> build + " fRsi of " + kind);
            assertTrue(best.temperatureFactor() > 0.9 && best.temperatureFactor() < 1, () -> build + " " + kind);
            assertTrue(best.solved().solution().met());
        }
    }

    /** The best of each kind keeps the limit a house is held to, the worst of what is thick and of metal does not. */
    @Test
    void theDefaultLimitTellsBreaksFromBridges() {
        ImmutableList<String> over = CATALOGUE
                .details()
                .select(each -> COMPUTER.compute(each, PointHost.typical(each.kind(), TypicalBuild.MASONRY))
                                .chi()
                                .lower()
                        > coldseam.envelope.Limits.CHI)
                .collect(PointDetail::id);
        assertEquals(
                Lists.immutable.of(
                        "steel-post-through",
                        "steel-post-on-pad",
                        "timber-post-on-steel-shoe",
                        "column-through",
                        "column-wrapped",
                        "bracket-steel",
                        "bracket-stainless",
                        "pipe-steel-tight"),
                over);
    }

    private static PointSetup wall(double parameter, String name) {
        PointSetup typical = PointHost.typical(PointKind.BRACKET, TypicalBuild.MASONRY);
        return new PointSetup(
                typical.host(),
                typical.exposure(),
                typical.flow(),
                Optional.empty(),
                Maps.immutable.of(name, parameter),
                20,
                0);
    }

    @Test
    void aThickerPadAndASlenderArmLoseLess() {
        PointDetail detail = CATALOGUE.find("bracket-stainless-on-pad").orElseThrow();
        double thin = COMPUTER.compute(detail, wall(0.010, "pad")).chi().upper();
        PointResult thick = COMPUTER.compute(detail, wall(0.040, "pad"));
        PointResult stout = COMPUTER.compute(detail, wall(0.060, "arm"));
        assertTrue(thick.chi().upper() < thin, () -> thick.chi() + "");
        assertTrue(stout.chi().lower() > thin, () -> stout.chi() + "");
    }

    @Test
    void isRefusedOutsideItsRangeWithEveryReason() {
        PointDetail detail = CATALOGUE.find("steel-post-on-block").orElseThrow();
        Assembly bare = new Assembly(
                "bare slab",
                PointHost.typical(PointKind.STEEL_POST, TypicalBuild.MASONRY)
                        .host()
                        .layers()
                        .reject(each -> each.role() == coldseam.envelope.Role.INSULATION),
                Optional.empty(),
                Assembly.AirGaps.NONE,
                Optional.empty());
        PointSetup setup = new PointSetup(
                bare,
                coldseam.envelope.Exposure.outdoors(),
                HeatFlow.UPWARDS,
                Optional.empty(),
                Maps.immutable.of("side", 0.5),
                20,
                0);
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> COMPUTER.compute(detail, setup));
        String all = refused.getMessage();
        assertTrue(all.contains("needs insulation; \"bare slab\" has none"), all);
        assertTrue(all.contains("takes insulation of 60 mm to 400 mm; \"bare slab\" has 0 mm"), all);
        assertTrue(all.contains("side is 500.0 mm; allowed is 30.0 mm to 150.0 mm"), all);
    }

    @Test
    void whatHangsFreeIsRefused() {
        PointDetail detail =
                read("- {body: ring, material: steel, diameter: 80 mm, from: outside + 50 mm, to: outside + 60 mm}");
        DetailDoesNotFit refused =
                assertThrows(DetailDoesNotFit.class, () -> COMPUTER.compute(detail, wall(0.01, "unknown")));
        assertTrue(refused.getMessage().contains("stands free of"), refused::getMessage);
    }

    @Test
    void everyFaultOfAFileIsReportedAtItsPlace() {
        FileFaultException refused = assertThrows(
                FileFaultException.class,
                () -> read("- {body: rod, material: same as steel, diameter: outside, from: 20 mm, to: outsid}"));
        String message = refused.getMessage();
        assertTrue(message.contains("test.yaml:7:"), message);
        assertTrue(message.contains("a role is needed; got \"steel\""), message);
        assertTrue(message.contains("a length is needed; got \"outside\", a line across the surface"), message);
        assertTrue(message.contains("a line across the surface is needed; got \"20 mm\", a length"), message);
        assertTrue(message.contains("got \"outsid\""), message);
    }

    static PointDetail read(String bodies) {
        return PointCatalogue.read("test.yaml", """
                point: test
                kind: bracket
                name: Test
                rank: worst
                looks-like: A test.
                drawing:
                %s
                drawn-round: As it is.
                order: []
                connections: {}
                failures: []
                photographs: []
                """.formatted(bodies));
    }
}
