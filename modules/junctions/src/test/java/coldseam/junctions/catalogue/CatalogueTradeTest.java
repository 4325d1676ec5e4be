package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.HeatFlow;
import coldseam.conduction.Point;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Material;
import coldseam.envelope.PointKind;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Role;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.ControlLine;
import coldseam.junctions.ControlLine.NotShown;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.detail.Suits;
import coldseam.junctions.language.LineRange;
import coldseam.junctions.language.Statement;
import coldseam.junctions.path.ControlLines;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.Composition;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the trade asks of every option of the catalogue, as far as a rule can say it. */
@Tag("slow")
final class CatalogueTradeTest {

    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    private static final ImmutableList<TypicalBuild> BUILDS = Lists.immutable.with(TypicalBuild.values());

    private static Composition composition(Detail detail, JunctionSetup setup) {
        return BuiltIn.composed(detail, setup);
    }

    private static PenLine pen(Composition composition) {
        return PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                0.1);
    }

    /** What keeps an option from carrying every control layer that must pass; none where it does. */
    static ImmutableList<String> lost(Detail detail, JunctionSetup setup, boolean heat) {
        Composition composition = composition(detail, setup);
        PenLine pen = pen(composition);
        MutableList<String> lost = Lists.mutable.empty();
        if (heat && !pen.unbroken()) {
            lost.add("heat");
        }
        for (ControlLine line : ControlLines.of(composition, detail, pen)) {
            boolean needed = needed(setup, line.control());
            boolean joined = line.match(
                    continuous -> true,
                    broken -> !needed && broken.why() == ControlLine.Broken.Reason.OUT_OF_REACH,
                    changes -> !needed,
                    hidden -> !needed && hidden.why() == NotShown.Reason.NO_LAYER);
            if (!joined) {
                lost.add(line.control().toString().toLowerCase(Locale.ROOT));
            }
        }
        return lost.toImmutable();
    }

    /** Whether both sides need a control: none towards heated neighbours; water control where rain or the ground is. */
    private static boolean needed(JunctionSetup setup, Control control) {
        ImmutableList<Exposure> faces = setup.kind().form().twoSurfaces()
                ? Lists.immutable.of(setup.firstExposure(), setup.secondExposure())
                : Lists.immutable.of(setup.firstExposure());
        return faces.allSatisfy(face -> face.kind() != Exposure.Kind.PARTY
                && (control != Control.WATER
                        || face.kind() == Exposure.Kind.OUTDOORS
                        || face.kind() == Exposure.Kind.GROUND));
    }

    private static ImmutableList<String> without(ImmutableList<Detail> options, boolean heat) {
        MutableList<String> faults = Lists.mutable.empty();
        for (TypicalBuild build : BUILDS) {
            if (options.noneSatisfy(each -> lost(each, build.setup(each), heat).isEmpty())) {
                faults.add(build + ": "
                        + options.collect(each -> each.id() + " loses "
                                        + lost(each, build.setup(each), heat).makeString(" and "))
                                .makeString("; "));
            }
        }
        return faults.toImmutable();
    }

    /** Of what is built new, every kind can be built with heat, air, water and vapour control unbroken. */
    @Test
    void everyKindHasAnOptionThatCarriesAllLayers() {
        MutableList<String> faults = Lists.mutable.empty();
        for (JunctionKind kind : JunctionKind.all()) {
            without(CATALOGUE.options(kind).select(TypicalSetups::usual), true)
                    .forEach(fault -> faults.add(kind.label() + ", " + fault));
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** At the angles that such seams have in houses, not only at the typical one: something fits that carries every layer. */
    @ParameterizedTest
    @CsvSource({
        "high eaves of a mono-pitch, 75",
        "abutment, 225",
        "abutment, 305",
        "dormer cheek, 270",
        "foot of a knee wall, 270",
        "step between heights, 270",
        "slab edge, 60",
        "existing slab edge, 62",
        "slope to collar ceiling, 130",
        "slope to collar ceiling, 150"
    })
    void someOptionFitsTheAnglesOfHouses(String label, double angle) {
        JunctionKind kind = JunctionKind.of(label);
        for (TypicalBuild build : BUILDS) {
            JunctionSetup setup = build.setup(kind).at(angle);
            assertTrue(CATALOGUE.options(kind).anySatisfy(each -> carries(each, setup)), () -> build + ": none fits");
        }
    }

    private static boolean carries(Detail detail, JunctionSetup setup) {
        try {
            return lost(detail, setup, true).isEmpty();
        } catch (DetailDoesNotFit misfit) {
            return false;
        }
    }

    /**
     * Where the old structure stays and nothing comes down, the insulation cannot always be closed; air, water and vapour
     * can.
     */
    @Test
    void everyKindHasAnOptionForAnOldHouseThatCarriesAirWaterAndVapour() {
        MutableList<String> faults = Lists.mutable.empty();
        for (JunctionKind kind : JunctionKind.all()) {
            ImmutableList<Detail> kept = CATALOGUE
                    .options(kind)
                    .select(TypicalSetups::usual)
                    .select(each -> each.suits().work().contains(Suits.Work.RETROFIT)
                            && each.suits().takesDown().isEmpty());
            without(kept, false).forEach(fault -> faults.add(kind.label() + ", " + fault));
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** A kind with several stops, and every point, which is first seen bare and later sealed: else a photograph would be asked for at each, before there is anything to see or after. */
    @Test
    void everyPhotographNamesTheStopBeforeWhichItIsTaken() {
        assertEquals(
                "",
                CATALOGUE
                        .details()
                        .select(each -> (each.kind().holdPoints().size() > 1 || each.kind() instanceof PointKind)
                                && each.photographs()
                                        .anySatisfy(
                                                photograph -> photograph.stop().isEmpty()))
                        .collect(Detail::id)
                        .makeString("\n"));
    }

    /**
     * Frames of one door stand in one plane, where the house says nothing of it: at its jambs, its head and its threshold. In a wall
     * insulated inside the best of any build fit nowhere, and a threshold for it stands as the others there do.
     */
    @Test
    void worstAndBestStandOneDoorInOnePlane() {
        for (Rank rank : new Rank[] {Rank.WORST, Rank.BEST}) {
            ImmutableList<String> planes = Lists.immutable
                    .of(JunctionKind.JAMB, JunctionKind.HEAD, JunctionKind.SILL)
                    .newWithAll(THRESHOLDS)
                    .flatCollect(kind ->
                            CATALOGUE.options(kind).select(each -> each.rank() == rank && TypicalSetups.usual(each)))
                    .collect(CatalogueTradeTest::frame)
                    .distinct();
            assertEquals(1, planes.size(), rank + " options: " + planes);
        }
    }

    /** Kinds of a door's lower edge. */
    private static final ImmutableList<JunctionKind> THRESHOLDS = Lists.immutable.of(
            JunctionKind.SLAB_THRESHOLD,
            JunctionKind.of("door threshold over a cold space"),
            JunctionKind.of("door threshold over open air"),
            JunctionKind.of("door threshold over a heated room"),
            JunctionKind.of("garage slab at the door"),
            JunctionKind.of("cellar door threshold"),
            JunctionKind.TERRACE_THRESHOLD);

    /** Whatever threshold, sill or shutter box is taken, there are a jamb and a head whose frames stand in its plane. */
    @Test
    void everyOpeningHasAllItsSidesInOnePlane() {
        ImmutableSet<String> jambs = planes(JunctionKind.JAMB);
        assertEquals(jambs, planes(JunctionKind.HEAD), "heads");
        assertEquals(jambs, planes(JunctionKind.SILL), "sills");
        MutableList<String> faults = Lists.mutable.empty();
        THRESHOLDS
                .newWith(JunctionKind.of("shutter box"))
                .flatCollect(CATALOGUE::options)
                .reject(each -> jambs.contains(frame(each)))
                .forEach(each -> faults.add(each.id() + ": " + frame(each)));
        assertEquals("", faults.makeString("\n"));
    }

    private static ImmutableSet<String> planes(JunctionKind kind) {
        return CATALOGUE
                .options(kind)
                .collect(CatalogueTradeTest::frame)
                .toSet()
                .toImmutable();
    }

    /** Words for taking something away. */
    private static final Pattern TAKEN = Pattern.compile(
            "\\b([Tt]ake\\b.*\\b(down|off|out)|[Cc]ut\\b.*\\b(off|back|free)|[Ss]aw|short bays|bays of)\\b");

    /** Whoever has parts of an old house taken down says when, and how the rest stands meanwhile. */
    @Test
    void whatComesDownIsToldInTheOrder() {
        ImmutableList<Detail> down =
                CATALOGUE.junctions().select(each -> each.suits().takesDown().notEmpty());
        assertTrue(down.size() > 25, down.size() + " options");
        assertEquals(
                "",
                down.reject(each -> each.order()
                                .anySatisfy(line -> TAKEN.matcher(line).find()))
                        .collect(Detail::id)
                        .makeString("\n"));
    }

    private static String frame(Detail detail) {
        return ((BandDrawing) detail.drawing())
                .statements()
                .selectInstancesOf(Statement.Frame.class)
                .getOnly()
                .outside()
                // Across the wall, whichever band that is.
                .map(line -> line.toString().replaceAll("measures=(FIRST|SECOND)", "across"))
                .orElse("set-back");
    }

    /** What the house is built of, the drawing takes from the house, or draws for either build. */
    @Test
    void brickAndInnerFloorsFollowTheHouse() {
        MutableList<String> faults = Lists.mutable.empty();
        for (Detail detail : CATALOGUE.junctions()) {
            for (Statement statement : ((BandDrawing) detail.drawing()).statements()) {
                if (statement instanceof Statement.PaintBlock block
                        && block.material() instanceof Statement.MaterialChoice.Named named
                        && (named.name().contains("brick")
                                || named.name().contains("concrete")
                                        && (block.what().equals("storey floor")
                                                || block.what().equals("floor")))) {
                    faults.add(detail.id() + ": " + block.what() + " of " + named.name());
                }
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** Foam fills joints between boards of foam, not between wool or wood fibre, which dry through one another. */
    @Test
    void jointsAreFilledWithWhatTheBoardIs() {
        MutableList<String> faults = Lists.mutable.empty();
        for (Detail detail : CATALOGUE.junctions()) {
            boolean closedCells = detail.junction().form().ground()
                    || ((BandDrawing) detail.drawing())
                            .statements()
                            .selectInstancesOf(Statement.PaintBlock.class)
                            .collect(Statement.PaintBlock::material)
                            .selectInstancesOf(Statement.MaterialChoice.Named.class)
                            .anySatisfy(each -> each.name().contains("foam")
                                    || each.name().contains("polystyrene")
                                    || each.name().contains("polyisocyanurate"));
            boolean inTheV = ((BandDrawing) detail.drawing())
                    .statements()
                    .selectInstancesOf(Statement.PaintShape.class)
                    .anySatisfy(each -> each.what().startsWith("foam"));
            if (!closedCells && !inTheV && detail.order().anySatisfy(line -> line.contains("foam"))) {
                faults.add(detail.id());
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** Round what goes through the boards, foam is told of only where foam is drawn: the boards may be wool. */
    @Test
    void slitsRoundPointsAreFilledWithWhatIsDrawn() {
        assertEquals(
                "",
                CATALOGUE
                        .details()
                        .select(each -> each.drawing() instanceof PointDrawing points
                                && points.bodies()
                                        .noneSatisfy(body -> body.material()
                                                .name()
                                                .filter(name -> name.contains("foam")
                                                        || name.contains("polystyrene")
                                                        || name.contains("polyisocyanurate"))
                                                .isPresent())
                                && each.order()
                                        .anySatisfy(
                                                line -> line.matches(".*\\bfoam (the|what|its)\\b.*|.*\\bfoamed\\b.*")))
                        .collect(Detail::id)
                        .makeString("\n"));
    }

    /** Kinds whose first surface is the ground's or a deck that rain falls on, by their first surface's outer face. */
    private static final ImmutableList<JunctionKind> DECKS =
            Lists.immutable.of(JunctionKind.WALL_TO_TERRACE, JunctionKind.TERRACE_THRESHOLD, JunctionKind.ROOF_STEP);

    /** m above a deck, and above the ground and below it; common practice, no source. */
    private static final double UPSTAND = 0.15;

    private static final double SPLASH = 0.30;

    /** Closed cells, and made to stand under a door and its pan. */
    private static final String UNDER_DOORS = "structural foam block";

    /** Where rain splashes and in the ground, what insulates outside the structure is closed-cell board. */
    @Test
    void boardInTheSplashOfRainIsMadeForIt() {
        MutableList<String> faults = Lists.mutable.empty();
        for (TypicalBuild build : BUILDS) {
            for (Detail detail : CATALOGUE.junctions().reject(each -> each.rank() == Rank.WORST)) {
                JunctionKind kind = detail.junction();
                if (!DECKS.contains(kind) && !kind.form().ground()
                        || kind.form().second() == KindForm.Second.THING) {
                    continue;
                }
                JunctionSetup setup = build.setup(detail);
                Composition composition = composition(detail, setup);
                Band wall = Band.of("wall", setup.second().orElseThrow(), setup.secondExposure(), HeatFlow.HORIZONTAL);
                Band first = Band.of("first", setup.first(), setup.firstExposure(), HeatFlow.UPWARDS);
                if (wall.outside(Role.INSULATION) <= wall.inside(Role.STRUCTURE)) {
                    // Boards inside stand behind the masonry.
                    continue;
                }
                double from = DECKS.contains(kind) ? first.thickness() : groundTop(composition) - SPLASH;
                double to = DECKS.contains(kind) ? first.thickness() + UPSTAND : groundTop(composition) + SPLASH;
                for (double y = from + 0.005; y < to - 0.004; y += 0.01) {
                    for (double x = wall.inside(Role.INSULATION) + 0.005;
                            x < wall.outside(Role.INSULATION);
                            x += 0.01) {
                        Optional<Material> there = material(composition, x, y);
                        if (there.filter(each -> each.insulates()
                                        && !each.canControl(Control.WATER)
                                        && !each.name().equals(UNDER_DOORS))
                                .isPresent()) {
                            faults.add(String.format(
                                    Locale.ROOT,
                                    "%s, %s: %s at (%.2f, %.2f) m",
                                    detail.id(),
                                    build,
                                    there.get().name(),
                                    x,
                                    y));
                            x = 9;
                            y = 9;
                        }
                    }
                }
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** m, the ground's surface outdoors; the ground under a house reaches up to its floor alone. */
    private static double groundTop(Composition composition) {
        return composition
                .plan()
                .pieces()
                .select(piece -> piece.origin() instanceof SectionPlan.Origin.OfGround)
                .flatCollect(piece -> piece.outline().corners())
                .select(corner -> corner.x() > 1)
                .collectDouble(Point::y)
                .max();
    }

    /** Where a wall or a door stands above a deck or a roof: a membrane's upstand comes between two runs of boards. */
    private static final ImmutableList<JunctionKind> UPSTANDS =
            Lists.immutable.of(JunctionKind.WALL_TO_TERRACE, JunctionKind.ROOF_STEP, JunctionKind.TERRACE_THRESHOLD);

    /** Where a deck or a flat roof ends in the open or at another: a membrane goes over the boards' edge. */
    private static final ImmutableList<JunctionKind> EDGES = Lists.immutable.of(
            JunctionKind.of("terrace edge over a room"),
            JunctionKind.of("terrace to roof"),
            JunctionKind.of("flat roof edge"),
            JunctionKind.of("parapet"));

    /** Kinds for which rain comes in while an old roof or deck lies open. */
    private static final ImmutableList<JunctionKind> OPENED = UPSTANDS.newWithAll(EDGES)
            .newWithAll(Lists.immutable
                    .of("eaves of an insulated roof", "high eaves of a mono-pitch", "verge", "ridge", "hip", "valley")
                    .newWithAll(Lists.immutable.of("abutment", "dormer cheek", "rooflight", "knee wall"))
                    .collect(JunctionKind::of));

    @Test
    void openedRoofsAndDecksAreCoveredEveryEvening() {
        assertEquals(
                "",
                built(OPENED)
                        .reject(each -> each.cautions().anySatisfy(line -> line.contains("covered every evening")))
                        .collect(Detail::id)
                        .makeString("\n"));
    }

    /** What a part of a sentence has the builder lay or set, by the first of these that it names. */
    private enum Laid {
        MEMBRANE("\\b([Mm]embrane|[Ff]lashing)\\b"),
        VAPOUR("\\b(vapour|airtight layer|air barrier)\\b"),
        FRAME("\\b[Ss]et the (door|sill|frame)\\b"),
        PAN("\\bpan\\b"),
        WALL("\\bwall('s)? boards?\\b"),
        BOARDS("\\b(deck|roof)('s)? boards?\\b|\\bits board\\b");

        private final Pattern words;

        Laid(String words) {
            this.words = Pattern.compile(words);
        }

        /** Of each part of each line of an order, in turn; what names none of them is left out. */
        static ImmutableList<Laid> in(Detail detail) {
            return detail.order()
                    .flatCollect(line -> Lists.immutable.of(line.split("[;,:]")))
                    .flatCollect(part -> Lists.immutable
                            .of(values())
                            .select(each -> each.words.matcher(part).find())
                            .take(1));
        }
    }

    private static boolean isInsulatedFromBelow(Detail detail) {
        return ((BandDrawing) detail.drawing())
                .only()
                .bands()
                .anySatisfy(each -> each.first()
                        && (each.build() == Statement.Build.INSULATED_INSIDE
                                || each.build() == Statement.Build.IN_ITS_FRAME));
    }

    private static ImmutableList<Detail> built(ImmutableList<JunctionKind> kinds) {
        return kinds.flatCollect(CATALOGUE::options).reject(each -> each.rank() == Rank.WORST);
    }

    private static void before(
            Detail detail, ImmutableList<Laid> laid, Laid one, Laid other, MutableList<String> faults) {
        int last = laid.lastIndexOf(one);
        int first = laid.indexOf(other);
        if (last < 0 || first < 0 || last > first) {
            faults.add(detail.id() + ": " + one + " before " + other + ", not in " + laid);
        }
    }

    /** Of decks and flat roofs: the vapour layer, the boards, the membrane over them and up, then the wall's boards. */
    @Test
    void decksAreLaidFromTheirVapourLayerToTheBoardsOfTheWall() {
        MutableList<String> faults = Lists.mutable.empty();
        // Boards under a deck that stays are fixed from the rooms, and where the bays alone are filled none lie on it.
        for (Detail detail : built(UPSTANDS.newWithAll(EDGES)).reject(CatalogueTradeTest::isInsulatedFromBelow)) {
            ImmutableList<Laid> laid = Laid.in(detail);
            if (laid.indexOf(Laid.VAPOUR) < 0 || laid.indexOf(Laid.VAPOUR) > laid.indexOf(Laid.BOARDS)) {
                faults.add(detail.id() + ": no vapour layer under its boards, in " + laid);
            }
            before(detail, laid, Laid.BOARDS, Laid.MEMBRANE, faults);
            // Walls of blocks alone have no boards; their details are drawn for that build.
            if (UPSTANDS.contains(detail.junction())
                    && detail.junction() != JunctionKind.TERRACE_THRESHOLD
                    && TypicalSetups.usual(detail)) {
                before(detail, laid, Laid.MEMBRANE, Laid.WALL, faults);
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** A pan that comes after its frame is none. */
    @Test
    void pansComeBeforeTheFramesThatStandInThem() {
        MutableList<String> faults = Lists.mutable.empty();
        int pans = 0;
        for (Detail detail : CATALOGUE.junctions()) {
            ImmutableList<Laid> laid = Laid.in(detail);
            // A pan under a frame that stands already is set from below, and its text says so.
            if (laid.contains(Laid.PAN) && laid.contains(Laid.FRAME)) {
                pans++;
                if (laid.indexOf(Laid.PAN) > laid.indexOf(Laid.FRAME)) {
                    faults.add(detail.id() + ": " + laid);
                }
            }
        }
        assertTrue(pans >= 12, pans + " pans and frames");
        assertEquals("", faults.makeString("\n"));
    }

    /** Membranes stand 150 mm up what is above a deck or roof; a door's sill may stand lower where its drain is said. */
    @Test
    void upstandsAreHighEnoughOrDrained() {
        MutableList<String> faults = Lists.mutable.empty();
        for (TypicalBuild build : BUILDS) {
            for (Detail detail : UPSTANDS.flatCollect(CATALOGUE::options)) {
                if (detail.rank() == Rank.WORST && detail.junction() != JunctionKind.TERRACE_THRESHOLD) {
                    continue;
                }
                JunctionSetup setup = build.setup(detail);
                double top = setup.first().thickness();
                double high = composition(detail, setup)
                        .plan()
                        .pieces()
                        .select(piece -> piece.origin() instanceof SectionPlan.Origin.OfStrip strip
                                && strip.carries().contains(Control.WATER))
                        .collectDouble(piece -> box(piece)[3] - top)
                        .maxIfEmpty(0);
                boolean drained = detail.junction() == JunctionKind.TERRACE_THRESHOLD
                        && detail.order().anySatisfy(line -> line.contains("drained channel"));
                if (high < UPSTAND - 1e-6 && !drained) {
                    faults.add(String.format(Locale.ROOT, "%s, %s: %.3f m", detail.id(), build, high));
                }
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    private static Optional<Material> material(Composition composition, double x, double y) {
        PlanarSubdivision seen = composition.plan().seen();
        int face = seen.faceAt(x, y);
        return face == PlanarSubdivision.NOTHING
                ? Optional.empty()
                : Optional.of(composition
                        .plan()
                        .pieces()
                        .get(seen.faces().get(face).painted())
                        .material());
    }

    /** Blocks that carry a wall, by what they are made of. */
    private static final ImmutableList<String> CARRYING =
            Lists.immutable.of(UNDER_DOORS, "cellular glass board", "autoclaved aerated concrete");

    /** An old wall that stays takes no row of blocks under it; under a door alone one can be set, which carries no wall. */
    @Test
    void blocksUnderOldWallsSayWhatComesDown() {
        MutableList<String> faults = Lists.mutable.empty();
        int rows = 0;
        for (Detail detail :
                CATALOGUE.junctions().reject(each -> each.junction().form().second() == KindForm.Second.DOOR)) {
            for (Statement statement : ((BandDrawing) detail.drawing()).statements()) {
                if (statement instanceof Statement.PaintBlock block
                        && block.material() instanceof Statement.MaterialChoice.Named named
                        && CARRYING.contains(named.name())
                        && (acrossAWall(block.across()) || acrossAWall(block.along()))) {
                    rows++;
                    if (detail.suits().work().contains(Suits.Work.RETROFIT)
                            && detail.suits().takesDown().isEmpty()) {
                        faults.add(detail.id() + ": " + block.what());
                    }
                }
            }
        }
        assertEquals("", faults.makeString("\n"));
        assertTrue(rows >= 7, rows + " rows of blocks");
    }

    /** Whether it goes from the inner face of a wall's structure to the outer one. */
    private static boolean acrossAWall(LineRange range) {
        return range.toString().contains("wall.structure.inside")
                && range.toString().contains("wall.structure.outside");
    }

    /** A timber between two boards that hold vapour back can dry to neither side. */
    @Test
    void noTimberLiesBetweenTwoTightBoards() {
        MutableList<String> faults = Lists.mutable.empty();
        for (TypicalBuild build : BUILDS) {
            for (Detail detail : CATALOGUE.junctions()) {
                Composition composition = composition(detail, build.setup(detail));
                ImmutableList<SectionPlan.Piece> own = composition
                        .plan()
                        .pieces()
                        .select(piece -> piece.solved() && piece.origin() instanceof SectionPlan.Origin.OfDetail);
                own.select(piece -> piece.material().name().contains("wood"))
                        .reject(piece -> piece.material().insulates())
                        .forEach(timber -> {
                            for (boolean upright : new boolean[] {true, false}) {
                                if (tight(own, timber, upright, true) && tight(own, timber, upright, false)) {
                                    faults.add(detail.id() + ", " + build + ": " + timber.origin());
                                }
                            }
                        });
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** Whether a board that holds vapour back covers more than half of one side of a timber. */
    private static boolean tight(
            ImmutableList<SectionPlan.Piece> own, SectionPlan.Piece timber, boolean upright, boolean far) {
        double[] box = box(timber);
        int across = upright ? 0 : 1;
        int along = 1 - across;
        return own.select(piece -> piece.material().insulates()
                        && (piece.material().canControl(Control.VAPOUR)
                                || piece.material().canControl(Control.AIR)))
                .anySatisfy(piece -> {
                    double[] board = box(piece);
                    double gap = far ? board[across] - box[across + 2] : box[across] - board[across + 2];
                    double covered = Math.min(box[along + 2], board[along + 2]) - Math.max(box[along], board[along]);
                    return Math.abs(gap) < 1e-4 && covered > (box[along + 2] - box[along]) / 2;
                });
    }

    /** Least x and y, greatest x and y. */
    private static double[] box(SectionPlan.Piece piece) {
        ImmutableList<Point> corners = piece.outline().corners();
        return new double[] {
            corners.collectDouble(Point::x).min(),
            corners.collectDouble(Point::y).min(),
            corners.collectDouble(Point::x).max(),
            corners.collectDouble(Point::y).max()
        };
    }

    /** A part that comes down with another is one that some detail asks for, and so is the other, and each part of a wall. */
    @Test
    void whatBelongsToAnotherIsAskedForByThatName() {
        ImmutableList<String> asked = CatalogueFile.builtIn().partsTakenDown();
        ImmutableMap<String, String> with = Retrofit.comesDownWith();
        assertTrue(with.notEmpty());
        assertEquals(
                Lists.immutable.empty(),
                with.keysView()
                        .toList()
                        .withAll(with.valuesView())
                        .withAll(Retrofit.ofTheWall())
                        .reject(asked::contains));
    }
}
