package coldseam.junctions.section;

import coldseam.envelope.Control;
import coldseam.envelope.Duty;
import coldseam.envelope.KindForm;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.LineRange;
import coldseam.junctions.language.Statement;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import org.eclipse.collections.api.DoubleIterable;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Carries out a drawing's statements: from lines and roles to pieces on the chart. */
final class Painter {

    static final double SLACK = 1e-9;

    /** m; what is no thicker comes of rounding, in another unit say, and is not drawn. */
    private static final double THINNEST = 1e-6;

    /** W/(m·K), of a sheet of about a millimetre that the heat flow may go without. */
    private static final double MOST_OF_A_STRIP = 1;

    private final Scene scene;
    private final GroundPieces earth;
    private final MutableList<Painted> pieces = Lists.mutable.empty();
    private final MutableList<Phrase> reasons = Lists.mutable.empty();
    private final MutableList<String> notes = Lists.mutable.empty();

    private Painter(Scene scene) {
        this.scene = scene;
        this.earth = new GroundPieces(scene);
    }

    /**
     * The pieces of a scene.
     *
     * @param pieces in painting order
     * @param notes what was simplified
     */
    record Picture(ImmutableList<Painted> pieces, ImmutableList<String> notes) {}

    /**
     * Paints.
     *
     * @throws DetailDoesNotFit where a material is not known or a layer it copies is not there
     */
    static Picture paint(Scene scene) {
        Painter painter = new Painter(scene);
        scene.drawing().statements().each(painter::paint);
        painter.pieces.addAllIterable(painter.earth.boardDownwards(painter.pieces.toImmutable()));
        if (!painter.reasons.isEmpty()) {
            throw new DetailDoesNotFit(painter.reasons.distinct().toImmutable());
        }
        return new Picture(
                painter.pieces.toImmutable(), painter.notes.distinct().toImmutable());
    }

    private void paint(Statement statement) {
        if (statement instanceof Statement.PaintBand band) {
            band(band);
        } else if (statement instanceof Statement.PaintBlock block) {
            block(block);
        } else if (statement instanceof Statement.PaintShape shape) {
            shape(shape);
        } else if (statement instanceof Statement.PaintStrip strip) {
            strip(strip);
        } else if (statement instanceof Statement.Clear clear) {
            clear(clear);
        } else if (statement instanceof Statement.Ground ground) {
            pieces.addAllIterable(earth.under(ground, notes));
        } else if (statement instanceof Statement.Frame) {
            frame();
        } else if (statement instanceof Statement.Where where && holds(where)) {
            paint(where.statement());
        }
    }

    private boolean holds(Statement.Where where) {
        return Band.built(scene.band(where.first()), where.build());
    }

    // A side is one coordinate of a corner: a line, or a cut.
    record Side(double line, Chart.Cut cut) {

        static Side at(double line) {
            return new Side(line, null);
        }

        static Side on(Chart.Cut cut) {
            return new Side(0, cut);
        }
    }

    private Side side(LineRange.End end) {
        return end.cut()
                .map(Side::on)
                .orElseGet(() -> Side.at(scene.value(end.line().orElseThrow())));
    }

    private static Chart.Place place(Side s, Side t) {
        if (s.cut() != null) {
            return new Chart.Place(0, t.line(), s.cut(), Double.NaN);
        }
        return t.cut() != null
                ? new Chart.Place(s.line(), 0, t.cut(), Double.NaN)
                : Chart.Place.inside(s.line(), t.line());
    }

    /** The four corners, or none where the lines have crossed or meet. */
    static Optional<ImmutableList<Chart.Place>> rectangle(Side s0, Side s1, Side t0, Side t1) {
        if (empty(s0, s1) || empty(t0, t1)) {
            return Optional.empty();
        }
        return Optional.of(Lists.immutable.of(place(s0, t0), place(s1, t0), place(s1, t1), place(s0, t1)));
    }

    private static boolean empty(Side from, Side to) {
        return from.cut() == null && to.cut() == null && to.line() - from.line() <= THINNEST;
    }

