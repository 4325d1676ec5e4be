package coldseam.report.pages;

import coldseam.audit.BridgeSheet;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Cost;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Table;
import coldseam.report.words.Print;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The options of a kind beside one another for the same layers, with what they cost where somebody said so. */
final class OptionList {

    private OptionList() {}

    static void write(Page page, BridgeSheet<?> sheet) {
        ImmutableList<BridgeResult> fitting = Lists.immutable.ofAll(sheet.options());
        ImmutableList<BridgeResult> options =
                fitting.contains(sheet.result()) ? fitting : fitting.newWith(sheet.result());
        if (options.size() < 2) {
            return;
        }
        Print print = page.print();
        UnitSystem units = print.units();
        DimensionSystem system = page.audit().heatLoss().system();
        boolean junctions = sheet.junction().isPresent();
        Listing<BridgeResult> listing = Listing.<BridgeResult>empty()
                .rich(Table.Column.share("option", 1), option -> name(option, option.equals(sheet.result())))
                .number(
                        (junctions ? "ψ, " : "χ, ") + units.label(sheet.dimension()),
                        units == UnitSystem.SI ? 84 : 98,
                        option -> print.number(option.psiOrChi(system), option.dimension()))
                .number("f_{Rsi}", 34, option -> Print.factor(option.temperatureFactor()));
        if (junctions) {
            listing = listing.number("neck", 52, option -> print.neck(((JunctionResult) option).penLine()));
        }
        if (options.anySatisfy(each -> each.detail().cost().isPresent())) {
            listing = listing.number(
                    "cost",
                    74,
                    option ->
                            option.detail().cost().map(cost -> cost.text(units)).orElse("not given"));
        }
        page.flow().heading(junctions ? "Options for these layers" : "Options for this surface");
        page.flow().add(Blocks.table(listing.of(options)));
        ImmutableList<String> sources = options.collect(each -> each.detail().cost())
                .select(Optional::isPresent)
                .collect(Optional::get)
                .collect(Cost::source)
                .distinct();
        if (sources.notEmpty()) {
            page.flow().small("Cost by: " + sources.makeString("; ") + ".");
        }
    }

    private static Rich name(BridgeResult option, boolean here) {
        return here
                ? Rich.strong(option.detail().name())
                        .plus(
                                option.detail().parameters().anySatisfy(DetailParameter::given)
                                        ? " (this sheet, as the house file sets it)"
                                        : " (this sheet)")
                : Rich.of(option.detail().name());
    }
}
