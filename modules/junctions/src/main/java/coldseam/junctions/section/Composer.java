package coldseam.junctions.section;

import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.envelope.KindForm;
import coldseam.envelope.Role;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.plan.SectionPlan;
import java.util.EnumMap;
import java.util.function.Predicate;
import org.eclipse.collections.api.RichIterable;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Geometry;

/**
 * From a detail and a junction to a section that can be solved.
 *
 * <p>Each band is cut at right angles, at least 1 m and three times its thickness past the last thing drawn in the junction
 * (ISO 10211:2017 clause 5.3, from memory); the cuts are adiabatic.
 */
public final class Composer {

    /** m, least distance of a cut. */
    private static final double CUT = 1;

    /** m, of a floor's half width, least that is left where nothing reaches. */
    private static final double LEFT_OF_FLOOR = 0.1;

    /** Times the thickness of what is cut, least distance of a cut. */
    private static final double CUT_THICKNESSES = 3;

    /** m, how far the insulation is followed past the cuts, so that they do not narrow it. */
    public static final double PAST_THE_CUT = 2;

    /** m; less than this deep, two parts only touch. */
    private static final double TOUCH = 1e-6;

    /** m, of a frame as drawn; wide enough for its faces to be undisturbed at the cut. */
    public static final double FRAME_WIDTH = 0.12;

    /** m, thickness with which a strip is drawn. */
    public static final double STRIP = 0.001;

    private final Detail detail;
    private final Scene scene;
    private final Chart chart;
    private final ImmutableList<Painted> pieces;
    private final MutableList<String> notes;
    private final EnumMap<Chart.Cut, Double> cuts;
    private final Surroundings surroundings;

    Composer(Detail detail, Scene scene, Painter.Picture picture) {
        this.detail = detail;
        this.scene = scene;
        this.chart = scene.chart();
        this.pieces = picture.pieces();
        this.notes = Lists.mutable.withAll(picture.notes());
        this.cuts = cuts();
        this.surroundings =
                Surroundings.of(scene.setup().firstExposure(), scene.setup().secondExposure());
    }

    /**
     * Composes a detail's section.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range, with every reason
     */
    public static Composition compose(Detail detail, JunctionSetup setup) {
        if (!(detail.drawing() instanceof BandDrawing drawing)) {
            throw DetailDoesNotFit.of("\"" + detail.name() + "\" (" + detail.id()
                    + ") has no drawing that can be laid on a house's layers. Draw it in a detail file.");
        }
        Scene scene = Scene.of(detail, drawing, setup);
        return new Composer(detail, scene, Painter.paint(scene)).composed();
    }

    /** Whether a detail is meant for such layers at all; it may still not fit them. */
    public static boolean isFor(Detail detail, JunctionSetup setup) {
        return !(detail.drawing() instanceof BandDrawing drawing) || Scene.isFor(drawing, setup);
    }

    /** Whether the layers are such as a detail asks for; its drawing may still come apart on them. */
    public static boolean takes(Detail detail, JunctionSetup setup) {
        if (detail.drawing() instanceof BandDrawing drawing) {
            try {
                Scene.of(detail, drawing, setup);
            } catch (DetailDoesNotFit misfit) {
                return false;
            }
        }
        return true;
    }

    /** The resistance of a frame without surfaces, from its U with the surface resistances it has in the section. */
    static double frameResistance(Scene scene) {
        double transmittance = scene.setup().opening().orElseThrow().frameTransmittance();
        double rsi = scene.form().second() == KindForm.Second.DOOR
                ? Surroundings.STILL_AIR
                : scene.first().rsi();
        double resistance = 1 / transmittance - rsi - Surroundings.OPEN_AIR;
        if (!(resistance > 0)) {
            double most = Math.round(10 / (rsi + Surroundings.OPEN_AIR)) / 10.0;
            throw DetailDoesNotFit.of(Phrase.of("the frame of \""
                            + scene.setup().opening().orElseThrow().name() + "\" has U ")
                    .and(transmittance + " W/(m²·K)", transmittance, Dimension.TRANSMITTANCE)
                    .and("; allowed is less than ")
                    .and(most + " W/(m²·K)", most, Dimension.TRANSMITTANCE)
                    .and(", what its surfaces alone let through. Correct frame-u."));
        }
        return resistance;
    }

