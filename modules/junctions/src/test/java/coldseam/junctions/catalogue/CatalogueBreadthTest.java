package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Surroundings;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The catalogue at its full breadth, every option laid on build-ups a builder would use. */
@Timeout(180)
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
final class CatalogueBreadthTest {

    /** Rough: orderings differ by more than this, and a hundred sections are solved. */
    private static final Accuracy ROUGH = new Accuracy(3e-3, 60_000);

    /** Where most comparisons are proven already; what it leaves open is solved to {@link #ROUGH}. */
    private static final Accuracy WIDE = new Accuracy(3e-2, 60_000);

    /** W/(m·K), external: "thermal-bridge free" in the trade's words; common practice. */
    private static final double BRIDGE_FREE = 0.01;

    /** W/(m·K); no seam of a house loses more than this, a bare metre of old wall. */
    private static final double BEYOND_REASON = 2;

    /** m, how much thicker every board is in the second reckoning. */
    private static final double THICKER = 0.08;

    /**
     * Kinds whose best option stays above the limit in masonry. Where the room fills more than half the section the outer
     * faces are shorter than the warm ones, and external dimensions give a positive psi whatever is built; around openings
     * a frame is thinner than the insulation beside it. Under a cellar's door the wall's foot stays, warm on its inner side; a
     * skylight's shaft counts its whole wall, which no surface does.
     */
    private static final Set<JunctionKind> STAY_ABOVE = Set.of(
            JunctionKind.INSIDE_CORNER,
            JunctionKind.STEPPED_FOOTING,
            JunctionKind.WALL_UNDER_OVERHANG,
            JunctionKind.WALL_TO_TERRACE,
            JunctionKind.TERRACE_THRESHOLD,
            JunctionKind.TERRACE_TO_ROOF,
            JunctionKind.ROOF_STEP,
            JunctionKind.DORMER_CHEEK,
            JunctionKind.ABUTMENT,
            JunctionKind.KNEE_WALL_FOOT,
            JunctionKind.VALLEY,
            JunctionKind.ROOFLIGHT,
            JunctionKind.SILL,
            JunctionKind.of("door threshold over a heated room"),
            JunctionKind.of("attic hatch"),
            JunctionKind.of("skylight shaft"),
            JunctionKind.of("shutter box"));

    /**
     * Boards that run past one another lose less than blocks that join them; but they are no joint and stay a gap, which ranks them. So does a
     * board returned over a post in a corner, on thick boards.
     */
    private static final Set<String> OVERLAPS = Set.of(
            "outside-corner-return-inside",
            "inside-corner-return-inside",
            "outside-corner-board-returned-on-blocks",
            "eaves-inner-boards-return-down-the-wall",
            "verge-inner-boards-return-down-the-gable",
            "verge-return-under-the-rafters",
            "dormer-cheek-inner-boards-return-up",
            "abutment-inner-boards-return-up",
            "parapet-inner-boards-return-under-the-roof",
            "parapet-inner-boards-wrapped",
            "flat-roof-edge-timber-through");

    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    private static final Map<String, Interval> SOLVED = new ConcurrentHashMap<>();

    private static Interval psi(Detail detail, TypicalBuild build, double thicker) {
        return SOLVED.computeIfAbsent(
                detail.id() + "/" + detail.kind().label() + "/" + build + "/" + thicker,
                key -> psi(detail, new TypicalSetups(thicker).setup(detail, build)));
    }

    static Interval psi(Detail detail, JunctionSetup setup) {
        return psi(detail, setup, ROUGH);
    }

    /** External, W/(m·K), of heat alone: no temperature, path or pen line is looked for. */
    static Interval psi(Detail detail, JunctionSetup setup, Accuracy accuracy) {
        Composition composition = BuiltIn.composed(detail, setup);
        Solution solution = Conduction.solve(composition.heatFlow(), accuracy);
        return Surroundings.coupling(solution, composition.surroundings().spaces())
                .plus(-composition.ofLegs(JunctionResult.Leg::externalLength));
    }

    private static void solveAll(TypicalBuild build, double thicker) {
        CATALOGUE.junctions().castToList().parallelStream().forEach(detail -> psi(detail, build, thicker));
    }

    private static ImmutableList<JunctionKind> kinds() {
        return JunctionKind.all();
    }

    private static ImmutableList<Detail> usual(JunctionKind kind) {
        ImmutableList<Detail> options = CATALOGUE.options(kind).select(TypicalSetups::usual);
        assertTrue(options.notEmpty(), kind.label() + " has no option for a usual build");
        return options;
    }

    private static String shown(Interval psi) {
        return String.format(Locale.ROOT, "%.4f W/(m·K)", psi.middle());
    }

