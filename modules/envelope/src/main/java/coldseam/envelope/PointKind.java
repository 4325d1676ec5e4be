package coldseam.envelope;

import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.collections.api.list.ImmutableList;

/** A kind of thing that goes through a surface's insulation at a point: all that it decides, read from its file. */
public final class PointKind extends BridgeKind {

    private static final ImmutableList<PointKind> ALL =
            KindFile.all("points", KindFile.OfPoint.class).collect(PointKind::new);

    private final KindFile.OfPoint file;

    /** What houses bring in, let out or have outdoors, each through a place of its own; all but the last nearly every one. */
    public enum Service {
        ELECTRICITY,
        WATER,
        WASTE_WATER,
        /** Through the roof, over the pipes for waste water. */
        VENT_OF_WASTE_PIPES,
        VENTILATION,
        LAMP_OUTDOORS,
        TAP_OUTDOORS,
        /** Of houses in which one burns. */
        AIR_FOR_A_FIRE
    }

    private PointKind(KindFile.OfPoint file) {
        super(file);
        this.file = file;
    }

    /** Every kind, in its order. */
    public static ImmutableList<PointKind> all() {
        return ALL;
    }

    /**
     * The kind of this plain name.
     *
     * @throws IllegalArgumentException where there is none
     */
    public static PointKind of(String label) {
        return named(label, ALL, "point");
    }

    /** The build-up it usually goes through, as the file of typical build-ups names it. */
    public String typical() {
        return file.typical();
    }

    /** Which way the surface looks that it usually goes through. */
    public Facing faces() {
        return file.faces().getFirst();
    }

    /** Which ways surfaces look that it may go through. */
    public ImmutableList<Facing> mayFace() {
        return file.faces();
    }

    /** Whether the U of an assembly by ISO 6946 may hold things of this kind already. */
    public boolean countedInU() {
        return file.countedInU();
    }

    /** Whether it bears loads outdoors: something solid stands there on the structure. */
    public boolean carries() {
        return file.carries();
    }

    /** Whether rain leaves a roof or a deck by it. */
    public boolean drains() {
        return file.drains();
    }

    /** What one of this kind may serve, one of them each. */
    public ImmutableList<Service> serves() {
        return file.serves();
    }

    /** What a house with one of this kind needs besides. */
    public Optional<Service> needs() {
        return file.needs();
    }

    /** How many of them hardly any house has more of; empty where some have many. */
    public OptionalInt atMost() {
        return file.atMost();
    }
}