    // 1. Where the section is cut.

    private EnumMap<Chart.Cut, Double> cuts() {
        EnumMap<Chart.Cut, Double> cutAt = new EnumMap<>(Chart.Cut.class);
        ImmutableList<Painted> conducting = pieces.select(each -> each.effect() == Painted.Effect.CONDUCTS);
        ImmutableList<Chart.Place> places = conducting.flatCollect(Painted::solved);
        ImmutableList<Point> points = places.select(each -> each.cut() == null).collect(each -> each.in(chart));
        for (Chart.Cut cut : Chart.Cut.values()) {
            // What does not conduct, as outside a ventilated layer, is drawn up to its cut, too.
            ImmutableList<Chart.Place> on = Lists.immutable
                    .of(places, pieces.flatCollect(Painted::solved))
                    .collect(some -> some.select(each -> each.cut() == cut))
                    .detectIfNone(RichIterable::notEmpty, Lists.immutable::empty);
            if (on.isEmpty()) {
                continue;
            }
            double reach = Math.max(
                    0,
                    points.collectDouble(each -> cut.sign() * chart.along(cut.ofFirst(), each))
                            .maxIfEmpty(0));
            double least = Math.max(CUT, CUT_THICKNESSES * thickness(on, cut));
            cutAt.put(cut, reach + least);
        }
        boolean edge = scene.form().second() != KindForm.Second.THING;
        if (scene.form().ground() && edge && cutAt.containsKey(Chart.Cut.FIRST_AWAY)) {
            groundCuts(cutAt, conducting);
        }
        return cutAt;
    }

    private double thickness(ImmutableList<Chart.Place> on, Chart.Cut cut) {
        boolean byFirst = !scene.chart().crossing() || cut.ofFirst();
        double least = on.collectDouble(each -> byFirst ? each.s() : each.t()).min();
        double most = on.collectDouble(each -> byFirst ? each.s() : each.t()).max();
        return most - least;
    }

    /** In the ground, half the floor's width is drawn, counted from the wall's outer face, and no more. */
    private void groundCuts(EnumMap<Chart.Cut, Double> cutAt, ImmutableList<Painted> conducting) {
        double half = scene.setup().ground().orElseThrow().floorWidth() / 2 - scene.secondOutside();
        ImmutableList<Painted> house = conducting.reject(each -> each.origin() instanceof SectionPlan.Origin.OfGround);
        double reach = house.flatCollect(Painted::solved)
                .select(each -> each.cut() == null)
                .collectDouble(each -> chart.along(true, each.in(chart)))
                .maxIfEmpty(0);
        if (half < reach + LEFT_OF_FLOOR) {
            throw DetailDoesNotFit.of(Phrase.of(detail.who() + " reaches ")
                    .and(reach, Dimension.LENGTH)
                    .and(" under a floor whose half width indoors is ")
                    .and(half, Dimension.LENGTH)
                    .and("; allowed is ")
                    .and(LEFT_OF_FLOOR, Dimension.LENGTH)
                    .and(" less than that. Choose a detail that reaches less far."));
        }
        cutAt.put(Chart.Cut.FIRST_AWAY, half);
        if (cutAt.containsKey(Chart.Cut.SECOND_AWAY)) {
            double up = house.flatCollect(Painted::solved)
                    .select(each -> each.cut() == null)
                    .collectDouble(each -> chart.along(false, each.in(chart)))
                    .maxIfEmpty(0);
            double thick = CUT_THICKNESSES * scene.secondOutside();
            cutAt.put(Chart.Cut.SECOND_AWAY, Math.max(scene.depth(), up) + Math.max(CUT, thick));
        }
    }

