package coldseam.junctions.point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.HeatFlow;
import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.PointKind;
import coldseam.envelope.file.house.BuildUps;
import coldseam.files.FileFaultException;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.detail.Rank;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The built-in point files: complete, in the trade's order, and refused outside their range. */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class PointCatalogueTest {

    private static final BridgeComputer COMPUTER = Samples.computer(new Accuracy(1e-3, 200_000), 3);
    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    @Test
    void everyFileIsWhole() {
        for (Detail detail : CATALOGUE.points()) {
            PointDrawing drawing = (PointDrawing) detail.drawing();
            assertTrue(CatalogueFile.pointGuide().contains(detail.kind().label().replaceFirst(" .*", "")), detail::id);
            assertTrue(detail.id().matches("[a-z]+(-[a-z]+)*"), detail::id);
            assertTrue(
                    !detail.looksLike().isBlank()
                            && (!drawing.isRound() || !drawing.drawnRound().isBlank()),
                    detail::id);
            assertTrue(detail.order().notEmpty(), detail::id);
            assertTrue(detail.failures().notEmpty() && detail.photographs().notEmpty(), detail::id);
            assertTrue(detail.cautions().notEmpty(), () -> detail.id() + " has no caution");
            assertTrue(drawing.terms().content().startsWith("point: " + detail.id() + "\n"), detail::id);
        }
    }

    /** Of walls that have no boards outside: they fit no usual surface of their kinds. */
    private static final ImmutableList<String> WITHOUT_BOARDS = Lists.immutable.of(
            "joist-end-in-cold-wall-open",
            "joist-end-in-cold-wall-sealed",
            "joist-end-on-a-beam-before-the-boards",
            "meter-box-in-old-niche");

    /** Old walls insulated inside, and blocks that are all that insulates. */
    @ParameterizedTest
    @CsvSource({
        "joist-end-in-cold-wall-open, joist-end-in-cold-wall-sealed, wall insulated inside",
        "joist-end-in-cold-wall-sealed, joist-end-on-a-beam-before-the-boards, wall insulated inside",
        "meter-box-in-old-niche, meter-box-on-the-face, wall insulated inside",
        "meter-box-in-old-niche, meter-box-on-the-face, monolithic wall",
        "pipe-steel-tight, pipe-plastic-foamed, monolithic wall",
        "pipe-plastic-foamed, pipe-in-insulated-collar, wall insulated inside"
    })
    void wallsWithoutBoardsOutsideHaveTheirOwn(String worse, String better, String use) {
        Assembly wall = BuildUps.all().get(use).masonry();
        double[] chi = new double[2];
        for (int i = 0; i < 2; i++) {
            Detail detail = CATALOGUE.find(i == 0 ? worse : better).orElseThrow();
            chi[i] = COMPUTER.compute(detail, TypicalBuild.MASONRY.setup(detail.point(), wall))
                    .chi()
                    .middle();
            if (WITHOUT_BOARDS.contains(detail.id())) {
                assertThrows(
                        DetailDoesNotFit.class,
                        () -> COMPUTER.compute(detail, TypicalBuild.MASONRY.setup(detail.point())),
                        detail.id());
            }
        }
        assertTrue(chi[0] > chi[1] + 1e-3, chi[0] + " and " + chi[1] + " W/K");
    }

    /** What is bolted to blocks or to a wall insulated inside reaches no insulation outside, and loses next to nothing. */
    @ParameterizedTest
    @CsvSource({
        "anchor-bolt-steel, anchor-bolt-stainless",
        "anchor-plate-steel-rods, anchor-plate-stainless-rods",
        "bracket-steel, bracket-stainless",
        "angle-steel, angle-stainless"
    })
    void whatIsBoltedToABareFaceLosesLittle(String steel, String stainless) {
        for (String use : List.of("monolithic wall", "wall insulated inside")) {
            Assembly wall = BuildUps.all().get(use).masonry();
            double[] chi = Stream.of(steel, stainless)
                    .map(id -> CATALOGUE.find(id).orElseThrow())
                    .mapToDouble(each -> COMPUTER.compute(each, TypicalBuild.MASONRY.setup(each.point(), wall))
                            .chi()
                            .middle())
                    .toArray();
            assertTrue(chi[0] > chi[1] && chi[1] > 0 && chi[0] < 0.01, use + ": " + chi[0] + " and " + chi[1] + " W/K");
        }
    }

    /** A block of foam lies in boards outside, and is cut into no wall that has none. */
    @Test
    void tapsCutNoFoamIntoAWallWithoutBoards() {
        for (String use : List.of("monolithic wall", "wall insulated inside", "wall")) {
            for (String id : List.of("hose-tap-on-plastic-pipe", "hose-tap-frost-proof")) {
                Detail tap = CATALOGUE.find(id).orElseThrow();
                PointSetup setup = TypicalBuild.MASONRY.setup(
                        tap.point(), BuildUps.all().get(use).masonry());
                boolean block = new PointLaying(tap, (PointDrawing) tap.drawing(), setup)
                        .bodies.anySatisfy(each -> each.material().name().equals("structural foam block"));
                assertEquals(use.equals("wall"), block, id + " in " + use);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("coldseam.envelope.PointKind#all")
    void optionsGoFromWorstToBestAndEachLosesLess(PointKind kind) {
        ImmutableList<Detail> options = CATALOGUE.options(kind).reject(each -> WITHOUT_BOARDS.contains(each.id()));
        assertEquals(
                Lists.immutable.of(Rank.values()), options.collect(Detail::rank).distinct());
        for (TypicalBuild build : TypicalBuild.values()) {
            ImmutableList<PointResult> results = options.collect(each -> COMPUTER.compute(each, build.setup(kind)));
            for (int i = 0; i + 1 < results.size(); i++) {
                PointResult worse = results.get(i);
                PointResult better = results.get(i + 1);
                assertTrue(
                        better.chi().upper() < worse.chi().lower(),
                        () -> build + ": " + worse.detail().id() + " " + worse.chi() + " then "
                                + better.detail().id() + " " + better.chi());
            }
            // What loses less may still be colder where it stands in the room; whoever chooses it is told.
            results.forEachWithIndex((better, at) -> assertTrue(
                    results.take(at).noneSatisfy(worse -> better.temperatureFactor() < worse.temperatureFactor() - 0.01)
                            || better.detail().failures().anySatisfy(line -> line.contains("colder than")),
                    () -> build + ": " + better.detail().id() + " is colder"));
            PointResult best = results.getLast();
            PointResult worst = results.getFirst();
            assertTrue(best.temperatureFactor() > worst.temperatureFactor(), () -> build + " fRsi of " + kind);
            assertTrue(best.temperatureFactor() > 0.9 && best.temperatureFactor() < 1, () -> build + " " + kind);
            assertTrue(best.solution().met());
        }
    }

    /** The best of each kind keeps the limit a house is held to, the worst of what is thick and of metal does not. */
    @Test
    void theDefaultLimitTellsBreaksFromBridges() {
        ImmutableList<String> over = CATALOGUE
                .points()
                .reject(each -> WITHOUT_BOARDS.contains(each.id()))
                .select(each -> COMPUTER.compute(each, TypicalBuild.MASONRY.setup(each.point()))
                                .chi()
                                .lower()
                        > coldseam.envelope.Limits.CHI)
                .collect(Detail::id);
        assertEquals(
                Lists.immutable.of(
                        "steel-post-through",
                        "steel-post-on-pad",
                        "timber-post-on-steel-shoe",
                        "column-through",
                        "column-wrapped",
                        "anchor-plate-steel-rods",
                        "bracket-steel",
                        "bracket-stainless",
                        "angle-steel",
                        "angle-stainless",
                        "ledger-on-steel-tubes",
                        "flap-of-sheet-metal",
                        "pipe-steel-tight",
                        "soil-pipe-of-cast-iron",
                        "hose-tap-on-copper-pipe",
                        "chimney-of-brick",
                        "chimney-of-brick-wrapped",
                        "roof-drain-of-cast-iron",
                        "scupper-sump-on-the-deck",
                        "scupper-sump-over-thin-board",
                        "meter-box-through-boards",
                        "service-mast-of-steel"),
                over);
    }

    private static double chi(Detail detail, String parameter, double value) {
        PointSetup wall = TypicalBuild.MASONRY.setup(PointKind.of("bracket"));
        return COMPUTER.compute(detail.with(Maps.immutable.of(parameter, value)), wall)
                .chi()
                .middle();
    }

    @Test
    void aThickerPadAndASlenderArmLoseLess() {
        Detail detail = CATALOGUE.find("bracket-stainless-on-pad").orElseThrow();
        double thin = chi(detail, "pad", 0.010);
        assertTrue(chi(detail, "pad", 0.040) < thin - 1e-4);
        assertTrue(chi(detail, "arm", 0.200) > thin + 1e-4);
    }

    @Test
    void isRefusedOutsideItsRangeWithEveryReason() {
        Detail detail = CATALOGUE.find("steel-post-on-block").orElseThrow();
        Assembly bare = new Assembly(
                "bare slab",
                TypicalBuild.MASONRY
                        .setup(PointKind.of("steel post"))
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
                20,
                0,
                Maps.immutable.empty());
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> COMPUTER.compute(detail, setup));
        String all = refused.getMessage();
        assertTrue(all.contains("needs insulation in the surface; its assembly has none"), all);
        assertTrue(all.contains("takes surface insulation of 60 mm to 400 mm; here it is 0 mm"), all);
        assertThrows(IllegalArgumentException.class, () -> detail.with(Maps.immutable.of("side", 0.5)));
    }

    @Test
    void whatHangsFreeIsRefused() {
        Detail detail =
                read("- {body: ring, material: steel, diameter: 80 mm, from: outside + 50 mm, to: outside + 60 mm}");
        DetailDoesNotFit refused = assertThrows(
                DetailDoesNotFit.class,
                () -> COMPUTER.compute(detail, TypicalBuild.MASONRY.setup(PointKind.of("bracket"))));
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

    static Detail read(String bodies) {
        return DetailFile.read("test.yaml", """
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
