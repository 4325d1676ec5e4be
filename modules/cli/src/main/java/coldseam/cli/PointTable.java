package coldseam.cli;

import coldseam.envelope.PointKind;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.point.Fastener;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Fasteners, posts, brackets and pipes with their chi, in the columns of a terminal. */
final class PointTable {

    /** 1/m², for the share of U; common practice, no source. */
    private static final double PER_AREA = 6;

    private static final String ROW = "  %-9s  %-9s  %-21s  %-17s  %11s";
    private static final String UNDER = "          ";

    private final Terminal terminal;
    private final UnitSystem units;
    private final PointLayers layers;
    private final BridgeComputer computer;

    PointTable(Terminal terminal, UnitSystem units, PointLayers layers, BridgeComputer computer) {
        this.terminal = terminal;
        this.units = units;
        this.layers = layers;
        this.computer = computer;
    }

    /** Names of every option of every kind. */
    void names() {
        for (PointKind kind : PointKind.values()) {
            say(kind.label());
            layers.catalogue().options(kind).forEach(this::name);
        }
    }

    /** Computes the options of some kinds on all cores and prints them; with the screws of a table where that is one. */
    void computed(ImmutableList<PointKind> kinds) {
        if (kinds.contains(PointKind.FASTENER) && layers.typical()) {
            fasteners();
            say("");
        }
        for (PointKind kind : kinds) {
            for (PointLayers.Place place : layers.places(kind)) {
                options(kind, place);
                say("");
            }
        }
        fold("chi = L3D - U·A over a round disc, with its proven interval for the shape as drawn. fRsi with Rsi 0.25"
                + " m²·K/W, an estimate. Count a fastener once: in chi, or in U by ISO 6946.");
        fold("What carries loads, guards and brackets above all, needs an engineer's word.");
    }

    private void options(PointKind kind, PointLayers.Place place) {
        Columns.fold(
                        kind.label() + ": through " + place.setup().host().name() + " (" + place.origin() + ")",
                        "",
                        "    ")
                .forEach(terminal.out()::println);
        ImmutableList<Detail> options = layers.catalogue().options(kind);
        ImmutableList<Optional<PointResult>> results = Lists.immutable.fromStream(
                options.castToList().parallelStream().map(detail -> result(place.laid(detail), place.setup())));
        options.zip(results).forEach(pair -> {
            name(pair.getOne());
            pair.getTwo()
                    .ifPresentOrElse(
                            result -> say(String.format(
                                    Locale.ROOT,
                                    "%schi %s %s, fRsi %.2f",
                                    UNDER,
                                    chi(result),
                                    units.label(Dimension.POINT_TRANSMITTANCE),
                                    result.temperatureFactor())),
                            () -> misfit(place.laid(pair.getOne()), place.setup()));
        });
    }

    private Optional<PointResult> result(Detail detail, PointSetup setup) {
        try {
            return Optional.of(computer.compute(detail, setup));
        } catch (DetailDoesNotFit misfit) {
            return Optional.empty();
        }
    }

    private void misfit(Detail detail, PointSetup setup) {
        try {
            computer.compute(detail, setup);
        } catch (DetailDoesNotFit misfit) {
            misfit.reasons()
                    .forEach(reason -> Columns.fold("does not fit: " + reason, UNDER, UNDER)
                            .forEach(terminal.out()::println));
        }
    }

    private void name(Detail detail) {
        Columns.fold(
                        detail.name(),
                        String.format(
                                Locale.ROOT, "  %-7s %s: ", detail.rank().name().toLowerCase(Locale.ROOT), detail.id()),
                        UNDER)
                .forEach(terminal.out()::println);
    }

    private void fasteners() {
        ImmutableList<Fastener> fasteners = Fastener.table();
        ImmutableList<PointResult> results = Lists.immutable.fromStream(
                fasteners.castToList().parallelStream().map(each -> computer.compute(each.detail(), each.setup())));
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
                                            / pair.getTwo().transmittance()))));
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