    /** What is painted, in painting order. */
    ImmutableList<Painted> pieces() {
        return pieces;
    }

    /** Distances of the cuts from where the inner faces meet, m. */
    EnumMap<Chart.Cut, Double> cutDistances() {
        return cuts;
    }

    /** A piece's outline in the plane, with the cuts moved outwards by {@code more}. */
    ImmutableList<Point> outline(ImmutableList<Chart.Place> places, double more) {
        return chart.outline(cut(places, more));
    }

    /** The places with where their cuts lie. */
    private ImmutableList<Chart.Place> cut(ImmutableList<Chart.Place> places, double more) {
        return places.collect(each -> each.cut() == null
                ? each
                : new Chart.Place(each.s(), each.t(), each.cut(), cuts.get(each.cut()) + more));
    }

    // 2. What is seen of each piece.

    Composition composed() {
        ImmutableList<Geometry> areas = areas(pieces, 0);
        ImmutableList<Composition.Face> faces = faces(pieces, areas, each -> true);
        if (faces.isEmpty()) {
            throw DetailDoesNotFit.of("\"" + detail.name() + "\" (" + detail.id()
                    + ") draws nothing that conducts with these layers. Choose another detail.");
        }
        Geometry body = Shapes.union(faces.collect(Composition.Face::area));
        Geometry main = largest(body);
        if (main != body) {
            notes.add("Parts that touch the rest nowhere are left out of the heat flow.");
            faces = faces.select(face -> face.area().buffer(-TOUCH).intersects(main));
        }
        ImmutableList<Conducting> conducting = conducting(areas);
        ImmutableList<Region> regions = conducting.collect(Conducting::region);
        OutlineBoundaries outline = new OutlineBoundaries(scene, surroundings, cuts, notes);
        ImmutableList<Boundary> heatFlow = outline.of(main);
        ImmutableList<Boundary> surface = new WarmFaces(opening(areas)).of(heatFlow);
        if (scene.isWithoutItsGround()) {
            notes.add(
                    "The ground is left out: what faces it is reckoned as if it faced open air at the outdoor temperature. Its"
                            + " surface indoors comes out colder, and its U here is larger, than in the ground.");
        }
        if (scene.form().framed()) {
            notes.add("fRsi is sought on wall, reveal and floor and where they meet the "
                    + (scene.form().second() == KindForm.Second.DOOR ? "door" : "frame")
                    + ", which itself has 0.13 m²·K/W indoors; the edge of the glass is not computed.");
        }
        SectionPlan plan = SectionPlan.of(
                drawn(areas), conducting.collect(each -> each.piece().fill()), outline.ends(main));
        refuseFloating(plan);
        refuseOverhang(plan);
        Legs legs = new Legs(scene, cuts);
        PenEnds ends = PenEnds.of(scene, cuts);
        if (detail.own()) {
            // The catalogue's are looked at by whoever draws them.
            outline.refuseFarDivide(detail.who());
            OutlineBoundaries.refuseHoles((org.locationtech.jts.geom.Polygon) main);
            LayersGoOn.require(detail, scene, plan, ends.places());
        }
        return new Composition(
                section(regions, heatFlow, ""),
                section(regions, surface, ", for surface temperatures"),
                plan,
                legs.legs(),
                legs.factors(),
                surroundings,
                faces,
                insulation(ends),
                ends.places(),
                legs.weakestNeighbour(),
                scene.setBack(),
                notes.distinct().toImmutable());
    }

