package coldseam.report.words;

import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.Audit;
import coldseam.envelope.Assembly;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Side;
import coldseam.envelope.shell.Surface;
import coldseam.files.Words;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** The house's areas as they are told: of each surface, and of each window and door. */
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
}
