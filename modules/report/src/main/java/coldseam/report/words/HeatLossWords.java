package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.HeatLoss.Part;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.engine.Unknown;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.Opening;
import coldseam.envelope.Site;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** What the lines of the heat-loss table are called, and what its sums are of. */
public final class HeatLossWords {

    /** Where something has none, so that a sum is no bound of the house's. */
    static final String PART = "of what has a value";

    private HeatLossWords() {}

    /** What load and yearly loss are made of: who sizes a heater must see that air is not in it. */
    public static String of(Audit audit) {
        return (audit.heatLoss().ventilation().isPresent()
                        ? "transmission and ventilation"
                        : "transmission alone (no ventilation given)")
                + (Unknown.of(audit).none() ? "" : ", " + PART);
    }

    /** What a year takes by degree days, gains left out, as people read an interval; empty without degree days. */
    public static Optional<String> year(Audit audit, Print print) {
        HeatLoss loss = audit.heatLoss();
        Interval rate = loss.total().plus(loss.ventilation().orElse(0));
        Site site = audit.house().site();
        OptionalDouble least = site.yearly(rate.lower());
        OptionalDouble most = site.yearly(rate.upper());
        return least.isPresent() && most.isPresent()
                ? Optional.of(print.of(new Interval(least.getAsDouble(), most.getAsDouble()), Dimension.ENERGY))
                : Optional.empty();
    }

    /**
     * The name of a line.
     *
     * @param all lines of its table, among which it must be told apart
     */
    public static String name(Part part, HeatLoss all) {
        return part.match(
                plane -> plane.surface().name(),
                window -> window.opening().name(),
                junction -> name(junction.edges().getFirst()) + apart(junction, all),
                pairs -> PairWords.name(pairs.sheet()),
                points -> name(points.points()),
                vertices -> VertexWords.name(vertices.sheet()));
    }

    /** What tells a junction from those of the same kind and detail: its build-ups, else its windows or its place. */
    private static String apart(Part.OfJunction junction, HeatLoss all) {
        ImmutableList<Part.OfJunction> alike = all.lines()
                .collect(HeatLoss.Line::part)
                .selectInstancesOf(Part.OfJunction.class)
                .select(other -> builtAs(other).equals(builtAs(junction)));
        if (alike.size() == 1) {
            return "";
        }
        boolean byLayers = alike.collect(HeatLossWords::layers).distinct().size() == alike.size();
        return ", " + (byLayers ? layers(junction) : places(junction));
    }

    /** The start of its name without the sheet's number. */
    private static String builtAs(Part.OfJunction junction) {
        JunctionRow row = junction.edges().getFirst();
        return row.sheet()
                .map(sheet -> name(row).replaceFirst(sheet.id() + " ", ""))
                .orElseGet(() -> name(row));
    }

    private static String layers(Part.OfJunction junction) {
        return Phrases.listed(junction.edges()
                .getFirst()
                .surfaces()
                .flatCollect(surface -> surface.assembly().stream().toList())
                .collect(Assembly::name)
                .distinct());
    }

    /** Its windows and doors, or its first place and how many more there are. */
    private static String places(Part.OfJunction junction) {
        ImmutableList<String> openings = junction.edges()
                .flatCollect(row -> row.edge().opening().stream().toList())
                .collect(Opening::name)
                .distinct();
        int more = junction.edges().size() - 1;
        return openings.notEmpty()
                ? Phrases.listed(openings)
                : junction.edges().getFirst().edge().place() + (more == 0 ? "" : " and " + more + " more");
    }

    private static String name(JunctionRow row) {
        String kind = row.edge().kind().label();
        String detail = row.sheet()
                .map(sheet ->
                        sheet.id() + " " + kind + ": " + sheet.result().detail().name())
                .orElse(kind);
        return row.source()
                .match(
                        computed -> detail,
                        standIn -> detail + ", not chosen",
                        own -> kind + ": own psi, " + own.citation(),
                        none -> kind + ": " + SourceWords.of(none));
    }

    private static String name(PointRow row) {
        String kind = row.kind().label() + " in " + row.surface().name();
        String set = row.points().name() + ": " + kind;
        String sheet = row.sheet().map(found -> found.id() + " " + set).orElse(set);
        return row.source()
                .match(
                        computed -> sheet,
                        standIn -> sheet + ", not chosen",
                        own -> sheet + ", " + own.citation(),
                        none -> set + ", " + SourceWords.of(none));
    }
}
