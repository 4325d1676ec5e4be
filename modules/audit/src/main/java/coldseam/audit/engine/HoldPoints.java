package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.HoldPoint;
import coldseam.envelope.Assembly;
import coldseam.envelope.Role;
import coldseam.envelope.Stop;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

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

    /** Those that this house has, with the sheets they belong to and what their details and corners' own ask to be photographed. */
    static ImmutableList<HoldPoint> of(ImmutableList<BridgeSheet<?>> sheets, ImmutableList<Detail> corners) {
        return Stop.all()
                .collect(stop -> of(
                        stop,
                        sheets.select(sheet -> belongs(stop, sheet.result().detail())),
                        corners))
                .zip(Stop.all())
                .select(pair -> pair.getTwo().always() || pair.getOne().sheets().notEmpty())
                .collect(pair -> pair.getOne());
    }

    private static HoldPoint of(Stop stop, ImmutableList<BridgeSheet<?>> own, ImmutableList<Detail> corners) {
        ImmutableList<String> lookAt = stop.lookAt(own.anySatisfy(HoldPoints::inTwoLayers))
                .newWithAll(own.flatCollect(
                        sheet -> photographs(stop, sheet.result().detail())))
                .newWithAll(corners.flatCollect(detail -> photographs(stop, detail)))
                .collect(HoldPoints::item)
                .distinct();
        return new HoldPoint(stop.label(), stop.before(), lookAt, own);
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

    private static boolean inTwoLayers(BridgeSheet<?> sheet) {
        return sheet.junction()
                .map(result -> result.setup())
                .map(HoldPoints::assemblies)
                .orElse(Lists.immutable.empty())
                .anySatisfy(assembly -> assembly.layers().count(layer -> layer.role() == Role.INSULATION) > 1);
    }

    private static ImmutableList<Assembly> assemblies(JunctionSetup setup) {
        return Lists.immutable
                .of(setup.first())
                .newWithAll(setup.second().stream().toList());
    }
}
