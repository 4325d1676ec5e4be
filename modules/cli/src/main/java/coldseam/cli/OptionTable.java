package coldseam.cli;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.DefaultPsi;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.PointKind;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.NearestDefaultPsi;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Suits;
import coldseam.report.words.Print;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Kinds of junction or of point and their options in the columns of a terminal. */
final class OptionTable {

    private static final String ROW = "          %-18s  %-18s  %5s  %10s  %6s";
    /** What came of an option: its result, or why it does not fit. */
    private record Outcome(Optional<BridgeResult> result, ImmutableList<Phrase> misfits) {}

    private final DetailLines lines;
    private final Layers layers;
    private final BridgeComputer computer;
    private final UnitSystem units;
    private boolean tabulatedShown;

    OptionTable(Terminal terminal, Layers layers, BridgeComputer computer, UnitSystem units) {
        this.lines = new DetailLines(terminal, units);
        this.layers = layers;
        this.computer = computer;
        this.units = units;
    }

    /** Names alone. */
    void names(ImmutableList<? extends BridgeKind> kinds) {
        for (BridgeKind kind : kinds) {
            lines.say(kind.label());
            said(layers.catalogue().options(kind)).forEach(lines::option);
        }
        lines.say("");
    }

    /** Computes every option between the layers on all cores; of fasteners a table of screws where no layers are named. */
    void computed(ImmutableList<? extends BridgeKind> kinds) {
        boolean points = kinds.anySatisfy(PointKind.class::isInstance);
        boolean any =
                kinds.anySatisfy(kind -> kind instanceof PointKind point && point.countedInU()) && layers.typical();
        if (any) {
            new FastenerTable(lines, units, computer).print();
        }
        for (BridgeKind kind : kinds) {
            for (Layers.Place<?> place : layers.places(kind)) {
                if (any) {
                    lines.say("");
                }
                any = true;
                kind(kind, place);
            }
        }
        if (!any) {
            lines.terminal()
                    .fold("The house has no " + (points ? "point" : "junction")
                            + " of the kinds asked for; leave out --house to see typical build-ups.");
            return;
        }
        lines.say("");
        lines.terminal()
                .fold(units.told(
                        points
                                ? "chi = L3D - U·A over a disc or a square, with its proven interval for the shape as drawn. fRsi with Rsi"
                                        + " 0.25 m²·K/W, an estimate. Count a fastener once: in chi, or in U by ISO 6946."
                                : "psi with its proven interval. fRsi with Rsi 0.25 m²·K/W, an estimate. Neck: what is left of the"
                                        + " insulation's thickness at its narrowest. Path: the weakest path's share of the resistance"
                                        + " beside it."));
        if (tabulatedShown) {
            lines.terminal().fold("ISO 14683: " + DefaultPsi.CAUTION + "; an order of magnitude, no proof.");
        }
        lines.terminal()
                .fold(
                        points
                                ? "What carries loads, guards and brackets above all, needs an engineer's word."
                                : "What carries loads through the insulation needs an engineer's word.");
    }

    private ImmutableList<Detail> said(ImmutableList<Detail> options) {
        if (options.isEmpty()) {
            lines.say("  none; draw one of your own");
        }
        return options;
    }

    private void kind(BridgeKind kind, Layers.Place<?> place) {
        lines.fold("", kind.label() + ": " + place.words() + " (" + place.origin() + ")", "    ");
        if (!(kind instanceof PointKind)) {
            String unit = units.label(Dimension.LINEAR_TRANSMITTANCE);
            lines.say(ROW.formatted("psi external", "psi internal", "fRsi", "neck", "path"));
            lines.say(ROW.formatted(unit, unit, "", "", ""));
        }
        ImmutableList<Detail> options = said(layers.options(kind, place.setup()));
        ImmutableList<Outcome> outcomes =
                Lists.immutable.fromStream(options.castToList().parallelStream().map(detail -> outcome(detail, place)));
        options.zip(outcomes).forEach(pair -> {
            lines.option(pair.getOne());
            if (place.chosen().anySatisfy(each -> each.id().equals(pair.getOne().id()))) {
                lines.under("chosen by the house file");
            }
            if (!pair.getOne().suits().equals(Suits.EVERYWHERE)) {
                lines.under("for " + pair.getOne().suits().words());
            }
            pair.getOne().cost().ifPresent(cost -> lines.under("cost " + cost.sourced(units)));
            pair.getTwo().result().ifPresent(this::numbers);
            pair.getTwo().misfits().forEach(reason -> lines.under("does not fit: " + reason.in(units)));
        });
    }

    private Outcome outcome(Detail detail, Layers.Place<?> place) {
        try {
            return new Outcome(
                    Optional.of(computer.compute(place.laid(detail), place.setup())), Lists.immutable.empty());
        } catch (DetailDoesNotFit misfit) {
            return new Outcome(Optional.empty(), misfit.reasons());
        }
    }

    private void numbers(BridgeResult result) {
        if (!(result instanceof JunctionResult junction)) {
            lines.say(Format.of(
                    "%schi %s %s, fRsi %.2f",
                    DetailLines.UNDER,
                    number(result, DimensionSystem.EXTERNAL),
                    units.label(result.dimension()),
                    result.temperatureFactor()));
            return;
        }
        lines.say(ROW.formatted(
                number(result, DimensionSystem.EXTERNAL),
                number(result, DimensionSystem.INTERNAL),
                Format.of("%.2f", result.temperatureFactor()),
                new Print(units).neck(junction.penLine()),
                Format.of("%.0f %%", 100 * junction.weakestPath().ratio())));
        Optional<DefaultPsi> tabulated = NearestDefaultPsi.of(junction);
        tabulatedShown |= tabulated.isPresent();
        tabulated.ifPresent(row -> lines.say(Format.of(
                "%s%-18s  %-18s  ISO 14683 %s",
                DetailLines.UNDER,
                units.number(row.external(), result.dimension()),
                units.number(row.internal(), result.dimension()),
                row.code())));
    }

    private String number(BridgeResult result, DimensionSystem system) {
        return new Print(units).number(result.psiOrChi(system), result.dimension());
    }
}
