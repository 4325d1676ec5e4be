package coldseam.junctions;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.WeakestPaths;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/** Build-ups and junctions for tests and for looking at drawings. */
public final class Samples {

    /** Of a coupling from which on a surface temperature is aimed at: about the first solution of any drawing. */
    private static final double WIDEST = 0.1;

    private Samples() {}

    /**
     * Of heat: couplings as exact as asked, and surface temperatures, which take most of a solve's time to aim at, to within a
     * tenth of the difference.
     */
    public static BridgeComputer ofHeat(Accuracy accuracy) {
        return computer(accuracy, 100);
    }

    /** @param wider how many times as wide as usual surface temperatures are: usual is a thousandth of the difference */
    public static BridgeComputer computer(Accuracy accuracy, double wider) {
        return BridgeComputers.computer(
                accuracy,
                (section, asked) -> Conduction.solve(section, wider(asked, wider)),
                (body, asked) -> BodySolver.solve(body, wider(asked, wider)),
                WeakestPaths::of,
                Keeping.NOTHING);
    }

    /** The same with a surface temperature, if one is aimed at, so many times as wide; no coupling is read from what is aimed at one. */
    public static Accuracy wider(Accuracy asked, double wider) {
        return asked.aim()
                .map(aim -> new Accuracy(
                                Math.max(asked.relativeWidth(), Math.min(WIDEST, wider * asked.relativeWidth())),
                                asked.maximumUnknowns())
                        .aimedAt(aim.environment(), wider * aim.kelvin()))
                .orElse(asked);
    }

    public static Material material(String name, double conductivity) {
        return new Material(
                name,
                conductivity,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                conductivity <= Material.INSULATES_UP_TO,
                new Provenance("sample", Provenance.Sureness.DECLARED));
    }

