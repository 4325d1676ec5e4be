package coldseam.junctions.hand;

import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm.Second;
import coldseam.envelope.Material;
import coldseam.files.Faults;
import coldseam.files.Position;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.kind.Vector;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/**
 * The legs of a drawing by hand as the drawing itself shows them: what lies along a cut, and how far it is from the cut to
 * where the legs' faces meet. What the file says of a leg is held to this, since psi is what is left when U times length is
 * taken off: a slip of the pen there is a house's heat loss.
 */
final class HandLegs {

    /** m; an end of a cut this near to a boundary lies on it, and lengths and thicknesses this close are one. */
    private static final double NEAR = 0.001;

    /** m; a length within this moves psi by a thousandth at U 0.2 W/(m²·K). */
    private static final double LENGTH = 0.005;

    /** Of U: what rounding to three digits does. */
    private static final double TRANSMITTANCE = 0.01;

    /** m, from the cut to where its layers are read. */
    private static final double BESIDE = 2e-5;

    private static final double PARALLEL = 0.01;

    /** m, and thicknesses of the leg, from the cut to whatever is drawn otherwise (ISO 10211:2017, 5.2; from memory). */
    private static final double UNDISTURBED = 1;

    private static final double THICKNESSES = 3;

    /** m; what is drawn otherwise on less is rounding. */
    private static final double SLIVER = 0.0005;

    /**
     * One layer along a cut.
     *
     * @param thickness m
     * @param conductivity W/(m·K)
     */
    record Sheet(double thickness, double conductivity) {

        private boolean insulates() {
            return conductivity <= Material.INSULATES_UP_TO;
        }
    }

    /**
     * A cut.
     *
     * @param inner its end indoors
     * @param outer its other end
     * @param resistance m²·K/W, with the surfaces that its ends lie on; empty where an end lies on none
     * @param inwards unit vector from the cut into the drawing
     * @param sheets from the inside
     */
    private record Cut(
            Point inner, Point outer, Optional<Double> resistance, Vector inwards, ImmutableList<Sheet> sheets) {

        double insulation() {
            double run = 0;
            double most = 0;
            for (Sheet sheet : sheets) {
                run = sheet.insulates() ? run + sheet.thickness() : 0;
                most = Math.max(most, run);
            }
            return most;
        }

        /** m from the cut to where its sheets no longer go on, or the drawing ends; at most what is asked for. */
        double free(double asked, ImmutableList<Composition.Face> faces) {
            Vector out = through();
            MutableList<Geometry> like = Lists.mutable.empty();
            double from = 0;
            for (Sheet sheet : sheets) {
                Geometry band = band(out, from, from + sheet.thickness(), asked);
                faces.select(face -> face.conductivity() == sheet.conductivity())
                        .forEach(face -> like.add(Shapes.intersection(face.area(), band)));
                from += sheet.thickness();
            }
            Geometry other = Shapes.difference(band(out, 0, from, asked), Shapes.union(like))
                    .buffer(-SLIVER);
            return other.isEmpty() ? asked : Shapes.line(inner, outer).distance(other) - SLIVER;
        }

        private Geometry band(Vector out, double from, double to, double along) {
            return Shapes.of(
                    Lists.immutable.of(at(out, from, 0), at(out, to, 0), at(out, to, along), at(out, from, along)));
        }

        private Point at(Vector out, double across, double along) {
            return inwards.times(along).from(out.times(across).from(inner));
        }

        /** Unit vector from indoors outwards. */
        private Vector through() {
            Vector all = Vector.between(inner, outer);
            return all.times(1 / all.length());
        }
    }

    private final Section section;
    private final JunctionKind kind;
    private final ImmutableList<FileDrawnSection.FileLeg> legs;
    private final ImmutableList<Composition.Face> faces;
    private final double unit;

    HandLegs(DrawnSection drawn, ImmutableList<Composition.Face> faces) {
        FileDrawnSection.FileJunction junction = drawn.file().junction().orElseThrow();
        this.section = drawn.section();
        this.kind = junction.kind();
        this.legs = junction.legs();
        this.faces = faces;
        this.unit = drawn.unit();
    }

    /** The layers along a leg's cut, from the inside; like ones that touch are one. */
    ImmutableList<Sheet> sheets(FileDrawnSection.FileLeg leg) {
        return cut(leg).map(Cut::sheets).orElse(Lists.immutable.empty());
    }

    /**
     * All that lies further out than a leg's outer face.
     *
     * @param on a point of the face
     * @param out unit vector
     */
    record Beyond(Point on, Vector out) {

        /** m, farther than anything is drawn. */
        private static final double FAR = 1000;

        Geometry of(Geometry area) {
            Vector along = out.left();
            return Shapes.intersection(
                    area,
                    Shapes.of(Lists.immutable.of(
                            at(0, -FAR, along), at(0, FAR, along), at(FAR, FAR, along), at(FAR, -FAR, along))));
        }

