package coldseam.junctions;

import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.kind.KindForm;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/**
 * A junction of each kind between build-ups a builder would use, for looking at options before there is a house.
 *
 * <p>Thicknesses are common practice, no source; materials are the built-in ones. A house's own layers go before these
 * wherever there is a house file.
 */
public enum TypicalBuild {
    /** Brick walls, concrete slabs and decks, boards outside. */
    MASONRY,
    /** Framed walls and floors, boards outside. */
    FRAME;

    /** m, of a floor whose psi must serve any building (ISO 10211:2017 clause 12.4.1, from memory). */
    private static final double INNER_WIDTH = 8;

    private static Layer layer(String material, double millimetres, Role role) {
        return layer(material, millimetres / 1000, role, Optional.empty(), Optional.empty());
    }

    private static Layer layer(
            String material,
            double thickness,
            Role role,
            Optional<Layer.Framing> framing,
            Optional<Layer.AirLayer> air) {
        return new Layer(named(material), thickness, role, framing, air, Optional.empty(), Sets.immutable.empty());
    }

    private static Material named(String material) {
        return MaterialLibrary.named(material).orElseThrow();
    }

    private static Layer framed(double millimetres, double share) {
        return layer(
                "mineral wool batt",
                millimetres / 1000,
                Role.STRUCTURE,
                Optional.of(new Layer.Framing(named("softwood"), share)),
                Optional.empty());
    }

    private static Layer ventilated(double millimetres) {
        return layer(
                "air",
                millimetres / 1000,
                Role.AIR_LAYER,
                Optional.empty(),
                Optional.of(new Layer.AirLayer(Layer.Ventilation.WELL_VENTILATED, 0, 0.9)));
    }

    private Layer insulation(String material, double millimetres) {
        return layer(material, millimetres / 1000, Role.INSULATION, Optional.empty(), Optional.empty());
    }

    private static Assembly assembly(String name, Layer... layers) {
        return new Assembly(
                name, Lists.immutable.with(layers), Optional.empty(), Assembly.AirGaps.NONE, Optional.empty());
    }

    private Assembly wall() {
        return this == MASONRY
                ? assembly(
                        "brick wall with boards outside",
                        layer("gypsum plaster", 15, Role.FINISH),
                        layer("clay brick", 240, Role.STRUCTURE),
                        insulation("mineral wool board", 200),
                        layer("thin-coat render", 10, Role.CLADDING))
                : assembly(
                        "frame wall with boards outside",
                        layer("gypsum plasterboard", 12.5, Role.FINISH),
                        framed(140, 0.15),
                        insulation("mineral wool board", 150),
                        ventilated(30),
                        layer("softwood", 22, Role.CLADDING));
    }

    private Assembly veneeredWall() {
        return assembly(
                "frame wall with a brick face",
                layer("gypsum plasterboard", 12.5, Role.FINISH),
                framed(140, 0.15),
                insulation("mineral wool board", 150),
                ventilated(40),
                layer("clay brick", 100, Role.CLADDING));
    }

    private Assembly foundation() {
        return assembly(
                "foundation wall with boards outside",
                layer("gypsum plaster", 15, Role.FINISH),
                layer("reinforced concrete", 200, Role.STRUCTURE),
                insulation("extruded polystyrene board", 150),
                layer("cement render", 15, Role.CLADDING));
    }

    private Assembly pitchedRoof() {
        return assembly(
                "rafters with boards over them",
                layer("gypsum plasterboard", 12.5, Role.FINISH),
                framed(160, 0.12),
                insulation("wood fibre insulation board", 200),
                ventilated(40),
                layer("clay roof tile", 30, Role.CLADDING));
    }

    private Assembly flatRoof() {
        return this == MASONRY
                ? assembly(
                        "concrete flat roof",
                        layer("gypsum plaster", 15, Role.FINISH),
                        layer("reinforced concrete", 200, Role.STRUCTURE),
                        insulation("polyisocyanurate board", 160),
                        layer("bitumen sheet", 10, Role.CLADDING))
                : assembly(
                        "joisted flat roof",
                        layer("gypsum plasterboard", 12.5, Role.FINISH),
                        layer("softwood", 100, Role.STRUCTURE),
                        insulation("polyisocyanurate board", 160),
                        layer("bitumen sheet", 10, Role.CLADDING));
    }

    private Assembly deck() {
        return this == MASONRY
                ? assembly(
                        "concrete terrace",
                        layer("gypsum plaster", 15, Role.FINISH),
                        layer("reinforced concrete", 200, Role.STRUCTURE),
                        insulation("polyisocyanurate board", 160),
                        layer("concrete paving", 50, Role.CLADDING))
                : assembly(
                        "joisted terrace",
                        layer("gypsum plasterboard", 12.5, Role.FINISH),
                        layer("softwood", 120, Role.STRUCTURE),
                        insulation("polyisocyanurate board", 160),
                        layer("concrete paving", 50, Role.CLADDING));
    }

    private Assembly slab() {
        return assembly(
                "slab on boards",
                layer("cement screed", 60, Role.FINISH),
                layer("reinforced concrete", 150, Role.STRUCTURE),
                insulation("extruded polystyrene board", 200));
    }

    private Assembly oldSlab() {
        return assembly(
                "old slab without boards",
                layer("cement screed", 50, Role.FINISH),
                layer("concrete", 150, Role.STRUCTURE));
    }

