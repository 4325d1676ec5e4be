package coldseam.junctions;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Opening;
import coldseam.envelope.PointKind;
import coldseam.envelope.file.house.BuildUps;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/**
 * A junction of each kind, and a surface for each kind of point, between build-ups a builder would use, for looking at
 * options before there is a house.
 *
 * <p>The files of the kinds say which; a house's own layers go before these wherever there is a house file.
 */
public enum TypicalBuild {
    /** Brick walls, concrete slabs and decks, boards outside. */
    MASONRY,
    /** Framed walls and floors, boards outside. */
    FRAME;

    private static final double INDOORS = 20;
    private static final double OUTDOORS = -5;

    /** m, of a floor whose psi must serve any building (ISO 10211:2017 clause 12.4.1, from memory). */
    private static final double INNER_WIDTH = 8;

    /** W/(m·K), of the clay or silt that is drawn under a point: ISO 13370:2017 table 7, from memory. */
    private static final double CLAY = 1.5;

    private Assembly assembly(String use) {
        BuildUps built = BuildUps.all().get(use);
        return this == MASONRY ? built.masonry() : built.frame();
    }

    /** The build-ups by name, in order of first use; then, by use, those that stand in where a surface is built otherwise. */
    public ImmutableList<Assembly> assemblies() {
        return JunctionKind.all()
                .flatCollect(kind -> Lists.immutable
                        .of(kind.typical().first())
                        .newWithAll(kind.typical().second().stream().toList()))
                .newWithAll(BuildUps.all().keysView().toSortedList())
                .collect(this::assembly)
                .distinct();
    }

    /** A junction of a kind at 20 °C indoors and -5 °C outdoors. */
    public JunctionSetup setup(JunctionKind kind) {
        KindForm form = kind.form();
        JunctionKind.Typical typical = kind.typical();
        Exposure beyond = typical.beyond().orElse(form.ground() ? Exposure.ground() : Exposure.outdoors());
        return new JunctionSetup(
                kind,
                assembly(typical.first()),
                typical.second().map(this::assembly),
                typical.angle(),
                beyond,
                typical.beyondSecond().orElse(form.twoBuildUps() ? Exposure.outdoors() : beyond),
                form.framed() ? Optional.of(window(form)) : Optional.empty(),
                typical.floor(),
                typical.upstand(),
                form.ground() ? Optional.of(ground(typical)) : Optional.empty(),
                INDOORS,
                OUTDOORS);
    }

    /**
     * A junction that a detail is drawn for: that of its kind, or where it asks for insulation inside what carries, for what
     * carries or a frame's bays to hold all that insulates, or for a frame, that with such a surface; where it is drawn for
     * other angles than the kind's, in the middle of them.
     */
    public JunctionSetup setup(Detail detail) {
        JunctionSetup ofKind = setup(detail.junction());
        if (!(detail.drawing() instanceof BandDrawing drawing)) {
            return ofKind;
        }
        JunctionSetup usual = drawing.angles()
                .filter(each -> ofKind.angle() < each.least() || ofKind.angle() > each.most())
                .map(each -> ofKind.at((each.least() + each.most()) / 2))
                .orElse(ofKind);
        if (drawing.forAnyBuild()) {
            return usual;
        }
        JunctionKind kind = detail.junction();
        ImmutableSet<String> inside = insulatedInside(kind, drawing);
        ImmutableList<BandDrawing.Built> only = drawing.only().bands();
        ImmutableList<BandDrawing.Contrast> contrasts = drawing.only().contrasts();
        Assembly first = contrasts.contains(BandDrawing.Contrast.ONE_MONOLITHIC)
                ? assembly(BuildUps.monolithic())
                : contrasts.contains(BandDrawing.Contrast.ONE_IN_ITS_FRAME)
                        ? assembly(BuildUps.inItsFrame(kind, 0))
                        : inside(kind, 0, usual.first(), inside);
        return usual.between(
                built(kind, 0, first, only),
                usual.second().map(each -> built(kind, 1, inside(kind, 1, each, inside), only)));
    }

    /** The bands that a drawing wants insulated inside what carries them. */
    private static ImmutableSet<String> insulatedInside(JunctionKind kind, BandDrawing drawing) {
        ImmutableList<BandDrawing.Contrast> contrasts = drawing.only().contrasts();
        if (contrasts.contains(BandDrawing.Contrast.ONE_INSIDE)) {
            return Sets.immutable.of(kind.bands().getLast());
        }
        return contrasts.contains(BandDrawing.Contrast.SIDES_CHANGE)
                ? kind.bands()
                        .select(drawing.insulatedInside()::contains)
                        .take(1)
                        .toImmutableSet()
                : drawing.only()
                        .bands()
                        .select(each -> each.build() == Statement.Build.INSULATED_INSIDE)
                        .collect(BandDrawing.Built::band)
                        .toImmutableSet();
    }

