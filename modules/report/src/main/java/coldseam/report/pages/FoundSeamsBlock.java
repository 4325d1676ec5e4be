package coldseam.report.pages;

import coldseam.audit.AsFound;
import coldseam.audit.BridgeSheet;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.FoundWords;
import coldseam.report.words.Print;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;

/** What was found at a seam, in one table with what is planned there, and drawn. */
record FoundSeamsBlock(Page page, BridgeSheet<JunctionResult> planned, ImmutableList<AsFound.Seam> seams) {

    /** Nothing where the house file does not say what was found, or of a point. */
    @SuppressWarnings("unchecked")
    static void write(Page page, BridgeSheet<?> sheet) {
        if (sheet.junction().isPresent()) {
            page.audit().found().ifPresent(found -> {
                BridgeSheet<JunctionResult> planned = (BridgeSheet<JunctionResult>) sheet;
                new FoundSeamsBlock(page, planned, found.of(planned)).write();
            });
        }
    }

    private void write() {
        page.flow().heading("As found and as planned");
        page.flow().add(Blocks.table(table()));
        seams.select(seam -> seam.sheet().isPresent())
                .toSortedListBy(seam -> -seam.length())
                .getFirstOptional()
                .flatMap(AsFound.Seam::sheet)
                .ifPresent(this::draw);
    }

    /** A row: a state of the seam, and its sheet, empty where nobody knows what was found. */
    private record State(Rich name, double length, Optional<BridgeSheet<JunctionResult>> sheet) {}

    private Table table() {
        UnitSystem units = page.print().units();
        Print print = page.print();
        DimensionSystem system = page.audit().heatLoss().system();
        ImmutableList<State> states = seams.collect(seam -> new State(
                        Rich.of("As found: "
                                + FoundWords.state(seam, page.print().units())),
                        seam.length(),
                        seam.sheet()))
                .newWith(new State(
                        Rich.strong("As planned: " + planned.result().detail().name()),
                        planned.size(),
                        Optional.of(planned)));
        return Listing.<State>empty()
                .rich(Table.Column.share("state", 1), State::name)
                .number("length", 52, state -> print.length(state.length()))
                .number(
                        "ψ, " + units.label(planned.dimension()),
                        units == UnitSystem.SI ? 84 : 98,
                        of(sheet -> print.number(sheet.result().psi(system), planned.dimension())))
                .number("f_{Rsi}", 34, of(sheet -> Print.factor(sheet.temperatureFactor())))
                .number("mould from", 54, of(sheet -> humidity(sheet.mouldHumidity())))
                .number("wet from", 46, of(sheet -> humidity(sheet.dewPointHumidity())))
                .number("neck", 48, of(sheet -> print.neck(sheet.result().penLine())))
                .of(states);
    }

    private static Function<State, String> of(Function<BridgeSheet<JunctionResult>, String> number) {
        return state -> state.sheet().map(number).orElse("–");
    }

    private static String humidity(double share) {
        return share >= 1 ? "never" : Print.percent(share);
    }

    private void draw(BridgeSheet<JunctionResult> was) {
        DrawnBeside.write(
                page,
                was.result(),
                "As found: " + was.result().detail().name(),
                Blocks.text(
                        "The inner surface is coldest " + FoundWords.coldest(was.result()) + "; as planned, "
                                + FoundWords.coldest(planned.result())
                                + ". What was found is drawn from the build-ups that the house file states; what hides in the"
                                + " old wall, and how tight it is, must be opened up to be known.",
                        Style.BODY.sized(8.6, 11.1)));
    }
}
