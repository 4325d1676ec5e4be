package coldseam.junctions.point;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.PointSetup;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
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

    /** Kinds of steel, with the names of the material library. */
    public enum Steel {
        CARBON("steel", "fastener-carbon-steel"),
        STAINLESS("stainless steel", "fastener-stainless-steel");

        private final String material;
        private final String detail;

        Steel(String material, String detail) {
            this.material = material;
            this.detail = detail;
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

    /** The wall it holds. */
    public PointSetup setup() {
        return PointSetup.outdoors(host(), HeatFlow.HORIZONTAL, 20, 0);
    }

    /** The option of the catalogue that is computed. */
    public Detail detail() {
        return CatalogueFile.builtIn().find(steel.detail).orElseThrow();
    }

    private Assembly host() {
        return new Assembly(
                "board on " + base.material, layers(), Optional.empty(), Assembly.AirGaps.NONE, Optional.empty());
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
