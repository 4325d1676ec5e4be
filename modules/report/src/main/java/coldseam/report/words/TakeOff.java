package coldseam.report.words;

import coldseam.assemblies.TaperedLayers;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.Audit;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Role;
import coldseam.envelope.shell.Side;
import coldseam.envelope.shell.Surface;
import coldseam.files.Words;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The house's areas as they are told: of each surface, of each window and door, and of each material that is brought. */
public final class TakeOff {

    private TakeOff() {}

    /**
     * A surface, measured to the faces of the site's dimension system.
     *
     * @param surface that is measured
     * @param gross m², openings counted in
     * @param other m², the same in the other dimension system
     */
    public record OfSurface(Surface surface, double gross, double other) {

        /** m², openings taken off. */
        public double net() {
            return gross - surface.openingArea();
        }

        /** The name of its assembly; empty where nothing closes the envelope. */
        public String builtAs() {
            return surface.assembly().map(Assembly::name).orElse("");
        }

        /** What it faces, a neighbour by its name. */
        public String faces() {
            Exposure exposure = surface.exposure();
            return exposure.neighbour().isEmpty() ? Words.word(exposure.kind()) : exposure.neighbour();
        }
    }

    /**
     * A window or door.
     *
     * @param opening that is measured
     * @param surface it lies in; empty where that is missing
     */
    public record OfOpening(Opening opening, Optional<Surface> surface) {

        /** The name of the surface it lies in, as the table of surfaces has it, which may join a wall and the gable over it. */
        public String in() {
            return surface.map(Surface::name).orElse(opening.surface());
        }

        /** m², by the outer size of its frame. */
        public double area() {
            return opening.width() * opening.height();
        }

        /** W/(m²·K), of the whole. */
        public double transmittance() {
            return WindowTransmittance.transmittance(opening);
        }

        /** The side of the house that its surface faces; empty where that is missing. */
        public String side(Audit audit) {
            return surface.map(in -> audit.shell().nameOf(in.side())).orElse("");
        }
    }

    /**
     * What is brought of one material in one thickness.
     *
     * @param material by its name
     * @param thickness m; of a layer cut to falls the mean
     * @param falls whether it is cut to falls
     * @param least m² that it covers, windows and doors taken off
     * @param area m², where it may end at the walls' inner faces or run on to their outer ones
     * @param assemblies that it is of
     */
    public record OfMaterial(
            String material,
            double thickness,
            boolean falls,
            double least,
            double area,
            ImmutableList<String> assemblies) {

        /** m³ of the larger area. */
        public double volume() {
            return area * thickness;
        }

        private boolean isLike(OfMaterial other) {
            return material.equals(other.material) && thickness == other.thickness && falls == other.falls;
        }

        private static OfMaterial together(ImmutableList<OfMaterial> alike) {
            OfMaterial first = alike.getFirst();
            return new OfMaterial(
                    first.material,
                    first.thickness,
                    first.falls,
                    alike.sumOfDouble(OfMaterial::least),
                    alike.sumOfDouble(OfMaterial::area),
                    alike.flatCollect(OfMaterial::assemblies).distinct());
        }
    }

    /** Every surface, side by side. */
    public static ImmutableList<OfSurface> surfaces(Audit audit) {
        boolean external = audit.heatLoss().system() == DimensionSystem.EXTERNAL;
        return audit.shell()
                .surfaces()
                .toSortedListBy(surface -> surface.side().ordinal())
                .collect(surface -> new OfSurface(
                        surface,
                        external ? surface.externalArea() : surface.internalArea(),
                        external ? surface.internalArea() : surface.externalArea()))
                .toImmutable();
    }

    /** Every surface of one side. */
    public static ImmutableList<OfSurface> surfaces(Audit audit, Side side) {
        return surfaces(audit).select(each -> each.surface().side() == side);
    }

    /** Every window and door, as the house file lists them. */
    public static ImmutableList<OfOpening> openings(Audit audit) {
        return audit.house()
                .openings()
                .collect(opening -> new OfOpening(
                        opening, audit.shell().surfaces().detectOptional(surface -> surface.holds(opening))));
    }

    /** The layers that are brought, and members in them, each material and thickness once, in the order in which each first comes. */
    public static ImmutableList<OfMaterial> materials(Audit audit) {
        ImmutableList<OfMaterial> parts = audit.shell().surfaces().flatCollect(surface -> parts(audit, surface));
        return parts.distinctBy(part -> Lists.immutable.of(part.material(), part.thickness(), part.falls()))
                .collect(first -> OfMaterial.together(parts.select(first::isLike)));
    }

    private static ImmutableList<OfMaterial> parts(Audit audit, Surface surface) {
        Optional<Retrofit> old = audit.house().retrofit().filter(surface::staysIn);
        return Lists.immutable
                .fromStream(surface.assembly().stream())
                .flatCollect(assembly -> assembly.layers()
                        .reject(layer -> layer.air().isPresent()
                                || old.filter(each -> isThere(layer, assembly, each))
                                        .isPresent())
                        .flatCollect(layer -> parts(layer, assembly, surface, old.isPresent())));
    }

    /** Whether it carries without fill between members, or is a layer of the build-up as found; what fills a cavity may be new. */
    private static boolean isThere(Layer layer, Assembly assembly, Retrofit old) {
        boolean carries = layer.role() == Role.STRUCTURE && layer.framing().isEmpty() && !layer.fillsCavity();
        return carries
                || old.found()
                        .flatMap(found -> Optional.ofNullable(found.assemblies().get(assembly.name())))
                        .filter(was -> was.layers()
                                .anySatisfy(there -> there.material()
                                                .name()
                                                .equals(layer.material().name())
                                        && there.thickness() == layer.thickness()))
                        .isPresent();
    }

    /** A layer, and its members but where those stay. */
    private static ImmutableList<OfMaterial> parts(Layer layer, Assembly assembly, Surface surface, boolean stays) {
        double share = layer.framing().map(Layer.Framing::share).orElse(0.0);
        OfMaterial fill = part(layer.material(), layer, assembly, surface, 1 - share);
        return layer.framing()
                .filter(framing -> !(stays && layer.role() == Role.STRUCTURE))
                .map(framing -> Lists.immutable.of(fill, part(framing.material(), layer, assembly, surface, share)))
                .orElseGet(() -> Lists.immutable.of(fill));
    }

    /** What lies inside of what carries ends at the inner faces, what lies outside of it at the outer; a floor may end at either. */
    private static OfMaterial part(Material material, Layer layer, Assembly assembly, Surface surface, double share) {
        double inner = share * Math.max(0, surface.internalArea() - surface.openingArea());
        double outer = share * surface.netArea();
        ImmutableList<Layer> layers = assembly.layers();
        int at = layers.detectIndex(each -> each == layer);
        boolean inside = at < layers.detectIndex(each -> each.role() == Role.STRUCTURE);
        boolean outside =
                at > layers.detectLastIndex(each -> each.role() == Role.STRUCTURE) && surface.use() != Body.Use.FLOOR;
        return new OfMaterial(
                material.name(),
                TaperedLayers.meanThickness(layer),
                layer.taper().isPresent(),
                outside ? outer : inner,
                inside ? inner : outer,
                Lists.immutable.of(assembly.name()));
    }
}
