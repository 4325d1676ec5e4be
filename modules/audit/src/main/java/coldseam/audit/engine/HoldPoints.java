package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.HoldPoint;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.Stop;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import java.util.LinkedHashMap;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.map.mutable.MapAdapter;

/**
 * What must be seen before it is covered, in the order of building.
 *
 * <p>A bridge belongs to the stops of its kind, and to those that its detail's photographs name.
 */
final class HoldPoints {

    private HoldPoints() {}

    /** A point of a list: a capital first, no full stop at the end, wherever it comes from. */
    private static String item(String words) {
        String bare = words.strip().replaceFirst("\\.$", "");
        return bare.substring(0, 1).toUpperCase(Locale.ROOT) + bare.substring(1);
    }

    /**
     * Those that this house has, with the sheets they belong to and what their details and corners' own ask to be photographed.
     *
     * @param old whether something of an old house stays
     */
    static ImmutableList<HoldPoint> of(
            ImmutableList<BridgeSheet<?>> sheets, ImmutableList<Detail> corners, boolean old) {
        ImmutableList<Stop> stops = Stop.all().reject(stop -> stop.oldOnly() && !old);
        return stops.collect(stop -> of(
                        stop,
                        sheets.select(sheet -> belongs(stop, sheet.result().detail())),
                        corners))
                .zip(stops)
                .select(pair -> pair.getTwo().always() || pair.getOne().sheets().notEmpty())
                .collect(pair -> pair.getOne());
    }

    private static HoldPoint of(Stop stop, ImmutableList<BridgeSheet<?>> own, ImmutableList<Detail> corners) {
        MutableMap<String, MutableList<BridgeSheet<?>>> items = MapAdapter.adapt(new LinkedHashMap<>());
        stop.lookAt().forEach(words -> items.getIfAbsentPut(item(words), Lists.mutable::empty));
        own.flatCollect(sheet -> inTwoLayers(stop, sheet))
                .forEach(words -> items.getIfAbsentPut(item(words), Lists.mutable::empty));
        own.forEach(sheet -> photographs(stop, sheet.result().detail())
                .forEach(words ->
                        items.getIfAbsentPut(item(words), Lists.mutable::empty).add(sheet)));
        corners.flatCollect(detail -> photographs(stop, detail))
                .forEach(words -> items.getIfAbsentPut(item(words), Lists.mutable::empty));
        return new HoldPoint(
                stop.label(),
                stop.before(),
                items.keyValuesView()
                        .collect(pair ->
                                new HoldPoint.Item(pair.getOne(), pair.getTwo().toImmutable()))
                        .toImmutableList(),
                own);
    }

    private static boolean belongs(Stop stop, Detail detail) {
        return detail.kind().holdPoints().contains(stop)
                || detail.photographs()
                        .anySatisfy(each -> each.stop().filter(stop::equals).isPresent());
    }

    /** What a detail asks to be photographed at a stop; what names none, at every one of its kind. */
    private static ImmutableList<String> photographs(Stop stop, Detail detail) {
        return detail.photographs()
                .select(each -> each.stop()
                        .map(stop::equals)
                        .orElseGet(() -> detail.kind().holdPoints().contains(stop)))
                .collect(Photograph::shows);
    }

    /** What its surfaces' boards ask for at a stop: of each surface for itself, since a wall's say nothing of the floor's. */
    private static ImmutableList<String> inTwoLayers(Stop stop, BridgeSheet<?> sheet) {
        return sheet.junction()
                .map(JunctionResult::setup)
                .map(setup -> setup.assemblies()
                        .zip(setup.kind().faces())
                        .select(pair -> inTwoLayers(pair.getOne()))
                        .flatCollect(pair -> stop.lookAtInTwoLayers(pair.getTwo())))
                .orElse(Lists.immutable.empty());
    }

    /** Whether one board lies right on another, or with a membrane between. */
    private static boolean inTwoLayers(Assembly assembly) {
        ImmutableList<Role> roles = assembly.layers().collect(Layer::role).reject(role -> role == Role.MEMBRANE);
        return roles.zip(roles.drop(1))
                .anySatisfy(pair -> pair.getOne() == Role.INSULATION && pair.getTwo() == Role.INSULATION);
    }
}