    @Test
    void everyKindHasThreeOptionsFromWorstToBest() {
        for (JunctionKind kind : kinds()) {
            ImmutableList<Rank> ranks = usual(kind).collect(Detail::rank);
            assertTrue(ranks.size() >= 3, kind.label() + " has " + ranks.size() + " options");
            assertEquals(ranks, ranks.toSortedList().toImmutable(), kind.label() + " is not sorted from worst to best");
            for (Rank rank : Rank.values()) {
                assertTrue(ranks.contains(rank), kind.label() + " has no option ranked " + rank);
            }
        }
    }

    @Test
    void breadthIsWhatTheIssueAsksFor() {
        long kinds = CATALOGUE.junctions().collect(Detail::kind).distinct().size();
        assertTrue(kinds >= 32, kinds + " kinds");
        assertTrue(CATALOGUE.junctions().size() >= 96, CATALOGUE.junctions().size() + " options");
    }

    @Test
    void everyOptionSaysWhatABuilderNeeds() {
        MutableList<String> faults = Lists.mutable.empty();
        for (Detail detail : CATALOGUE.junctions()) {
            if (detail.name().isBlank() || detail.name().length() > 80) {
                faults.add(detail.id() + ": name \"" + detail.name() + "\"");
            }
            if (detail.looksLike().length() < 40) {
                faults.add(detail.id() + ": looks-like is too short to be recognised by");
            }
            lines(detail, "order", detail.order(), 1, 8, faults);
            lines(detail, "failures", detail.failures(), 1, 4, faults);
            lines(detail, "photographs", detail.photographs().collect(Photograph::shows), 1, 4, faults);
            lines(detail, "cautions", detail.cautions(), 0, 4, faults);
            for (Control control : new Control[] {Control.AIR, Control.WATER, Control.VAPOUR}) {
                if (!detail.connections().containsKey(control)) {
                    faults.add(detail.id() + ": says nothing of " + control);
                }
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
    }

    private static void lines(
            Detail detail, String what, ImmutableList<String> lines, int least, int most, MutableList<String> faults) {
        if (lines.size() < least || lines.size() > most) {
            faults.add(detail.id() + ": " + lines.size() + " " + what);
        }
        if (lines.anySatisfy(line -> line.isBlank() || !line.endsWith("."))
                || lines.distinct().size() < lines.size()) {
            faults.add(detail.id() + ": " + what + " has a line that is empty, unfinished or there twice");
        }
    }

    @Test
    void everyOptionComputesInMasonryAndFrame() {
        MutableList<String> faults = Lists.mutable.empty();
        for (TypicalBuild build : TypicalBuild.values()) {
            solveAll(build, 0);
            for (Detail detail : CATALOGUE.junctions()) {
                Interval psi = psi(detail, build, 0);
                // Written so that NaN fails.
                if (!(psi.lower() <= psi.upper() && Math.abs(psi.middle()) < BEYOND_REASON)) {
                    faults.add(detail.id() + " in " + build + ": " + shown(psi));
                }
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
    }

    @Test
    void theBestLosesLessThanTheWorstThinOrThick() {
        MutableList<String> faults = Lists.mutable.empty();
        kinds()
                .flatCollect(kind ->
                        Lists.mutable.of(usual(kind).getFirst(), usual(kind).getLast()))
                .castToList()
                .parallelStream()
                .forEach(detail -> psi(detail, TypicalBuild.MASONRY, THICKER));
        for (double thicker : new double[] {0, THICKER}) {
            for (JunctionKind kind : kinds()) {
                ImmutableList<Detail> options = usual(kind);
                Interval worst = psi(options.getFirst(), TypicalBuild.MASONRY, thicker);
                Interval best = psi(options.getLast(), TypicalBuild.MASONRY, thicker);
                if (!(best.upper() < worst.lower())) {
                    faults.add(kind.label() + ", boards " + thicker + " m thicker: best " + shown(best) + ", worst "
                            + shown(worst));
                }
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
    }

    @Test
    void theBestLosesNoMoreThanTheWorstInFrame() {
        solveAll(TypicalBuild.FRAME, 0);
        MutableList<String> faults = Lists.mutable.empty();
        for (JunctionKind kind : kinds().reject(each -> each == JunctionKind.PARAPET)) {
            ImmutableList<Detail> options = usual(kind);
            Interval worst = psi(options.getFirst(), TypicalBuild.FRAME, 0);
            Interval best = psi(options.getLast(), TypicalBuild.FRAME, 0);
            if (!(best.lower() <= worst.upper())) {
                faults.add(kind.label() + ": best " + shown(best) + ", worst " + shown(worst));
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
    }

    /**
     * Why the parapet is left out above: studs with wool between conduct less than the blocks that are to break them, so the
     * bare one is no bridge. In return it is no line of insulation that one could follow, and the blocks are.
     */
    @Test
    void aFramedParapetInsulatesBetterThanTheBlocksUnderIt() {
        ImmutableList<Detail> options = usual(JunctionKind.PARAPET);
        JunctionSetup setup = new TypicalSetups(0).setup(JunctionKind.PARAPET, TypicalBuild.FRAME);
        Composition bare = BuiltIn.composed(options.getFirst(), setup);
        Composition blocks = BuiltIn.composed(options.getLast(), setup);
        assertTrue(
                conductivity(bare, "parapet") < conductivity(blocks, "insulating blocks"),
                conductivity(bare, "parapet") + " W/(m·K)");
        assertEquals(conductivity(bare, "parapet"), conductivity(blocks, "parapet"));
        assertFalse(line(bare).unbroken());
        assertTrue(line(blocks).unbroken());
        // The blocks' greater conductivity is all there is between them.
        double more = psi(options.getLast(), TypicalBuild.FRAME, 0).middle()
                - psi(options.getFirst(), TypicalBuild.FRAME, 0).middle();
        assertEquals(0, more, 0.005);
    }

    private static double conductivity(Composition composition, String material) {
        return composition
                .heatFlow()
                .regions()
                .detect(region -> region.material().equals(material))
                .conductivity();
    }

    private static PenLine line(Composition composition) {
        return PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                0.1);
    }

    /** W/(m·K): half a last digit of what psi is held to. Two options that lie nearer are as good as one another. */
    private static final double AS_GOOD = 0.005;

    /**
     * Of what is offered for one kind of work on boards of a thickness, none is beaten by one that is ranked below it. Party
     * walls are left out: boards indoors on them keep in the heat that comes from the neighbour, and psi, which is of this
     * house alone, thanks them for it; the best is the one whose insulation passes unbroken, of both houses.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.12, 0.30})
    void noOptionIsBeatenByOneRankedBelowItOnThinOrThickBoards(double boards) {
        Set<String> faults = ConcurrentHashMap.newKeySet();
        AtomicInteger compared = new AtomicInteger();
        kinds().reject(each -> each == JunctionKind.PARTY_WALL).castToList().parallelStream()
                .forEach(kind -> {
                    for (TypicalBuild build : TypicalBuild.values()) {
                        MutableList<Offered> offered = Lists.mutable.empty();
                        CATALOGUE
                                .options(kind)
                                .forEach(
                                        detail -> offered(detail, build, boards).ifPresent(offered::add));
                        offered.forEach(below -> offered.select(
                                        above -> below.detail.rank().compareTo(above.detail.rank()) < 0)
                                .select(above -> competes(below.detail, above.detail, build))
                                .forEach(above -> {
                                    compared.incrementAndGet();
                                    if (below.beats(above)) {
                                        faults.add(build + ": " + below.detail.id() + " " + shown(below.psi) + " beats "
                                                + above.detail.id() + " " + shown(above.psi));
                                    }
                                }));
                    }
                });
        assertTrue(faults.isEmpty(), String.join("\n", faults));
        assertTrue(compared.get() > 150, compared + " pairs");
    }

    private static Optional<Offered> offered(Detail detail, TypicalBuild build, double boards) {
        try {
            return Optional.of(new Offered(detail, TypicalSetups.of(detail, build, boards)));
        } catch (DetailDoesNotFit notOffered) {
            return Optional.empty();
        }
    }

    /** An option laid on boards. */
    private static final class Offered {

        private final Detail detail;
        private final JunctionSetup setup;
        private Interval psi;
        private boolean narrow;

        /** @throws DetailDoesNotFit where it is not offered */
        Offered(Detail detail, JunctionSetup setup) {
            this.detail = detail;
            this.setup = setup;
            this.psi = CatalogueBreadthTest.psi(detail, setup, WIDE);
        }

        /** Whether it surely loses less; no wide interval that leaves it open is believed. */
        boolean beats(Offered above) {
            if (psi.lower() < above.psi.upper() - AS_GOOD) {
                narrow();
                above.narrow();
            }
            return psi.upper() < above.psi.lower() - AS_GOOD;
        }

        private void narrow() {
            if (!narrow) {
                narrow = true;
                psi = CatalogueBreadthTest.psi(detail, setup, ROUGH);
            }
        }
    }

    /**
     * Whether both are drawn for one build, and both are for new build, or both for a retrofit that takes the same parts down. The worst leave masonry bare; in a
     * frame, where wool lies between the studs, they are held to the best alone.
     */
    private static boolean competes(Detail below, Detail above, TypicalBuild build) {
        return !OVERLAPS.contains(below.id())
                && build.setup(below).equals(build.setup(above))
                && below.suits().work().anySatisfy(above.suits().work()::contains)
                && below.suits().takesDown().equals(above.suits().takesDown())
                && (build == TypicalBuild.MASONRY || below.rank() == Rank.MIDDLE || above.rank() == Rank.BEST);
    }

    /** A sheet under the rafters of one slope leaves no filled slit beside the hollow of the other. */
    @Test
    void aSheetOnOneSlopeLiesBetweenNoneAndTwo() {
        Detail hollow = CATALOGUE.find("ridge-in-frame-bays-hollow").orElseThrow();
        JunctionSetup setup = TypicalBuild.MASONRY.setup(hollow);
        Assembly plain = setup.first();
        Assembly sheeted = new Assembly(
                "sheeted",
                plain.layers()
                        .flatCollect(each -> each.role() == Role.STRUCTURE
                                        && each.framing().isPresent()
                                ? Lists.immutable.with(Samples.layer("airtight membrane", 2, Role.MEMBRANE), each)
                                : Lists.immutable.with(each)),
                Optional.empty(),
                Assembly.AirGaps.NONE,
                Optional.empty());
        Accuracy fine = new Accuracy(1e-3, 60_000);
        Interval none = psi(hollow, setup.between(plain, Optional.of(plain)), fine);
        Interval one = psi(hollow, setup.between(plain, Optional.of(sheeted)), fine);
        Interval two = psi(hollow, setup.between(sheeted, Optional.of(sheeted)), fine);
        assertTrue(
                one.upper() >= Math.min(none.lower(), two.lower())
                        && one.lower() <= Math.max(none.upper(), two.upper()),
                shown(one) + " with one sheet, " + shown(none) + " without, " + shown(two) + " with two");
    }

    @Test
    void theMiddleLiesBetweenInMasonry() {
        solveAll(TypicalBuild.MASONRY, 0);
        MutableList<String> faults = Lists.mutable.empty();
        for (JunctionKind kind : kinds()) {
            ImmutableList<Detail> options = usual(kind);
            Interval worst = psi(options.getFirst(), TypicalBuild.MASONRY, 0);
            Interval best = psi(options.getLast(), TypicalBuild.MASONRY, 0);
            for (Detail detail : options.select(each -> each.rank() == Rank.MIDDLE)) {
                Interval middle = psi(detail, TypicalBuild.MASONRY, 0);
                if (!(best.lower() <= middle.upper() && middle.lower() <= worst.upper())) {
                    faults.add(detail.id() + ": " + shown(middle) + " outside " + shown(best) + " to " + shown(worst));
                }
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
    }

    @Test
    void theBestIsBridgeFreeWhereTheKindCanBe() {
        solveAll(TypicalBuild.MASONRY, 0);
        MutableList<String> faults = Lists.mutable.empty();
        for (JunctionKind kind : kinds()) {
            Interval best = psi(usual(kind).getLast(), TypicalBuild.MASONRY, 0);
            if (best.lower() <= BRIDGE_FREE == STAY_ABOVE.contains(kind)) {
                faults.add(kind.label() + ": best " + shown(best) + ", limit " + BRIDGE_FREE
                        + (STAY_ABOVE.contains(kind) ? "; it can meet the limit: take it off the list" : ""));
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
    }

    @Test
    void everyOptionIsSolvedOrRefusedWithThinBoardsAndAtOtherAngles() {
        Accuracy sketch = new Accuracy(0.05, 20_000);
        Set<String> faults = ConcurrentHashMap.newKeySet();
        AtomicInteger solved = new AtomicInteger();
        CATALOGUE.junctions().castToList().parallelStream().forEach(detail -> {
            for (double[] odd : new double[][] {{-0.06, 0}, {0.02, -9}, {0.02, 9}}) {
                try {
                    JunctionSetup typical = new TypicalSetups(odd[0]).setup(detail, TypicalBuild.FRAME);
                    JunctionSetup setup = typical.at(typical.angle() + odd[1]);
                    Conduction.solve(Composer.compose(detail, setup).heatFlow(), sketch);
                    solved.incrementAndGet();
                } catch (DetailDoesNotFit refused) {
                    assertTrue(refused.reasons().notEmpty());
                } catch (RuntimeException broken) {
                    faults.add(detail.id() + ", boards " + odd[0] + " m thicker, turned by " + odd[1] + "°: " + broken);
                }
            }
        });
        assertTrue(faults.isEmpty(), String.join("\n", faults));
        assertTrue(solved.get() > 2 * CATALOGUE.junctions().size(), solved + " solved, most were refused");
    }
}
