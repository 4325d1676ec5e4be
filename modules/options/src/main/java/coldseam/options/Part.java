package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSource;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.envelope.Alternatives.Price;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What a decision is about in one house: its rows, its size and its cost there.
 *
 * @param decision which
 */
record Part(Decision decision, Audit audit) {

    /** Junctions or points that are decided; none of a build-up or an opening. */
    ImmutableList<BridgeRow> rows() {
        return decision.about()
                .<ImmutableList<BridgeRow>>match(
                        junctions -> Lists.immutable.ofAll(
                                audit.junctions().select(row -> row.edge().isMeantBy(junctions.which()))),
                        assembly -> Lists.immutable.empty(),
                        openings -> Lists.immutable.empty(),
                        set -> Lists.immutable.ofAll(
                                audit.points().select(row -> row.name().equals(set.points()))));
    }

    /** The worst of the rows; of a build-up or an opening that of the seams that it meets. */
    Optional<Worst> worst() {
        return decision.about()
                .match(
                        junctions -> Worst.of(rows()),
                        assembly -> Worst.of(audit.junctions()
                                .select(row ->
                                        row.surfaces().anySatisfy(surface -> surface.isBuiltAs(assembly.assembly())))),
                        openings -> Worst.of(audit.junctions()
                                .select(row -> row.edge()
                                        .opening()
                                        .filter(opening -> openings.openings().contains(opening.name()))
                                        .isPresent())),
                        set -> Worst.of(rows()));
    }

    /** m of junction, m² of surface or opening, or how many points. */
    double size() {
        return decision.about()
                .match(
                        junctions -> rows().sumOfDouble(BridgeRow::size),
                        assembly -> audit.heatLoss().lines().sumOfDouble(line -> isOf(line, assembly.assembly())),
                        openings -> audit.house()
                                .openings()
                                .select(each -> openings.openings().contains(each.name()))
                                .sumOfDouble(each -> each.width() * each.height()),
                        set -> rows().sumOfDouble(BridgeRow::size));
    }

    private static double isOf(HeatLoss.Line line, String assembly) {
        return line.part() instanceof HeatLoss.Part.OfSurface of && of.surface().isBuiltAs(assembly) ? line.size() : 0;
    }

    /** What is built by an option in this house, in the house's currency; empty where it is not known. */
    OptionalDouble cost(Option option) {
        return option.cost()
                .map(price -> OptionalDouble.of(price.amount() * size()))
                .orElseGet(this::costOfDetails);
    }

    /**
     * What is described; nothing where only the options have a cost, which then are extra costs.
     *
     * @param option against which it is held
     */
    OptionalDouble describedCost(Option option) {
        if (decision.described().isPresent()) {
            return OptionalDouble.of(decision.described().map(Price::amount).orElseThrow() * size());
        }
        return option.cost().isPresent() ? OptionalDouble.of(0) : costOfDetails();
    }

    /** By the prices of the details themselves, which the house file or the details' own files give. */
    private OptionalDouble costOfDetails() {
        double sum = 0;
        for (BridgeRow row : rows()) {
            OptionalDouble each = row.sheet()
                    .flatMap(sheet -> sheet.result().detail().cost())
                    .filter(cost -> !cost.currency().isEmpty())
                    .map(cost -> OptionalDouble.of(cost.amount() * row.size()))
                    .orElse(OptionalDouble.empty());
            if (each.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += each.getAsDouble();
        }
        return rows().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }

    /** Why something of a house could not be computed that could in another. */
    static ImmutableList<Phrase> misfits(ImmutableList<BridgeRow> rows, Audit other) {
        return rows.select(row -> row.source() instanceof BridgeSource.None)
                .reject(row -> other.bridges()
                        .anySatisfy(was -> was.name().equals(row.name()) && was.source() instanceof BridgeSource.None))
                .flatCollect(row -> row.misfits().isEmpty()
                        ? Lists.immutable.of(Phrase.of(row.kindLabel() + ": no detail for it"))
                        : row.misfits())
                .distinct();
    }

    /** Whether a row is decided by one of these. */
    static boolean decides(ImmutableList<Decision> decisions, BridgeRow row) {
        return decisions.anySatisfy(decision -> decision.about()
                .match(
                        junctions -> row instanceof JunctionRow junction
                                && junction.edge().isMeantBy(junctions.which()),
                        assembly -> false,
                        openings -> false,
                        set -> row instanceof PointRow points && points.name().equals(set.points())));
    }
}