        /** m, how far out something reaches; 0 where it is nothing. */
        double height(Geometry area) {
            double most = 0;
            for (Coordinate each : area.getCoordinates()) {
                most = Math.max(most, Vector.between(on, Shapes.point(each)).dot(out));
            }
            return most;
        }

        private Point at(double outwards, double sideways, Vector along) {
            return along.times(sideways).from(out.times(outwards).from(on));
        }
    }

    Beyond beyond(FileDrawnSection.FileLeg leg) {
        Cut cut = cut(leg).orElseThrow();
        return new Beyond(cut.outer(), cut.through());
    }

    /** Degrees between the legs, measured indoors, as drawn; 180 in a plane. */
    double angle() {
        Vector one = cut(legs.getFirst()).orElseThrow().inwards();
        Vector other = cut(legs.getLast()).orElseThrow().inwards();
        double between = Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, one.dot(other)))));
        boolean reentrant = legs.sumOfDouble(leg -> leg.external() - leg.internal()) < 0;
        return reentrant ? 360 - between : between;
    }

    /** Adds whatever the file says of a leg that its drawing does not show. */
    void check(Faults faults) {
        MutableList<Cut> cuts = Lists.mutable.empty();
        legs.forEachWithIndex((leg, index) -> {
            Optional<Cut> cut = cut(leg);
            if (cut.isEmpty()) {
                faults.add(
                        leg.place(),
                        "a leg's cut leads from a boundary indoors to the far side of what is drawn",
                        "\"" + leg.name() + "\"",
                        "an end on an indoor boundary, and layers all the way to the other",
                        "correct its cut");
            } else {
                cuts.add(cut.get());
                check(leg, cut.get(), index, faults);
            }
        });
        if (cuts.size() == 2) {
            lengths(cuts.getFirst(), cuts.getLast(), faults);
        }
    }

    private void check(FileDrawnSection.FileLeg leg, Cut cut, int index, Faults faults) {
        boolean onGround = kind.form().ground() && index == 0;
        if (!onGround && cut.resistance().isEmpty()) {
            faults.add(
                    leg.place(),
                    "a leg's cut leads from a boundary indoors to one of another environment",
                    "\"" + leg.name() + "\", whose outer end lies on none",
                    "correct its cut, or the boundaries");
        }
        // On the ground U is that of ISO 13370 and is held to the house's.
        cut.resistance()
                .filter(resistance -> !onGround && !(Math.abs(leg.transmittance() * resistance - 1) <= TRANSMITTANCE))
                .ifPresent(resistance -> faults.add(
                        leg.place(),
                        "a leg's transmittance is that of the layers along its cut",
                        u(leg.transmittance()).and(" for \"" + leg.name() + "\""),
                        u(1 / resistance).and(" is drawn"),
                        "correct it, or the drawing"));
        if (!(Math.abs(unit * leg.insulation() - cut.insulation()) <= NEAR)
                && !(kind.form().framed() && index == 1)) {
            faults.add(
                    leg.place(),
                    "a leg's insulation is as thick as drawn along its cut",
                    Phrase.millimetres(unit * leg.insulation()).and(" for \"" + leg.name() + "\""),
                    Phrase.millimetres(cut.insulation()).and(" is drawn"),
                    "correct it, or the drawing");
        }
        if (index == 0 || kind.form().second() == Second.SURFACE || kind.form().second() == Second.THING) {
            undisturbed(leg, cut, faults);
        }
    }

    /** What is drawn otherwise near a cut bends the heat's way, which the cut holds straight. */
    private void undisturbed(FileDrawnSection.FileLeg leg, Cut cut, Faults faults) {
        double thickness = cut.sheets().sumOfDouble(Sheet::thickness);
        double needed = Math.max(UNDISTURBED, THICKNESSES * thickness);
        double free = Math.min(unit * Math.min(leg.internal(), leg.external()), cut.free(needed, faces));
        if (free < needed - LENGTH) {
            faults.add(
                    leg.place(),
                    "a leg goes on undisturbed for a way from its cut, or the cut bends its heat (ISO 10211)",
                    Phrase.millimetres(free).and(" of \"" + leg.name() + "\""),
                    Phrase.of("at least ").andMillimetres(needed).and(": 1 m, and three times what it is thick"),
                    "draw it farther from the seam");
        }
    }

    /**
     * Lengths run from the cuts to where the two legs' inner faces meet, and where their outer faces do; along one plane from
     * cut to cut.
     */
    private void lengths(Cut first, Cut second, Faults faults) {
        double cross = first.inwards().cross(second.inwards());
        if (Math.abs(cross) < PARALLEL) {
            double apart = Math.abs(first.inwards().dot(Vector.between(first.inner(), second.inner())));
            hold(
                    legs.getFirst().place(),
                    legs.sumOfDouble(FileDrawnSection.FileLeg::internal),
                    apart,
                    "internal lengths of the legs together",
                    faults);
            hold(
                    legs.getFirst().place(),
                    legs.sumOfDouble(FileDrawnSection.FileLeg::external),
                    apart,
                    "external lengths of the legs together",
                    faults);
            return;
        }
        double[] inner = meet(first.inner(), first.inwards(), second.inner(), second.inwards(), cross);
        double[] outer = meet(first.outer(), first.inwards(), second.outer(), second.inwards(), cross);
        for (int i = 0; i < 2; i++) {
            FileDrawnSection.FileLeg leg = legs.get(i);
            // A door begins at its sill, above where the planes meet.
            double sill = kind.form().second() == Second.DOOR && i == 1 ? inner[i] - unit * leg.internal() : 0;
            double above = Math.max(0, sill);
            hold(leg.place(), leg.internal(), inner[i] - above, "internal length of \"" + leg.name() + "\"", faults);
            hold(leg.place(), leg.external(), outer[i] - above, "external length of \"" + leg.name() + "\"", faults);
        }
    }

    private void hold(Position place, double said, double drawn, String what, Faults faults) {
        if (!(Math.abs(unit * said - drawn) <= LENGTH)) {
            faults.add(
                    place,
                    "lengths run from a leg's cut to where the legs' faces meet",
                    Phrase.millimetres(unit * said).and(", " + what),
                    Phrase.millimetres(drawn).and(" is drawn"),
                    "correct it, or the drawing");
        }
    }

    private static double[] meet(Point p, Vector d, Point q, Vector e, double cross) {
        Vector between = Vector.between(p, q);
        return new double[] {between.cross(e) / cross, between.cross(d) / cross};
    }

    private Optional<Cut> cut(FileDrawnSection.FileLeg leg) {
        ImmutableList<Point> ends = DrawnSection.points(leg.cut(), unit);
        Point a = ends.getFirst();
        Point b = ends.getLast();
        boolean fromA = on(a, true).isPresent();
        if (fromA == on(b, true).isPresent()) {
            return Optional.empty();
        }
        Point inner = fromA ? a : b;
        Point outer = fromA ? b : a;
        double length = inner.distance(outer);
        Vector normal = Vector.between(inner, outer).times(1 / length).left();
        ImmutableList<Sheet> left = sheets(inner, outer, normal);
        ImmutableList<Sheet> right = sheets(inner, outer, normal.times(-1));
        boolean leftwards = left.sumOfDouble(Sheet::thickness) > right.sumOfDouble(Sheet::thickness);
        ImmutableList<Sheet> sheets = leftwards ? left : right;
        if (!(Math.abs(sheets.sumOfDouble(Sheet::thickness) - length) <= NEAR)) {
            return Optional.empty();
        }
        double layers = sheets.sumOfDouble(each -> each.thickness() / each.conductivity());
        return Optional.of(new Cut(
                inner,
                outer,
                on(outer, false).map(rse -> on(inner, true).orElseThrow() + layers + rse),
                leftwards ? normal : normal.times(-1),
                sheets));
    }

    /** m²·K/W of the surface that a point lies on; empty where it lies on none of that side. */
    private Optional<Double> on(Point point, boolean indoors) {
        return section.boundaries()
                .select(each -> each.environment().equals(Surroundings.INDOOR) == indoors)
                .detectOptional(each -> each.distance(point) <= NEAR)
                .map(each -> each.surfaceResistance()
                        .orElseGet(() -> section.environments()
                                .detect(air -> air.name().equals(each.environment()))
                                .surfaceResistance()));
    }

    private ImmutableList<Sheet> sheets(Point inner, Point outer, Vector beside) {
        Point from = beside.times(BESIDE).from(inner);
        Point to = beside.times(BESIDE).from(outer);
        Geometry line = Shapes.line(from, to);
        MutableList<Piece> pieces = Lists.mutable.empty();
        for (Composition.Face face : faces) {
            for (Geometry met : Shapes.parts(face.area().intersection(line))) {
                if (met instanceof LineString) {
                    double start = Lists.immutable
                            .with(met.getCoordinates())
                            .collectDouble(each -> from.distance(Shapes.point(each)))
                            .min();
                    pieces.add(new Piece(start, met.getLength(), face.conductivity()));
                }
            }
        }
        MutableList<Sheet> sheets = Lists.mutable.empty();
        pieces.sortThisByDouble(Piece::start).forEach(piece -> {
            boolean like = sheets.notEmpty() && sheets.getLast().conductivity() == piece.conductivity();
            double before = like ? sheets.remove(sheets.size() - 1).thickness() : 0;
            sheets.add(new Sheet(before + piece.length(), piece.conductivity()));
        });
        return sheets.toImmutable();
    }

    private record Piece(double start, double length, double conductivity) {}

    private static Phrase u(double transmittance) {
        return Phrase.of(Format.of("%.4g W/(m²·K)", transmittance), transmittance, Dimension.TRANSMITTANCE);
    }
}
