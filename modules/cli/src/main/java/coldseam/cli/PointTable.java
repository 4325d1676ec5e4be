package coldseam.cli;

import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.junctions.points.Fastener;
import coldseam.junctions.points.PointComputer;
import coldseam.junctions.points.PointDetail;
import coldseam.junctions.points.PointResult;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Fasteners, posts and brackets with their chi, in the columns of a terminal. */
final class PointTable {

    /** 1/m², for the share of U; common practice, no source. */
    private static final double PER_AREA = 6;

    private static final String ROW = "  %-9s  %-9s  %-21s  %-17s  %11s";

    private final Terminal terminal;
    private final UnitSystem units;
    private final PointComputer computer = PointComputer.standard();

    PointTable(Terminal terminal, UnitSystem units) {
        this.terminal = terminal;
        this.units = units;
    }

    /** Computes all on all cores and prints them. */
    void print() {
        ImmutableList<Fastener> fasteners = Fastener.table();
        ImmutableList<PointDetail> details = PointDetail.builtIn();
        ImmutableList<PointResult> screws = compute(fasteners.collect(Fastener::section));
        ImmutableList<PointResult> rest = compute(details.collect(PointDetail::section));
        fasteners(fasteners, screws);
        details(details, rest);
        say("");
        fold("chi = L3D - U·A over a round disc of 1 m², with its proven interval for the shape as drawn. fRsi with Rsi"
                + " 0.25 m²·K/W, an estimate. Count a fastener once: in chi, or in U by ISO 6946.");
        fold("What carries loads, guards and brackets above all, needs an engineer's word.");
    }

    private ImmutableList<PointResult> compute(ImmutableList<coldseam.junctions.points.PointSection> sections) {
        return Lists.immutable.fromStream(sections.castToList().parallelStream().map(computer::compute));
    }

    private void fasteners(ImmutableList<Fastener> fasteners, ImmutableList<PointResult> results) {
        fold(String.format(
                Locale.ROOT,
                "Screws through mineral wool board: shaft %s, %s into the base, plate %s across; render outside",
                units.format(Fastener.SHAFT, Dimension.THICKNESS),
                units.format(Fastener.EMBEDDED, Dimension.THICKNESS),
                units.format(Fastener.PLATE, Dimension.THICKNESS)));
        String unit = units.label(Dimension.POINT_TRANSMITTANCE);
        for (Fastener.Base base : Fastener.Base.values()) {
            say("");
            say("into " + base.name().toLowerCase(Locale.ROOT));
            say(ROW.formatted("board", "steel", "chi, " + unit, "ISO 6946, " + unit, "6 per m²"));
            fasteners
                    .zip(results)
                    .select(pair -> pair.getOne().base() == base)
                    .forEach(pair -> say(ROW.formatted(
                            units.format(pair.getOne().board(), Dimension.THICKNESS),
                            pair.getOne().steel().name().toLowerCase(Locale.ROOT),
                            chi(pair.getTwo()),
                            units.number(pair.getOne().correction(), Dimension.POINT_TRANSMITTANCE),
                            String.format(
                                    Locale.ROOT,
                                    "U %+.1f %%",
                                    100
                                            * PER_AREA
                                            * pair.getTwo().chi().middle()
                                            / pair.getTwo().section().transmittance()))));
        }
    }

    private void details(ImmutableList<PointDetail> details, ImmutableList<PointResult> results) {
        String kind = "";
        for (int i = 0; i < details.size(); i++) {
            PointDetail detail = details.get(i);
            PointResult result = results.get(i);
            if (!detail.kind().equals(kind)) {
                kind = detail.kind();
                say("");
                say(kind);
            }
            Columns.fold(
                            detail.name(),
                            String.format(
                                    Locale.ROOT,
                                    "  %-7s %s: ",
                                    detail.rank().name().toLowerCase(Locale.ROOT),
                                    detail.id()),
                            "          ")
                    .forEach(terminal.out()::println);
            say(String.format(
                    Locale.ROOT,
                    "          chi %s %s, fRsi %.2f",
                    chi(result),
                    units.label(Dimension.POINT_TRANSMITTANCE),
                    result.temperatureFactor()));
            Columns.fold("Drawn: " + detail.roundedHow(), "          ", "          ")
                    .forEach(terminal.out()::println);
            Columns.fold("Fails: " + detail.failure(), "          ", "          ")
                    .forEach(terminal.out()::println);
        }
    }

    private String chi(PointResult result) {
        return units.intervalNumber(result.chi().lower(), result.chi().upper(), Dimension.POINT_TRANSMITTANCE);
    }

    private void fold(String text) {
        Columns.fold(text, "", "").forEach(terminal.out()::println);
    }

    private void say(String line) {
        terminal.out().println(line.stripTrailing());
    }
}
