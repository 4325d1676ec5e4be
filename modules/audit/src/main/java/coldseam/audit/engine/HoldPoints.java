package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.HoldPoint;
import coldseam.files.Default;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import java.util.Locale;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What must be seen before it is covered, in the order of building.
 *
 * <p>The stops stand in {@code hold-points.yaml}; which of them a bridge belongs to, its kind's file says.
 */
final class HoldPoints {

    /** As it is written. */
    @Noun("hold points")
    record FileHoldPoints(ImmutableList<Named<Stop>> holdPoints) {}

    /**
     * A stop in the order of building.
     *
     * @param always whether it is there in a house without any bridge that belongs to it
     */
    @Noun("a hold point")
    record Stop(String before, @Default("false") boolean always, ImmutableList<String> lookAt) {}

    private static final ImmutableList<Named<Stop>> STOPS = new ResourceFolder("/")
            .read("hold-points.yaml", FileHoldPoints.class, Maps.immutable.empty())
            .holdPoints();

    private HoldPoints() {}

    /** The names of all stops, in order. */
    static ImmutableList<String> names() {
        return STOPS.collect(Named::name);
    }

    /** A point of a list: a capital first, no full stop at the end, wherever it comes from. */
    private static String item(String words) {
        String bare = words.strip().replaceFirst("\\.$", "");
        return bare.substring(0, 1).toUpperCase(Locale.ROOT) + bare.substring(1);
    }

    /** Those that this house has, with the sheets they belong to and what their details ask to be photographed. */
    static ImmutableList<HoldPoint> of(ImmutableList<BridgeSheet<?>> sheets) {
        return STOPS.collect(stop -> {
                    ImmutableList<BridgeSheet<?>> own = sheets.select(
                            sheet -> sheet.result().detail().kind().holdPoints().contains(stop.name()));
                    return new HoldPoint(
                            stop.name(),
                            stop.value().before(),
                            stop.value()
                                    .lookAt()
                                    .newWithAll(own.flatCollect(
                                            sheet -> sheet.result().detail().photographs()))
                                    .collect(HoldPoints::item)
                                    .distinct(),
                            own);
                })
                .zip(STOPS)
                .select(pair ->
                        pair.getTwo().value().always() || pair.getOne().sheets().notEmpty())
                .collect(pair -> pair.getOne());
    }
}
