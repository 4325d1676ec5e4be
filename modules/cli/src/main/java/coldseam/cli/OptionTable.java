package coldseam.cli;

import coldseam.envelope.DimensionSystem;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.DefaultPsi;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Kinds and options in the columns of a terminal. */
final class OptionTable {

    private static final String ROW = "          %-18s  %-18s  %5s  %10s  %6s";

    private final Terminal terminal;
    private final Layers layers;
    private final BridgeComputer computer;
    private final UnitSystem units;
    private boolean tabulatedShown;

    OptionTable(Terminal terminal, Layers layers, BridgeComputer computer, UnitSystem units) {
        this.terminal = terminal;
        this.layers = layers;
        this.computer = computer;
        this.units = units;
    }

    /** Names alone. */
    void names(ImmutableList<JunctionKind> kinds) {
        for (JunctionKind kind : kinds) {
            say(kind.label());
            ImmutableList<Detail> options = layers.catalogue().options(kind);
            options.forEach(this::name);
            if (options.isEmpty()) {
                say("  none; draw one of your own");
            }
        }
        say("");
        fold(
                "Give --kind, --house or --first and --second to see what each loses between those layers; \"coldseam detail"
                        + " ID\" draws one.");
    }

    /** Every option between the layers. */
    void computed(ImmutableList<JunctionKind> kinds) {
        boolean any = false;
        for (JunctionKind kind : kinds) {
            for (Layers.Place place : layers.places(kind)) {
                if (any) {
                    say("");
                }
                any = true;
                kind(kind, place);
            }
        }
        if (!any) {
            fold("The house has no junction of the kinds asked for; leave out --house to see typical build-ups.");
            return;
        }
        say("");
        fold(
                "psi with its proven interval. fRsi with Rsi 0.25 m²·K/W, an estimate. Neck: what is left of the insulation's"
                        + " thickness at its narrowest. Path: the weakest path's share of the resistance beside it.");
        if (tabulatedShown) {
            fold("ISO 14683: " + DefaultPsi.CAUTION + "; an order of magnitude, no proof.");
        }
        fold("What carries loads through the insulation needs an engineer's word.");
    }

    private void kind(JunctionKind kind, Layers.Place place) {
        Columns.fold(kind.label() + ": " + Layers.words(place.setup()) + " (" + place.origin() + ")", "", "    ")
                .forEach(terminal.out()::println);
        String unit = units.label(Dimension.LINEAR_TRANSMITTANCE);
        say(ROW.formatted("psi external", "psi internal", "fRsi", "neck", "path"));
        say(ROW.formatted(unit, unit, "", "", ""));
        ImmutableList<Detail> options = layers.catalogue().options(kind);
        if (options.isEmpty()) {
            say("  none; draw one of your own");
        }
        options.forEach(detail -> {
            name(detail);
            detail.cost()
                    .ifPresent(cost -> Columns.fold("cost " + cost.sourced(units), "          ", "          ")
                            .forEach(terminal.out()::println));
            try {
                numbers(computer.compute(detail, place.setup()));
            } catch (DetailDoesNotFit misfit) {
                misfit.reasons()
                        .forEach(reason -> Columns.fold("does not fit: " + reason, "          ", "          ")
                                .forEach(terminal.out()::println));
            }
        });
    }

    private void numbers(JunctionResult result) {
        say(ROW.formatted(
                psi(result, DimensionSystem.EXTERNAL),
                psi(result, DimensionSystem.INTERNAL),
                String.format(Locale.ROOT, "%.2f", result.temperatureFactor()),
                neck(result),
                String.format(Locale.ROOT, "%.0f %%", 100 * result.weakestPath().ratio())));
        Optional<DefaultPsi> tabulated = DefaultPsi.beside(result);
        tabulatedShown |= tabulated.isPresent();
        tabulated.ifPresent(row -> say(String.format(
                Locale.ROOT,
                "          %-18s  %-18s  ISO 14683 %s",
                units.number(row.external(), Dimension.LINEAR_TRANSMITTANCE),
                units.number(row.internal(), Dimension.LINEAR_TRANSMITTANCE),
                row.code())));
    }

    private String psi(JunctionResult result, DimensionSystem system) {
        return units.intervalNumber(
                result.psi(system).lower(), result.psi(system).upper(), Dimension.LINEAR_TRANSMITTANCE);
    }

    private String neck(JunctionResult result) {
        return result.penLine().unbroken()
                ? units.format(Math.floor(result.penLine().neck() * 1000 + 1e-3) / 1000, Dimension.THICKNESS)
                : "broken";
    }

    private void name(Detail detail) {
        Columns.fold(
                        detail.name(),
                        String.format(
                                Locale.ROOT, "  %-7s %s: ", detail.rank().name().toLowerCase(Locale.ROOT), detail.id()),
                        "          ")
                .forEach(terminal.out()::println);
    }

    private void fold(String text) {
        Columns.fold(text, "", "").forEach(terminal.out()::println);
    }

    private void say(String line) {
        terminal.out().println(line.stripTrailing());
    }
}
