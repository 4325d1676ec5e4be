package coldseam.junctions.plan;

import coldseam.conduction.Polygon;
import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A section as it is drawn: kept from where it was composed, for whoever draws it or follows a layer through it. Of most options
 * nobody asks it, so one that was kept is unpacked when it is asked for.
 */
public final class SectionPlan {

    private Supplier<Drawn> drawing;
    private Drawn drawn;

    private SectionPlan(Supplier<Drawn> drawing) {
        this.drawing = drawing;
    }

    /** The plan of pieces. */
    public static SectionPlan of(
            ImmutableList<Piece> pieces, ImmutableList<Fill> fills, ImmutableList<SectionEnd> ends) {
        Drawn drawn = new Drawn(pieces, fills, PlanarSubdivision.of(pieces.collect(Piece::outline)), ends);
        return later(() -> drawn);
    }

    /** A plan that is asked for once, when somebody asks for it. */
    public static SectionPlan later(Supplier<Drawn> drawing) {
        return new SectionPlan(drawing);
    }

    /**
     * All of it.
     *
     * @param pieces in painting order
     * @param fills what the regions of the section that is solved are, in their order
     * @param seen of their outlines
     * @param ends where the section stops and the house goes on
     */
    public record Drawn(
            ImmutableList<Piece> pieces,
            ImmutableList<Fill> fills,
            PlanarSubdivision seen,
            ImmutableList<SectionEnd> ends) {}

    /** All of it at once. */
    public synchronized Drawn drawn() {
        if (drawn == null) {
            drawn = drawing.get();
            drawing = null;
        }
        return drawn;
    }

    /** In painting order. */
    public ImmutableList<Piece> pieces() {
        return drawn().pieces();
    }

    /** What the regions of the section that is solved are, in their order. */
    public ImmutableList<Fill> fills() {
        return drawn().fills();
    }

    /** What is seen of their outlines. */
    public PlanarSubdivision seen() {
        return drawn().seen();
    }

    /** Where the section stops and the house goes on. */
    public ImmutableList<SectionEnd> ends() {
        return drawn().ends();
    }

    /**
     * What a region that is solved is.
     *
     * @param origin what it was painted for
     */
    public record Fill(Material material, Origin origin) {

        /** What its conductivity follows. */
        public HeatInput input() {
            if (origin instanceof Origin.OfLayer of) {
                return HeatInput.of(of.layer());
            }
            if (origin instanceof Origin.OfDetail of && of.like().isPresent()) {
                return HeatInput.of(of.like().get());
            }
            if (origin instanceof Origin.OfFrame) {
                return HeatInput.Other.FRAMES;
            }
            return origin instanceof Origin.OfGround ? HeatInput.Other.GROUND : HeatInput.of(material);
        }
    }

    /**
     * One painted piece of the section.
     *
     * @param outline in the section's plane, m
     * @param solved whether it takes part in the conduction; false for what lies outside a ventilated cavity
     * @param origin what it was painted for
     */
    public record Piece(Polygon outline, Material material, Role role, boolean solved, Origin origin) {

        /** What it is, wherever it lies. */
        public Fill fill() {
            return new Fill(material, origin);
        }

        /** The name that the detail gives it; empty of layers, frames and the ground. */
        public String own() {
            return origin instanceof Origin.OfDetail of
                    ? of.what()
                    : origin instanceof Origin.OfStrip strip ? strip.what() : "";
        }
    }

    /** Where a layer lies in respect of its surface's thickest run of insulation. */
    public enum Zone {
        /** Towards the rooms. */
        INSIDE,
        /** In the insulation, or in a surface that has none. */
        WITHIN,
        /** Away from the rooms. */
        OUTSIDE;

        /** Whether the insulation lies between the two. */
        public boolean opposite(Zone other) {
            return this != WITHIN && other != WITHIN && this != other;
        }
    }

    /** What a piece was painted for. */
    public sealed interface Origin {

        /**
         * A surface's layer.
         *
         * @param first whether it is the kind's first surface
         * @param index from the inside, from 0 on
         * @param layer as the house has it
         * @param zone of the surface's insulation on which it lies
         */
        record OfLayer(boolean first, int index, Layer layer, Zone zone) implements Origin {}

        /**
         * Something of the detail's own, by its name.
         *
         * @param like layer as which it is built, where it says so
         */
        record OfDetail(String what, Optional<Layer> like) implements Origin {

            /** Of a material of its own. */
            public OfDetail(String what) {
                this(what, Optional.empty());
            }
        }

        /**
         * A strip of the detail's own that carries control layers.
         *
         * @param carries what it is joined up to control
         */
        record OfStrip(String what, ImmutableSet<Control> carries) implements Origin {}

        /** The window's or door's frame. */
        record OfFrame() implements Origin {}

        record OfGround() implements Origin {}

        /** A region of a drawing by hand. */
        record ByHand(String material) implements Origin {}
    }
}