    /** Refuses a drawing in which something that carries floats: its layers were not made to meet. */
    private void refuseFloating(SectionPlan plan) {
        double upstand =
                scene.form().second() == KindForm.Second.SURFACE ? scene.setup().upstand() : 0;
        if (detail.own()
                && upstand > 0
                && FloatingStructure.nothingStands(
                        plan,
                        scene.first().thickness(),
                        scene.first().thickness() + FloatingStructure.HIGH * upstand)) {
            throw DetailDoesNotFit.of(Phrase.of(detail.who() + " draws no parapet, and one of ")
                    .andMillimetres(upstand)
                    .and(" stands there. Draw it, with what it bears on."));
        }
        if (FloatingStructure.bodies(plan, upstand > 0) > 1) {
            boolean both = scene.first().carriesOnBothSides()
                    || scene.second().filter(Band::carriesOnBothSides).isPresent();
            throw DetailDoesNotFit.of(detail.who()
                    + " cuts what carries one surface off what carries the other with these layers: the structure would"
                    + " float. "
                    + (both
                            ? "Layers of the role structure lie on both sides of the insulation: give those that do not carry"
                                    + " the role cladding, or insulation with their framing. Of a panel whose two boards carry with"
                                    + " its core, the core has the role structure, too, its splines and plates as framing."
                            : "Choose a detail for insulation that changes sides, or draw one whose structures meet."));
        }
    }

    /** Refuses a wall that stands back indoors from the one under it, or out over it, where too little bears it. */
    private void refuseOverhang(SectionPlan plan) {
        boolean stands = scene.setup().innerStep() != 0 && scene.form().page() == KindForm.Page.FIRST_DOWN;
        Band above = scene.second().filter(band -> stands).orElse(null);
        if (above == null) {
            return;
        }
        double borne = above.main(Role.STRUCTURE)
                .map(leaf -> FloatingStructure.borne(plan, leaf))
                .orElse(1.0);
        // In whole percents, as the message has it.
        if (Math.rint(100 * borne) < 100 * FloatingStructure.ON_ITS_FOOT) {
            throw DetailDoesNotFit.of(Phrase.of(detail.who()
                            + Format.of(
                                    " draws the %s on %.0f %% of the thickness of what carries it, with its inner face ",
                                    above.name(), 100 * borne))
                    .andMillimetres(Math.abs(scene.setup().innerStep()))
                    .and(Format.of(
                            " farther %s than that of the %s; allowed is %.0f %% or more. Choose a detail with a floor that bears"
                                    + " it, draw the section by hand with what does, or bring the faces nearer"
                                    + " (footprint-line).",
                            scene.setup().innerStep() > 0 ? "out" : "in",
                            scene.first().name(),
                            100 * FloatingStructure.ON_ITS_FOOT)));
        }
    }

    /** What is seen of a window's frame or a door. */
    private Geometry opening(ImmutableList<Geometry> areas) {
        Geometry seen = Shapes.nothing();
        for (int i = 0; i < pieces.size(); i++) {
            boolean frame = pieces.get(i).origin() instanceof SectionPlan.Origin.OfFrame;
            if (frame) {
                seen = Shapes.union(Lists.immutable.of(seen, areas.get(i)));
            } else if (pieces.get(i).effect() != Painted.Effect.DRAWN) {
                seen = Shapes.difference(seen, areas.get(i));
            }
        }
        return seen;
    }

    private static Geometry largest(Geometry body) {
        return Shapes.parts(body).maxBy(Geometry::getArea);
    }

    /** Where pieces are solved, with the cuts moved outwards by {@code more}. */
    private ImmutableList<Geometry> areas(ImmutableList<Painted> some, double more) {
        return some.collect(each -> Shapes.of(outline(each.solved(), more)));
    }

    /** What is seen of those that conduct and are wanted, of pieces that are painted one over another. */
    private static ImmutableList<Composition.Face> faces(
            ImmutableList<Painted> pieces, ImmutableList<Geometry> areas, Predicate<Painted> wanted) {
        MutableList<Composition.Face> faces = Lists.mutable.empty();
        Geometry covered = Shapes.nothing();
        for (int i = pieces.size() - 1; i >= 0; i--) {
            Painted piece = pieces.get(i);
            if (piece.effect() == Painted.Effect.DRAWN) {
                continue;
            }
            if (piece.effect() == Painted.Effect.CONDUCTS && wanted.test(piece)) {
                Geometry seen = Shapes.difference(areas.get(i), covered);
                if (!seen.isEmpty()) {
                    faces.add(new Composition.Face(seen, piece.conductivity(), piece.insulates()));
                }
            }
            if (i > 0) {
                covered = Shapes.union(Lists.immutable.of(covered, areas.get(i)));
            }
        }
        return faces.reverseThis().toImmutable();
    }

