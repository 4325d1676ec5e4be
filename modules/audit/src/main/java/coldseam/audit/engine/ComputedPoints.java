package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.PointRow;
import coldseam.audit.engine.PlannedBridge.Question;
import coldseam.conduction.Interval;
import coldseam.envelope.House;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The points of a house, computed: a sheet for each different one and a row for each set.
 *
 * @param sheets in the order of their first set
 * @param rows in the house file's order
 */
record ComputedPoints(ImmutableList<BridgeSheet<PointResult>> sheets, ImmutableList<PointRow> rows) {

    /** Computes every set, with its kind's other options beside it. */
    static ComputedPoints of(
            House house,
            ImmutableList<HousePoints> sets,
            Catalogue catalogue,
            BridgeComputer computer,
            Progress progress) {
        ImmutableList<PlannedBridge<PointSetup>> planned = planned(house, sets, catalogue);
        ComputedBridges<PointSetup, PointResult> computed = new ComputedBridges<>(
                "points", house, planned, computer::compute, computer.comparing()::compute, progress);
        return new ComputedPoints(
                computed.sheets(),
                sets.zip(planned).collect(pair -> row(pair.getOne(), pair.getTwo(), catalogue, computed)));
    }

    /** What comes of one question. */
    static PointResult first(Question<PointSetup> question, BridgeComputer computer) {
        return ComputedBridges.first(question, question.compared() ? computer.comparing()::compute : computer::compute);
    }

    /** What is to be computed of each set. */
    static ImmutableList<PlannedBridge<PointSetup>> planned(
            House house, ImmutableList<HousePoints> sets, Catalogue catalogue) {
        return sets.collect(set -> planned(set, house, catalogue));
    }

    /** The kind's options with those of the set's lengths that they have too and allow. */
    private static PlannedBridge<PointSetup> planned(HousePoints set, House house, Catalogue catalogue) {
        ImmutableList<Detail> options = catalogue
                .options(set.kind(catalogue))
                .collect(detail -> detail.withAllowed(set.points().parameters()));
        Optional<Detail> chosen = set.points()
                .detail()
                .map(id -> catalogue.find(id).orElseThrow().with(set.points().parameters()));
        return new PlannedBridge<>(
                set.points().name(),
                Optional.empty(),
                set.number(),
                set.setup(),
                chosen.map(Lists.immutable::of).orElse(options),
                options.select(each -> hindrance(each, set, house).isEmpty()),
                options.select(each -> each.suits().waitsForParts(house.retrofit(), Lists.immutable.of(set.surface()))),
                chosen.flatMap(each -> hindrance(each, set, house))
                        .map(Lists.immutable::of)
                        .orElse(Lists.immutable.empty()),
                chosen.isPresent());
    }

    private static Optional<String> hindrance(Detail detail, HousePoints set, House house) {
        return detail.suits().hindrance(detail.who(), house.retrofit(), Lists.immutable.of(set.surface()));
    }

    private static PointRow row(
            HousePoints set,
            PlannedBridge<PointSetup> planned,
            Catalogue catalogue,
            ComputedBridges<PointSetup, PointResult> computed) {
        Optional<BridgeSheet<PointResult>> sheet = computed.sheet(planned);
        return new PointRow(
                set.points(),
                set.kind(catalogue),
                set.surface(),
                set.number(),
                sheet,
                sheet.map(found -> found.result().chi())
                        .or(() -> computed.range(planned, PointResult::chi))
                        .orElse(Interval.of(0)),
                set.setup()
                        .map(PointSetup::exposure)
                        .orElse(set.surface().exposure())
                        .factor(),
                computed.source(planned),
                computed.misfits(planned));
    }
}