    private Assembly overOpenAir() {
        return this == MASONRY
                ? assembly(
                        "concrete floor over a cold space",
                        layer("cement screed", 60, Role.FINISH),
                        layer("reinforced concrete", 180, Role.STRUCTURE),
                        insulation("mineral wool board", 160))
                : assembly(
                        "joisted floor over a cold space",
                        layer("particleboard", 22, Role.FINISH),
                        framed(200, 0.12),
                        insulation("mineral wool board", 80));
    }

    private Assembly ceiling() {
        return assembly(
                "top ceiling",
                layer("gypsum plasterboard", 12.5, Role.FINISH),
                layer("softwood", 25, Role.STRUCTURE),
                insulation("cellulose, blown in", 300));
    }

    private static Assembly partyWall() {
        return assembly(
                "party wall",
                layer("gypsum plaster", 15, Role.FINISH),
                layer("clay brick", 240, Role.STRUCTURE),
                layer("gypsum plaster", 15, Role.CLADDING));
    }

    private Assembly first(JunctionKind kind) {
        return switch (kind) {
            case EXISTING_SLAB_EDGE -> oldSlab();
            case UNHEATED_BELOW_EDGE, CRAWL_SPACE_EDGE, OVERHANG_EDGE, WALL_UNDER_OVERHANG -> overOpenAir();
            case FOUNDATION_WALL_TOP -> foundation();
            case VENEER_LEDGE -> veneeredWall();
            case EAVES, VERGE, RIDGE, HIP, VALLEY, KNEE_WALL, DORMER_CHEEK, ROOFLIGHT -> pitchedRoof();
            default ->
                switch (kind.first()) {
                    case "floor" -> slab();
                    case "roof" -> flatRoof();
                    case "deck" -> deck();
                    case "ceiling" -> ceiling();
                    default -> wall();
                };
        };
    }

    private Assembly second(JunctionKind kind) {
        return switch (kind) {
            case PARTY_WALL -> partyWall();
            case RIDGE, HIP, VALLEY, TERRACE_TO_ROOF -> pitchedRoof();
            case DORMER_CHEEK, FOUNDATION_WALL_TOP -> FRAME.wall();
            // What stands in or against the ground is not framed.
            case CELLAR_SLAB_EDGE, STEPPED_FOOTING -> foundation();
            case WALL_THICKNESS_CHANGE -> (this == MASONRY ? FRAME : MASONRY).wall();
            default -> wall();
        };
    }

    private static double angle(JunctionKind kind) {
        return switch (kind) {
            case INSIDE_CORNER, WALL_TO_TERRACE, ROOF_STEP, WALL_UNDER_OVERHANG, TERRACE_THRESHOLD -> 270;
            case DORMER_CHEEK -> 250;
            case EAVES, KNEE_WALL -> 130;
            case RIDGE -> 100;
            case HIP -> 130;
            case VALLEY -> 230;
            case TERRACE_TO_ROOF -> 215;
            case WALL_THICKNESS_CHANGE, UNHEATED_NEIGHBOUR, FOUNDATION_WALL_TOP -> 180;
            default -> 90;
        };
    }

    /** The build-ups by name, in order of first use. */
    public ImmutableList<Assembly> assemblies() {
        return Lists.immutable
                .of(JunctionKind.values())
                .flatCollect(kind -> assembliesOf(setup(kind)))
                .distinct();
    }

    private static ImmutableList<Assembly> assembliesOf(JunctionSetup setup) {
        return setup.second()
                .map(second -> Lists.immutable.of(setup.first(), second))
                .orElse(Lists.immutable.of(setup.first()));
    }

    /** A junction of a kind at 20 °C indoors and -5 °C outdoors. */
    public JunctionSetup setup(JunctionKind kind) {
        KindForm form = KindForm.of(kind);
        Exposure first = switch (kind) {
            case EAVES_COLD_LOFT, GABLE_COLD_LOFT -> new Exposure(Exposure.Kind.UNHEATED, "loft", 0.9);
            case UNHEATED_BELOW_EDGE -> new Exposure(Exposure.Kind.UNHEATED, "cellar", 0.6);
            case CRAWL_SPACE_EDGE -> new Exposure(Exposure.Kind.CRAWL_SPACE, "", 0.8);
            default -> form.ground() ? Exposure.ground() : Exposure.outdoors();
        };
        Exposure second = switch (kind) {
            case PARTY_WALL -> new Exposure(Exposure.Kind.PARTY, "next door", 0);
            case UNHEATED_NEIGHBOUR -> new Exposure(Exposure.Kind.UNHEATED, "garage", 0.8);
            default -> Exposure.outdoors();
        };
        boolean floor = form.floorLines() || kind == JunctionKind.INTERMEDIATE_FLOOR;
        return new JunctionSetup(
                kind,
                first(kind),
                form.twoSurfaces() || form.second() == KindForm.Second.DOOR
                        ? Optional.of(second(kind))
                        : Optional.empty(),
                angle(kind),
                first,
                second,
                form.framed() ? Optional.of(window(form)) : Optional.empty(),
                floor ? 0.25 : 0,
                kind == JunctionKind.PARAPET ? 0.6 : 0,
                form.ground()
                        ? Optional.of(JunctionSetup.GroundBlock.ofStrip(
                                2.0, INNER_WIDTH, second(kind).thickness()))
                        : Optional.empty(),
                20,
                -5);
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