    /** What is left of a piece that conducts. */
    private record Conducting(Painted piece, Polygon outline) {

        Region region() {
            return new Region(piece.what(), piece.conductivity(), outline);
        }
    }

    private ImmutableList<Conducting> conducting(ImmutableList<Geometry> areas) {
        MutableList<Conducting> regions = Lists.mutable.empty();
        for (int i = 0; i < pieces.size(); i++) {
            Painted piece = pieces.get(i);
            if (piece.effect() != Painted.Effect.CONDUCTS) {
                continue;
            }
            Geometry kept = areas.get(i);
            boolean whole = true;
            for (int j = i + 1; j < pieces.size(); j++) {
                if (removes(pieces.get(j)) && areas.get(j).intersects(kept)) {
                    Geometry less = Shapes.difference(kept, areas.get(j));
                    whole &= less.getArea() == kept.getArea();
                    kept = less;
                }
            }
            ImmutableList<Polygon> outlines =
                    whole ? Lists.immutable.of(new Polygon(outline(piece.solved(), 0))) : Shapes.outlines(kept);
            outlines.each(each -> regions.add(new Conducting(piece, each)));
        }
        return regions.toImmutable();
    }

    private static boolean removes(Painted piece) {
        return piece.effect() == Painted.Effect.REPLACES_BY_AIR || piece.effect() == Painted.Effect.CLEARS;
    }

    private ImmutableList<SectionPlan.Piece> drawn(ImmutableList<Geometry> areas) {
        MutableList<SectionPlan.Piece> drawn = Lists.mutable.empty();
        for (int i = 0; i < pieces.size(); i++) {
            Painted piece = pieces.get(i);
            if (piece.effect() == Painted.Effect.CLEARS) {
                continue;
            }
            ImmutableList<Point> corners =
                    piece.strip() ? Shapes.ribbon(chart.path(cut(piece.drawn(), 0)), STRIP) : outline(piece.drawn(), 0);
            if (corners.isEmpty()) {
                continue;
            }
            Geometry kept = Shapes.of(corners);
            boolean whole = true;
            for (int j = i + 1; j < pieces.size(); j++) {
                if (pieces.get(j).effect() == Painted.Effect.CLEARS) {
                    if (areas.get(j).intersects(kept)) {
                        kept = Shapes.difference(kept, areas.get(j));
                        whole = false;
                    }
                }
            }
            ImmutableList<Polygon> outlines = whole ? Lists.immutable.of(new Polygon(corners)) : Shapes.outlines(kept);
            boolean solved = piece.effect() != Painted.Effect.REPLACES_BY_AIR;
            outlines.each(each ->
                    drawn.add(new SectionPlan.Piece(each, piece.material(), piece.role(), solved, piece.origin())));
        }
        return drawn.toImmutable();
    }

    private Section section(ImmutableList<Region> regions, ImmutableList<Boundary> boundaries, String suffix) {
        ImmutableList<Environment> environments = surroundings
                .environments(scene.setup().indoorTemperature(), scene.setup().outdoorTemperature())
                .select(each ->
                        boundaries.anySatisfy(boundary -> boundary.environment().equals(each.name())));
        return new Section(
                detail.name() + suffix, Symmetry.PLANAR, regions, environments, boundaries, Lists.immutable.empty());
    }

    private Geometry insulation(PenEnds ends) {
        ImmutableList<Painted> over = pieces.drop(Math.max(0, pieces.detectIndex(each -> each.insulates())));
        MutableList<Geometry> parts = Lists.mutable.withAll(
                faces(over, areas(over, PAST_THE_CUT), Painted::insulates).collect(Composition.Face::area));
        ends.arrivesIn().ifPresent(parts::add);
        return Shapes.union(parts);
    }
}
