package coldseam.report.pages;

import coldseam.audit.AsFound;
import coldseam.audit.BridgeSheet;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.FoundWords;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What was found at a seam, in one table with what is planned there, and drawn. */
final class FoundSeamsBlock {

    private final Page page;
    private final BridgeSheet<JunctionResult> planned;
    private final ImmutableList<AsFound.Seam> seams;

    private FoundSeamsBlock(Page page, BridgeSheet<JunctionResult> planned, AsFound found) {
        this.page = page;
        this.planned = planned;
        this.seams = found.of(planned);
    }

    /** Nothing where the house file does not say what was found, or of a point. */
    @SuppressWarnings("unchecked")
    static void write(Page page, BridgeSheet<?> sheet) {
        if (sheet.junction().isPresent()) {
            page.audit()
                    .found()
                    .ifPresent(found -> new FoundSeamsBlock(page, (BridgeSheet<JunctionResult>) sheet, found).write());
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

    private Table table() {
        UnitSystem units = page.print().units();
        Table table = new Table(
                Lists.immutable.of(
                        Table.Column.share("state", 1),
                        Table.Column.number("length", 52),
                        Table.Column.number("ψ, " + units.label(planned.dimension()), units == UnitSystem.SI ? 84 : 98),
                        Table.Column.number("f_{Rsi}", 34),
                        Table.Column.number("mould from", 54),
                        Table.Column.number("wet from", 46),
                        Table.Column.number("neck", 48)),
                Lists.immutable.empty());
        for (AsFound.Seam seam : seams) {
            Rich state = Rich.of("As found: " + FoundWords.state(seam));
            String length = page.print().length(seam.length());
            table = table.with(seam.sheet()
                    .map(was -> row(state, length, was))
                    .orElseGet(() -> row(
                            Lists.immutable.of(Table.Cell.of(state), Table.Cell.of(length)),
                            Lists.immutable.of("–", "–", "–", "–", "–"))));
        }
        return table.with(row(
                Rich.strong("As planned: " + planned.result().detail().name()),
                page.print().length(planned.size()),
                planned));
    }

    private Table.Row row(Rich state, String length, BridgeSheet<JunctionResult> sheet) {
        Print print = page.print();
        DimensionSystem system = page.audit().heatLoss().system();
        JunctionResult result = sheet.result();
        return row(
                Lists.immutable.of(Table.Cell.of(state), Table.Cell.of(length)),
                Lists.immutable.of(
                        print.number(result.psi(system), result.dimension()),
                        Print.factor(sheet.temperatureFactor()),
                        humidity(sheet.mouldHumidity()),
                        humidity(sheet.dewPointHumidity()),
                        result.penLine().unbroken()
                                ? print.neck(result.penLine().neck())
                                : "broken"));
    }

    private static Table.Row row(ImmutableList<Table.Cell> first, ImmutableList<String> numbers) {
        return new Table.Row(Table.Kind.PLAIN, first.newWithAll(numbers.collect(Table.Cell::of)));
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