    public static Layer layer(String name, double conductivity, double millimetres, Role role) {
        return new Layer(
                material(name, conductivity),
                millimetres / 1000,
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
    }

    /** A junction at a floor of joists. */
    public static JunctionSetup atJoists(JunctionSetup of) {
        return new JunctionSetup(
                of.kind(),
                of.first(),
                of.second(),
                of.angle(),
                of.innerStep(),
                of.firstExposure(),
                of.secondExposure(),
                of.opening(),
                of.floorThickness(),
                of.floorRise(),
                true,
                of.upstand(),
                of.sill(),
                of.ground(),
                of.indoorTemperature(),
                of.outdoorTemperature(),
                of.firstUse(),
                of.materials());
    }

    /** A junction that a detail is drawn for. */
    public static JunctionSetup setup(Detail detail) {
        return TypicalSetups.usual(detail) ? setup(detail.junction()) : TypicalBuild.MASONRY.setup(detail);
    }

    /** Of a built-in material. */
    public static Layer layer(String material, double millimetres, Role role, Control... controls) {
        return new Layer(
                MaterialLibrary.named(material).orElseThrow(),
                millimetres / 1000,
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.of(controls));
    }

    public static Assembly assembly(String name, Layer... layers) {
        return new Assembly(
                name, Lists.immutable.with(layers), Optional.empty(), Assembly.AirGaps.NONE, Optional.empty());
    }

    static Assembly wall() {
        return assembly(
                "brick wall with boards outside",
                layer("plaster", 0.57, 15, Role.FINISH),
                layer("brick", 0.77, 215, Role.STRUCTURE),
                layer("mineral wool board", 0.036, 160, Role.INSULATION),
                layer("render", 1.0, 10, Role.CLADDING));
    }

    public static Assembly roof() {
        return assembly(
                "roof with boards over the deck",
                layer("plasterboard", 0.25, 12.5, Role.FINISH),
                layer("timber deck", 0.13, 100, Role.STRUCTURE),
                layer("rigid foam board", 0.026, 180, Role.INSULATION),
                layer("membrane cover board", 0.13, 20, Role.CLADDING));
    }

    static Assembly deck() {
        return assembly(
                "terrace deck",
                layer("plasterboard", 0.25, 12.5, Role.FINISH),
                layer("reinforced concrete", 2.3, 160, Role.STRUCTURE),
                layer("rigid foam board", 0.026, 160, Role.INSULATION),
                layer("paving on pads", 1.5, 40, Role.CLADDING));
    }

    static Assembly floor() {
        return assembly(
                "slab",
                layer("screed", 1.4, 60, Role.FINISH),
                layer("reinforced concrete", 2.3, 150, Role.STRUCTURE),
                layer("extruded foam board", 0.036, 160, Role.INSULATION));
    }

    static Assembly ceiling() {
        return assembly(
                "top ceiling",
                layer("plasterboard", 0.25, 12.5, Role.FINISH),
                layer("timber boarding", 0.13, 25, Role.STRUCTURE),
                layer("cellulose", 0.039, 300, Role.INSULATION));
    }

    public static JunctionSetup setup(JunctionKind kind) {
        KindForm form = kind.form();
        Assembly first = switch (kind.first()) {
            case "roof" -> roof();
            case "deck" -> deck();
            case "floor" -> floor();
            case "ceiling" -> ceiling();
            default -> wall();
        };
        Assembly second = switch (kind.second()) {
            case "roof", "other roof" -> roof();
            case "party wall", "party floor" ->
                assembly(
                        "party wall",
                        layer("plaster", 0.57, 15, Role.FINISH),
                        layer("brick", 0.77, 215, Role.STRUCTURE));
            default -> wall();
        };
        JunctionSetup typical = TypicalBuild.MASONRY.setup(kind);
        return new JunctionSetup(
                kind,
                kind == JunctionKind.BALLOON_FRAME_AT_FLOOR
                                || kind.first().equals("wall")
                                        && typical.first().insulatedInside()
                        ? typical.first()
                        : first,
                form.twoBuildUps() ? Optional.of(second) : Optional.empty(),
                typical.angle(),
                typical.firstExposure(),
                typical.secondExposure(),
                form.framed() ? Optional.of(window()) : Optional.empty(),
                typical.floorThickness(),
                typical.upstand(),
                form.ground()
                        ? Optional.of(JunctionSetup.GroundBlock.ofStrip(2.0, 8, second.thickness()))
                        : Optional.empty(),
                typical.indoorTemperature(),
                typical.outdoorTemperature());
    }

    /** The same junction in a framed house: studs and rafters with wool between, boards outside, a ventilated cladding. */
    public static JunctionSetup framedSetup(JunctionKind kind) {
        JunctionSetup masonry = setup(kind);
        return masonry.between(framed(kind.first()), masonry.second().map(each -> framed(kind.second())));
    }

    private static Assembly framed(String band) {
        return switch (band) {
            case "floor" ->
                assembly(
                        "slab",
                        layer("reinforced concrete", 2.3, 100, Role.STRUCTURE),
                        layer("foam board", 0.036, 50, Role.INSULATION));
            case "roof", "other roof", "deck" ->
                assembly(
                        "rafters",
                        layer("gypsum board", 0.25, 12.7, Role.FINISH),
                        studs(184),
                        layer("sheathing", 0.13, 16, Role.STRUCTURE),
                        layer("airtight membrane", 0.3, 0.5, Role.MEMBRANE),
                        layer("foam board", 0.024, 102, Role.INSULATION),
                        layer("sheathing", 0.13, 16, Role.CLADDING),
                        layer("shingles", 0.3, 6, Role.CLADDING));
            case "ceiling" ->
                assembly(
                        "ceiling",
                        layer("gypsum board", 0.25, 12.7, Role.FINISH),
                        layer("loose wool", 0.042, 400, Role.INSULATION));
            default ->
                assembly(
                        "studs",
                        layer("gypsum board", 0.25, 12.7, Role.FINISH),
                        studs(140),
                        layer("sheathing", 0.13, 11, Role.STRUCTURE),
                        layer("airtight membrane", 0.3, 0.3, Role.MEMBRANE),
                        layer("foam board", 0.024, 76, Role.INSULATION),
                        cavity(19),
                        layer("boards", 0.13, 19, Role.CLADDING));
        };
    }

    private static Layer studs(double millimetres) {
        return new Layer(
                material("mineral wool batt", 0.038),
                millimetres / 1000,
                Role.STRUCTURE,
                Optional.of(new Layer.Framing(material("softwood", 0.13), 0.2)),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
    }

    private static Layer cavity(double millimetres) {
        return new Layer(
                material("air", 0.025),
                millimetres / 1000,
                Role.AIR_LAYER,
                Optional.empty(),
                Optional.of(new Layer.AirLayer(Layer.Ventilation.WELL_VENTILATED, 0, 0.9)),
                Optional.empty(),
                Sets.immutable.empty());
    }

    static Opening window() {
        return new Opening(
                "window",
                Opening.Kind.WINDOW,
                "south wall",
                1.2,
                1.4,
                OptionalDouble.empty(),
                0.9,
                new Opening.Declared(0.9, 1.0),
                0.09,
                OptionalDouble.empty());
    }
}