    /** The build-up of a band that must be framed, of wood, solid, of blocks that insulate or insulated in its frame, as its kind usually has it otherwise. */
    private Assembly built(JunctionKind kind, int which, Assembly usual, ImmutableList<BandDrawing.Built> only) {
        String band = kind.bands().get(which);
        JunctionKind.Typical typical = kind.typical();
        String use = which == 0 ? typical.first() : typical.second().orElse(typical.first());
        ImmutableSet<Statement.Build> asked = only.select(
                        each -> each.equals(new BandDrawing.Built(band, which == 0, each.build())))
                .collect(BandDrawing.Built::build)
                .toImmutableSet();
        if (asked.contains(Statement.Build.MONOLITHIC)) {
            return assembly(BuildUps.monolithic());
        }
        if (asked.contains(Statement.Build.IN_ITS_FRAME)) {
            return assembly(BuildUps.inItsFrame(kind, which));
        }
        boolean framed = framed(usual);
        if (framed && asked.contains(Statement.Build.INSULATED_INSIDE) && asked.contains(Statement.Build.FRAMED)) {
            return usual;
        }
        if (framed && (asked.contains(Statement.Build.SOLID) || asked.contains(Statement.Build.MASONRY))) {
            return built(use, false);
        }
        return !framed && (asked.contains(Statement.Build.FRAMED) || asked.contains(Statement.Build.WOODEN))
                ? built(
                        usual.insulatedInside()
                                ? BuildUps.frameInsulatedInside(kind.faces().get(which))
                                : use,
                        true)
                : usual;
    }

    /** A use as it is framed or as it is not, whichever of the two ways of building has it so: walls of the other build are framed in masonry. */
    private static Assembly built(String use, boolean framed) {
        BuildUps built = BuildUps.all().get(use);
        Assembly asked = framed ? built.frame() : built.masonry();
        Assembly other = framed ? built.masonry() : built.frame();
        return framed(asked) != framed && framed(other) == framed ? other : asked;
    }

    private static boolean framed(Assembly assembly) {
        return assembly.layers().anySatisfy(layer -> layer.framing().isPresent());
    }

    /** The build-up of a band, where it is among those that must be insulated inside one that is. */
    private Assembly inside(JunctionKind kind, int which, Assembly usual, ImmutableSet<String> inside) {
        if (!inside.contains(kind.bands().get(which)) || usual.insulatedInside()) {
            return usual;
        }
        JunctionKind.Typical typical = kind.typical();
        BuildUps built = BuildUps.all()
                .get(which == 0 ? typical.first() : typical.second().orElse(typical.first()));
        BridgeKind.Facing faces = kind.faces().get(which);
        // What is framed in either build, as a dormer's cheek is, is no old masonry.
        return assembly(
                framed(built.masonry()) && framed(built.frame())
                        ? BuildUps.frameInsulatedInside(faces)
                        : BuildUps.insulatedInside(faces));
    }

    /** The junctions that the details of a kind are drawn for, the usual one first. */
    public ImmutableList<JunctionSetup> setups(JunctionKind kind, ImmutableList<Detail> details) {
        return Lists.immutable
                .of(setup(kind))
                .newWithAll(details.select(detail -> detail.kind() == kind).collect(this::setup))
                .distinct();
    }

    private JunctionSetup.GroundBlock ground(JunctionKind.Typical typical) {
        Assembly wall = assembly(typical.second().orElse("wall"));
        return JunctionSetup.GroundBlock.ofStrip(2.0, INNER_WIDTH, wall.thickness());
    }

    /** The surface a kind of point usually goes through. */
    public PointSetup setup(PointKind kind) {
        return setup(kind, assembly(kind.typical()));
    }

    /** A named build-up, lying as the kind's usual surface does. */
    public PointSetup setup(PointKind kind, Assembly host) {
        HeatFlow flow = HeatFlow.through(kind.faces());
        boolean onGround = BuildUps.all()
                .anySatisfy(
                        built -> built.onGround() && host.equals(this == MASONRY ? built.masonry() : built.frame()));
        return onGround
                ? new PointSetup(
                        host,
                        Exposure.ground(),
                        flow,
                        Optional.of(groundBelow(host)),
                        INDOORS,
                        OUTDOORS,
                        Maps.immutable.empty())
                : PointSetup.outdoors(host, flow, INDOORS, OUTDOORS);
    }

    private PointSetup.GroundBelow groundBelow(Assembly slab) {
        double resistance = slab.layers()
                .sumOfDouble(layer -> layer.thickness() / layer.material().conductivity());
        JunctionSetup.GroundBlock block = JunctionSetup.GroundBlock.ofStrip(
                CLAY, INNER_WIDTH, assembly("wall").thickness());
        return new PointSetup.GroundBelow(CLAY, block.transmittance(resistance));
    }

    private static Opening window(KindForm form) {
        boolean door = form.second() == KindForm.Second.DOOR;
        return new Opening(
                door ? "terrace door" : "window",
                door ? Opening.Kind.DOOR : Opening.Kind.WINDOW,
                "south wall",
                1.2,
                door ? 2.1 : 1.4,
                OptionalDouble.empty(),
                door ? 0 : 0.9,
                new Opening.Declared(0.9, 1.0),
                0.09,
                OptionalDouble.empty());
    }
}
