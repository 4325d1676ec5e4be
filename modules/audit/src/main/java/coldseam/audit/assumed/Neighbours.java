package coldseam.audit.assumed;

import coldseam.envelope.Body;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of the spaces beside the house. Areas are gross, in the site's dimension system. */
public final class Neighbours {

    /**
     * The temperature factor under which an unheated space is warmer than one with three outer walls, a garage or a cellar with
     * windows: 0.8 (tables of EN 12831:2003, from memory). Warmer ones there are, but the file alone says that this is one.
     */
    private static final double USUAL = 0.8;

    /** Beyond this temperature factor a space is hardly closed; one with a roof and doors is warmer (judgement). */
    private static final double OPEN = 0.95;

    /** Surfaces said to face heated neighbours. */
    public static final Assumption<Beside> BESIDE_HEATED = beside(surface -> surface.faces(Exposure.Kind.PARTY));

    /** Those beside spaces said to be unheated and yet warmer than such spaces are. */
    public static final Assumption<Beside> BESIDE_WARM = beside(Neighbours::isWarm);

    /** m², of walls beside unheated spaces, where those are more than half of all; nobody asks them to keep out rain. */
    public static final Assumption<Double> SHELTERED = audit -> {
        double beside = OfHouse.area(audit, surface -> surface.use() == Body.Use.WALL && isUnheated(surface));
        return beside > OfHouse.area(audit, surface -> surface.use() == Body.Use.WALL) / 2
                ? Lists.immutable.of(beside)
                : Lists.immutable.empty();
    };

    /** m², of walls and roofs with nothing against rain beside spaces that are said to be unheated and as cold as outdoors. */
    public static final Assumption<Double> OUT_OF_RAIN = areas(surface -> isUnheated(surface)
            && surface.exposure().factor() > OPEN
            && surface.use() != Body.Use.FLOOR
            && surface.use() != Body.Use.CEILING
            && surface.use() != Body.Use.OVERHANG
            && surface.assembly().filter(it -> it.controls(Control.WATER)).isEmpty());

    private Neighbours() {}

    /**
     * Spaces beside the house.
     *
     * @param area m², of all surfaces beside them
     * @param spaces by name
     */
    public record Beside(double area, ImmutableList<Exposure> spaces) {}

    private static Assumption<Beside> beside(Predicate<Surface> which) {
        return audit -> {
            ImmutableList<Surface> surfaces = OfHouse.surfaces(audit, which);
            return surfaces.isEmpty()
                    ? Lists.immutable.empty()
                    : Lists.immutable.of(new Beside(
                            OfHouse.area(audit, which),
                            surfaces.collect(Surface::exposure)
                                    .distinct()
                                    .toImmutableSortedListBy(Exposure::neighbour)));
        };
    }

    private static Assumption<Double> areas(Predicate<Surface> which) {
        return audit -> OfHouse.over(0, OfHouse.area(audit, which));
    }

    static boolean isUnheated(Surface surface) {
        return surface.faces(Exposure.Kind.UNHEATED);
    }

    private static boolean isWarm(Surface surface) {
        return isUnheated(surface) && surface.exposure().factor() < USUAL;
    }
}
