package coldseam.junctions.points;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/**
 * A screw with a plate that holds a board against what carries it.
 *
 * <p>The shaft is a plain rod, so its thread counts as nothing; the head is a round plate on the board, under the render.
 *
 * @param steel of shaft and plate
 * @param base what it is screwed into
 * @param board thickness, m
 */
public record Fastener(Steel steel, Base base, double board) {

    /** m; common practice, no source. */
    public static final double SHAFT = 0.006;

    /** m, into the base; common practice, no source. */
    public static final double EMBEDDED = 0.050;

    /** m, diameter of the plate; common practice, no source. */
    public static final double PLATE = 0.040;

    /** m, radius: a disc of 1 m². */
    public static final double DISC = 0.5642;

    private static final double PLATE_THICKNESS = 0.002;

    /** Kinds of steel, with the names of the material library. */
    public enum Steel {
        CARBON("steel"),
        STAINLESS("stainless steel");

        private final String material;

        Steel(String material) {
            this.material = material;
        }

        Material material() {
            return named(material);
        }
    }

    /** What carries the board; a stud behind it counts as solid timber. */
    public enum Base {
        WOOD("cross-laminated timber", 0.100),
        MASONRY("clay brick", 0.240);

        private final String material;
        private final double thickness;

        Base(String material, double thickness) {
            this.material = material;
            this.thickness = thickness;
        }
    }

    private static Material named(String material) {
        return MaterialLibrary.named(material).orElseThrow();
    }

    private static Layer layer(String material, double thickness, Role role) {
        return new Layer(
                named(material),
                thickness,
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
    }

    private ImmutableList<Layer> layers() {
        MutableList<Layer> layers = Lists.mutable.of(
                layer(base == Base.WOOD ? "gypsum plasterboard" : "gypsum plaster", 0.0125, Role.FINISH),
                layer(base.material, base.thickness, Role.STRUCTURE));
        layers.add(layer("mineral wool board", board, Role.INSULATION));
        layers.add(layer("thin-coat render", 0.010, Role.CLADDING));
        return layers.toImmutable();
    }

    /** The section that is solved. */
    public PointSection section() {
        ImmutableList<Layer> layers = layers();
        double face = layers.take(2).sumOfDouble(Layer::thickness);
        Material metal = steel.material();
        return new PointSection(
                "screw through board",
                layers.collect(layer -> new PointSection.Sheet(
                        layer.material().name(), layer.material().conductivity(), layer.thickness())),
                Lists.immutable.of(
                        new PointSection.Body(
                                metal.name(), metal.conductivity(), 0, SHAFT / 2, face - EMBEDDED, face + board),
                        new PointSection.Body(
                                metal.name(),
                                metal.conductivity(),
                                0,
                                PLATE / 2,
                                face + board,
                                face + board + PLATE_THICKNESS)),
                HeatFlow.HORIZONTAL.interiorSurfaceResistance(),
                OuterSurface.OUTDOORS.resistance(HeatFlow.HORIZONTAL),
                DISC);
    }

    /** What ISO 6946:2017 annex F (from memory) adds to U for one such fastener in a square metre: W/K each. */
    public double correction() {
        Assembly assembly = new Assembly(
                "board with one fastener",
                layers(),
                Optional.of(new Assembly.Fasteners(steel.material(), SHAFT, 1, 0)),
                Assembly.AirGaps.NONE,
                Optional.empty());
        return Transmittance.of(assembly, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS)
                .corrections()
                .fasteners();
    }

    /** Carbon and stainless steel into wood and masonry through 1 to 12 in of board. */
    public static ImmutableList<Fastener> table() {
        double inch = 0.0254;
        MutableList<Fastener> all = Lists.mutable.empty();
        for (Base base : Base.values()) {
            for (Steel steel : Steel.values()) {
                for (int inches : new int[] {1, 2, 3, 4, 6, 8, 10, 12}) {
                    all.add(new Fastener(steel, base, inches * inch));
                }
            }
        }
        return all.toImmutable();
    }
}
