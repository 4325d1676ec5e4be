package coldseam.report.pages;

import coldseam.audit.BridgeSheet;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.files.quantity.Dimension;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.SourceWords;

/** Every edge of the shell and every set of points, so that none can be silent. */
public final class Register {

    private Register() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Print print = page.print();
        flow.section("Edge register");
        flow.body(Phrases.count(page.audit().junctions().size(), "edge", "edges")
                + " of the shell; each is listed, none is averaged away. A stand-in is the worst option of the"
                + " catalogue, where nobody chose a detail.");
        flow.space(6);
        Listing<JunctionRow> named = Listing.<JunctionRow>empty()
                .share("edge", 1, row -> row.edge().name())
                .fixed("sheet", 30, row -> row.sheet().map(BridgeSheet::id).orElse("–"));
        // Marked by the numbers of the list and of the drawing of the house.
        Listing<JunctionRow> marked =
                page.audit().findings().isEmpty() ? named : named.fixed("found", 34, row -> numbers(page, row));
        flow.add(marked.number(
                        print.head("length", Dimension.LENGTH),
                        44,
                        row -> print.units().number(row.length(), Dimension.LENGTH, 2))
                .number(
                        print.head("ψ", Dimension.LINEAR_TRANSMITTANCE),
                        94,
                        row -> print.number(row.psi(), Dimension.LINEAR_TRANSMITTANCE))
                .number(
                        print.head("loss", Dimension.HEAT_LOSS_COEFFICIENT),
                        98,
                        row -> print.number(row.loss(), Dimension.HEAT_LOSS_COEFFICIENT))
                .share("ψ comes from", 0.42, row -> SourceWords.brief(row.source()))
                .of(page.audit().junctions()));
    }

    private static String numbers(Page page, JunctionRow row) {
        return page.audit()
                .findings()
                .select(finding -> finding.subject().isAbout(row))
                .collect(finding -> Integer.toString(finding.number()))
                .makeString(", ");
    }

    /** Every set of points that the house file lists. */
    static void points(Page page) {
        Flow flow = page.flow();
        Print print = page.print();
        flow.section("Points");
        flow.body(
                "What goes through the insulation at a spot, as the house file lists it: posts, columns, brackets, pipes and"
                        + " ducts. χ is what one loses beyond the surface it goes through. What the file does not list is not"
                        + " here: count it on site.");
        flow.space(6);
        flow.add(Listing.<PointRow>empty()
                .share(
                        "points",
                        1,
                        row -> Phrases.capital(row.points().name()) + ": "
                                + row.kind().label() + ", " + row.surface().name())
                .fixed("sheet", 32, row -> row.sheet().map(BridgeSheet::id).orElse("–"))
                .number("number", 44, row -> Integer.toString(row.number()))
                .number(
                        print.head("χ", Dimension.POINT_TRANSMITTANCE),
                        100,
                        row -> row.sheet().isPresent() ? print.number(row.chi(), Dimension.POINT_TRANSMITTANCE) : "–")
                .number("b", 28, row -> print.number(row.factor(), Dimension.RATIO))
                .number(
                        print.head("loss", Dimension.HEAT_LOSS_COEFFICIENT),
                        74,
                        row -> row.sheet().isPresent()
                                ? print.number(row.loss(), Dimension.HEAT_LOSS_COEFFICIENT)
                                : "–")
                .share("χ comes from", 0.5, row -> SourceWords.brief(row.source()))
                .of(page.audit().points()));
    }
}