    private void band(Statement.PaintBand paint) {
        Band band = scene.band(paint.first()).orElse(null);
        if (band == null) {
            reasons.add(Phrase.of("the drawing paints the layers of the " + paint.name()
                    + ", of which the junction knows none. Give that surface an assembly."));
            return;
        }
        for (Band.Stratum stratum : band.strata()) {
            if (!paint.roles().contains(stratum.role())) {
                continue;
            }
            Zone zone = band.zone(stratum);
            Side near = named(paint, band, stratum)
                    .or(() -> end(paint, stratum.role(), zone))
                    .map(this::side)
                    .orElseGet(() -> like(paint.first(), stratum.role(), zone));
            Side far = paint.from().map(this::side).orElseGet(() -> Side.on(away(paint.first())));
            Optional<ImmutableList<Chart.Place>> drawn =
                    layer(paint.first(), stratum.inside(), stratum.outside(), near, far);
            Optional<ImmutableList<Chart.Place>> solved =
                    layer(paint.first(), stratum.solvedInside(), stratum.solvedOutside(), near, far);
            Material material = stratum.layer().layer().material();
            Origin origin = new Origin.OfLayer(
                    paint.first(),
                    band.strata().indexOf(stratum),
                    stratum.layer().layer(),
                    band.zoneOf(stratum));
            Painted.Effect effect = switch (stratum.layer().part()) {
                case CARRIES_HEAT -> Painted.Effect.CONDUCTS;
                case NEGLIGIBLE -> Painted.Effect.DRAWN;
                case VENTILATED -> Painted.Effect.REPLACES_BY_AIR;
            };
            drawn.ifPresent(outline -> pieces.add(new Painted(
                    band.name() + ": " + material.name(),
                    outline,
                    solved.orElse(outline),
                    material,
                    stratum.conductivity(),
                    stratum.role(),
                    stratum.insulates(),
                    effect,
                    origin)));
            remark(stratum);
        }
    }

    /** Where the drawing says that this one layer ends, apart from others of its role. */
    private static Optional<LineRange.End> named(Statement.PaintBand paint, Band band, Band.Stratum stratum) {
        ImmutableList<Band.Stratum> alike = band.strata().select(each -> each.role() == stratum.role());
        int nth = 1 + alike.detectIndex(each -> each == stratum);
        LineRange.End outermost = nth == alike.size()
                ? paint.ends().get(new Statement.Which(stratum.role(), Statement.Which.OUTERMOST))
                : null;
        return Optional.ofNullable(paint.ends().getIfAbsentValue(new Statement.Which(stratum.role(), nth), outermost));
    }

    /**
     * Where a role's layers end; an air layer with its cladding, unless the drawing says otherwise. A void or more insulation
     * inside the insulation belongs to the lining.
     */
    private static Optional<LineRange.End> end(Statement.PaintBand paint, Role role, Zone zone) {
        if ((role == Role.AIR_LAYER || role == Role.INSULATION) && zone == Zone.INSIDE) {
            return Optional.ofNullable(paint.ends().get(Statement.Which.all(Role.FINISH)))
                    .or(paint::to);
        }
        return Optional.ofNullable(paint.ends().get(Statement.Which.all(role)))
                .or(() -> Optional.ofNullable(
                        role == Role.AIR_LAYER ? paint.ends().get(Statement.Which.all(Role.CLADDING)) : null))
                .or(paint::to);
    }

    private void remark(Band.Stratum stratum) {
        switch (stratum.layer().part()) {
            case NEGLIGIBLE -> notes.add("Membranes are drawn, and left out of the heat flow.");
            case VENTILATED ->
                notes.add("What lies outside a well-ventilated air layer is drawn, and left out of the heat flow (ISO"
                        + " 6946).");
            default -> {
                if (stratum.layer().layer().framing().isPresent()) {
                    notes.add("A layer with framing conducts as one homogeneous layer of the same transmittance.");
                }
                if (stratum.layer().layer().taper().isPresent()) {
                    notes.add("A layer cut to falls is drawn at its thinnest.");
                }
            }
        }
    }

    private Chart.Cut away(boolean first) {
        return first ? Chart.Cut.FIRST_AWAY : Chart.Cut.SECOND_AWAY;
    }

    /** Where a layer ends that meets its like. */
    private Side like(boolean first, Role role, Zone zone) {
        if (scene.form().meeting() == KindForm.Meeting.END_TO_END) {
            return Side.at(0);
        }
        if (scene.form().second() == KindForm.Second.THING) {
            return Side.on(Chart.Cut.FIRST_BEYOND);
        }
        if (scene.form().second() == KindForm.Second.FRAME) {
            return Side.at(0);
        }
        if (scene.form().second() == KindForm.Second.DOOR) {
            return Side.at(scene.scope().get("wall.outside"));
        }
        Band other = scene.band(!first).orElseThrow();
        return Side.at(other.like(scene.chart().convex(), role, zone));
    }

