package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.HeatLoss.Part;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.engine.Unknown;

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

    /** The name of a line. */
    public static String name(Part part) {
        return part.match(
                plane -> plane.surface().name(),
                window -> window.opening().name(),
                junction -> name(junction.edges().getFirst()),
                pairs -> PairWords.name(pairs.sheet()),
                points -> name(points.points()),
                vertices -> VertexWords.name(vertices.sheet()));
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