    private Optional<ImmutableList<Chart.Place>> layer(
            boolean first, double inside, double outside, Side near, Side far) {
        Side in = Side.at(inside);
        Side out = Side.at(outside);
        boolean acrossFirst = first || scene.form().meeting() == KindForm.Meeting.END_TO_END;
        // A band that runs to growing lines of the other begins at its near end, one that runs to falling ones ends
        // there.
        boolean growing = scene.form().meeting() == KindForm.Meeting.END_TO_END
                ? !first
                : !scene.chart().convex();
        Side from = growing ? near : far;
        Side to = growing ? far : near;
        return acrossFirst ? rectangle(in, out, from, to) : rectangle(from, to, in, out);
    }

    private void block(Statement.PaintBlock block) {
        Optional<ImmutableList<Chart.Place>> outline = rectangle(
                side(block.across().from()),
                side(block.across().to()),
                side(block.along().from()),
                side(block.along().to()));
        outline.ifPresent(places -> fill(block.what(), places, block.material(), block.role(), block.drawnOnly()));
    }

    private void shape(Statement.PaintShape shape) {
        ImmutableList<Chart.Place> places =
                shape.corners().collect(corner -> place(side(corner.across()), side(corner.along())));
        if (!flat(places)) {
            fill(shape.what(), places, shape.material(), shape.role(), shape.drawnOnly());
        }
    }

    /** Whether a shape lies in a layer that the build-up lacks, so that it vanishes as a block there does. */
    private static boolean flat(ImmutableList<Chart.Place> places) {
        return places.allSatisfy(each -> each.cut() == null)
                && (extent(places.collectDouble(Chart.Place::s)) <= THINNEST
                        || extent(places.collectDouble(Chart.Place::t)) <= THINNEST);
    }

    private static double extent(DoubleIterable values) {
        return values.max() - values.min();
    }

    private void strip(Statement.PaintStrip strip) {
        String who =
                "\"" + strip.what() + "\" is a strip of \"" + strip.material().name() + "\", which ";
        Optional<Material> found = named(strip.material().name());
        if (found.isEmpty()) {
            reasons.add(Phrase.of(
                    who + "is neither in the house's assemblies beside the junction, nor in the detail, nor built in."
                            + " Name another material."));
            return;
        }
        Material material = found.get();
        ImmutableList<Control> cannot =
                strip.carries().reject(material::canControl).toImmutableSortedList();
        if (cannot.notEmpty()) {
            reasons.add(Phrase.of(who + "no source says to control "
                    + cannot.collect(DrawingNames::word).makeString(" or ") + ". Name another material."));
        }
        if (!(material.conductivity() <= MOST_OF_A_STRIP)) {
            reasons.add(Phrase.of(who + "conducts ")
                    .and(material.conductivity() + " W/(m·K)", material.conductivity(), Dimension.CONDUCTIVITY)
                    .and("; a strip has no part in the heat flow and may conduct ")
                    .and("1 W/(m·K)", MOST_OF_A_STRIP, Dimension.CONDUCTIVITY)
                    .and(" at most. Draw it as a shape, so that its heat counts."));
        }
        ImmutableList<Chart.Place> way =
                strip.corners().collect(corner -> place(side(corner.across()), side(corner.along())));
        pieces.add(new Painted(
                strip.what(),
                way,
                way,
                material,
                material.conductivity(),
                Role.MEMBRANE,
                false,
                Painted.Effect.DRAWN,
                new Origin.OfStrip(strip.what(), strip.carries())));
    }

    private void clear(Statement.Clear clear) {
        rectangle(
                        side(clear.across().from()),
                        side(clear.across().to()),
                        side(clear.along().from()),
                        side(clear.along().to()))
                .ifPresent(places -> pieces.add(new Painted(
                        "air",
                        places,
                        places,
                        NOTHING,
                        1,
                        Role.AIR_LAYER,
                        false,
                        Painted.Effect.CLEARS,
                        new Origin.OfDetail("air"))));
    }

    private static final Material NOTHING = Material.conducting("air", 1, false, "stands for nothing");

    /** What fills a block. */
    private record Filling(Material material, double conductivity, boolean insulates, Origin origin) {}

    private void fill(
            String what,
            ImmutableList<Chart.Place> places,
            Statement.MaterialChoice choice,
            Optional<Role> role,
            boolean drawnOnly) {
        filling(what, choice, drawnOnly)
                .ifPresent(with -> pieces.add(new Painted(
                        what,
                        places,
                        places,
                        with.material(),
                        with.conductivity(),
                        role.orElse(with.insulates() ? Role.INSULATION : Role.STRUCTURE),
                        with.insulates(),
                        drawnOnly ? Painted.Effect.REPLACES_BY_AIR : Painted.Effect.CONDUCTS,
                        with.origin())));
    }

    /** Empty, with the reason, where nothing can fill it here. */
    private Optional<Filling> filling(String what, Statement.MaterialChoice choice, boolean drawnOnly) {
        if (choice instanceof Statement.MaterialChoice.SameAs same) {
            return filling(what, same, drawnOnly);
        }
        if (choice instanceof Statement.MaterialChoice.Named named) {
            return filling(what, named.name(), drawnOnly);
        }
        if (choice instanceof Statement.MaterialChoice.TheLintel) {
            return lintel(what, drawnOnly);
        }
        double conductivity = scene.setup()
                .ground()
                .map(JunctionSetup.GroundBlock::conductivity)
                .orElse(2.0);
        Material ground = Material.conducting("ground", conductivity, false, "the site");
        return Optional.of(new Filling(ground, conductivity, false, new Origin.OfGround()));
    }

    private Optional<Filling> lintel(String what, boolean drawnOnly) {
        return switch (scene.setup().opening().flatMap(Opening::lintel).orElse(Opening.Lintel.CONCRETE)) {
            case CONCRETE -> filling(what, "reinforced concrete", drawnOnly);
            case STEEL -> filling(what, "steel", drawnOnly);
            case TIMBER -> filling(what, "softwood", drawnOnly);
            case ARCH ->
                filling(
                        what,
                        new Statement.MaterialChoice.SameAs(
                                true, scene.setup().kind().first(), Role.STRUCTURE, Optional.empty()),
                        drawnOnly);
        };
    }

    private Optional<Filling> filling(String what, Statement.MaterialChoice.SameAs same, boolean drawnOnly) {
        Optional<Band.Stratum> model = scene.band(same.first()).flatMap(band -> band.main(same.role()));
        if (model.isEmpty()) {
            reasons.add(Phrase.of("\"" + what + "\" is made of the same as the " + same.band() + "'s "
                    + DrawingNames.word(same.role())
                    + ", of which that assembly has none. Choose another detail, or name"
                    + " the block's material in a copy of this one."));
            return Optional.empty();
        }
        Layer layer = model.get().layer().layer();
        if (same.inSplash().isPresent() && !layer.material().canBear(Duty.SPLASH)) {
            return filling(what, same.inSplash().get(), drawnOnly);
        }
        // As that layer is solved: where it is framed, so is the block.
        return Optional.of(new Filling(
                layer.material(),
                model.get().layer().conductivity(),
                model.get().insulates(),
                new Origin.OfDetail(what, Optional.of(layer))));
    }

    private Optional<Filling> filling(String what, String name, boolean drawnOnly) {
        Optional<Material> found = named(name);
        if (found.isEmpty()) {
            reasons.add(
                    Phrase.of("\"" + what + "\" is made of \"" + name + "\", which is neither the house's, nor in the"
                            + " detail, nor built in. Name another material."));
        }
        if (found.filter(Material::isAir).isPresent() && !drawnOnly) {
            reasons.add(Phrase.of("\"" + what
                    + "\" is of air, which in a block conducts by its shape and not as still air does. Give"
                    + " the detail a material of its own: width over the resistance of the space (ISO 6946)."));
        }
        return found.map(material ->
                new Filling(material, material.conductivity(), material.insulates(), new Origin.OfDetail(what)));
    }

    /** The house's own word first: what its layers are made of; then the detail's; then the built-in list. */
    private Optional<Material> named(String name) {
        return scene.setup()
                .material(name)
                .or(() -> scene.drawing().terms().material(name))
                .or(() -> MaterialLibrary.named(name));
    }

    private void frame() {
        Opening opening = scene.setup().opening().orElseThrow();
        double inside = scene.frameOutside() - opening.frameDepth();
        Side in = Side.at(inside);
        Side out = Side.at(scene.frameOutside());
        boolean door = scene.form().second() == KindForm.Second.DOOR;
        Optional<ImmutableList<Chart.Place>> outline = door
                ? rectangle(
                        Side.on(Chart.Cut.SECOND_AWAY), Side.at(scene.scope().get("door.sill")), in, out)
                : rectangle(in, out, Side.at(0), Side.at(Composer.FRAME_WIDTH));
        double conductivity = opening.frameDepth() / Composer.frameResistance(scene);
        Material material = Material.conducting(door ? "door" : "frame", conductivity, false, "its U");
        outline.ifPresent(places -> pieces.add(
                Painted.conducting(material.name(), places, material, Role.STRUCTURE, new Origin.OfFrame())));
        notes.add("The " + material.name() + " is a homogeneous body of the same depth and U.");
    }
}
