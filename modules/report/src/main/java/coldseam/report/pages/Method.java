package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.audit.Digests;
import coldseam.envelope.Submittal;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.MethodWords;

/** What was computed how, with the limits of it, the cautions, and what the words mean. */
public final class Method {

    /** Points. */
    private static final double SIGNATURE = 30;

    private Method() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Audit audit = page.audit();
        flow.section("Method, limits and cautions");
        MethodWords.method(audit, page.print().units()).forEach(line -> {
            flow.body(Rich.trade(line));
            flow.space(4);
        });
        flow.heading("Cautions");
        MethodWords.cautions().forEach(line -> flow.add(Blocks.item("–", Rich.trade(line), Style.BODY)));
        flow.heading("Words and signs");
        words(flow);
        flow.heading("This run");
        Table table = Table.of(Table.Column.share("", 0.3), Table.Column.share("", 1));
        table = table.row("tool", "coldseam " + audit.version());
        table = table.row("house file, SHA-256", audit.inputDigest());
        for (Digests.OfDetail detail : audit.digests().details()) {
            table = table.row("its detail " + detail.file(), detail.digest());
        }
        flow.add(table);
        flow.space(4);
        flow.small(
                "The same files and the same version give the same document, byte for byte; so a rerun can be shown to be"
                        + " the same. The audit's numbers, unrounded, lie inside this document as the file audit.json.");
        handed(flow, audit.house().submittal());
    }

    /** Room for who hands it in and who receives it. */
    private static void handed(Flow flow, Submittal submittal) {
        flow.heading("Handed in and reviewed");
        Table table = Table.of(
                Table.Column.share("", 0.6),
                Table.Column.share("name", 0.8),
                Table.Column.share("date", 0.5),
                Table.Column.share("signature", 1));
        for (boolean first : new boolean[] {true, false}) {
            table = table.row(
                    Table.Kind.PLAIN,
                    Table.Cell.of(first ? "prepared by" : "reviewed by"),
                    Table.Cell.of(first ? submittal.preparedBy().orElse("") : ""),
                    Table.Cell.of(""),
                    Table.Cell.drawn(SIGNATURE, (canvas, box) -> {}));
        }
        flow.add(table);
        flow.space(4);
        flow.small("What was looked at on site is signed item by item under Hold points.");
    }

    private static void words(Flow flow) {
        flow.add(Table.of(Table.Column.fixed("", 74), Table.Column.share("", 1))
                .fact(Rich.of("U"), "thermal transmittance of a surface: heat through one unit of area for one degree")
                .fact(
                        Rich.of("ψ (psi)"),
                        "linear thermal transmittance of a seam: what it loses per length beyond its surfaces")
                .fact(Rich.of("χ (chi)"), "point thermal transmittance of a single spot, such as a bracket")
                .fact(
                        Rich.marked("L_{2D}"),
                        "thermal coupling coefficient of a section, from a two-dimensional computation")
                .fact(Rich.marked("H_{T}"), "heat-loss coefficient by transmission of the whole house")
                .fact(
                        Rich.of("μ"),
                        "vapour resistance factor of a material: how much more it resists vapour than still air")
                .fact(
                        Rich.marked("f_{Rsi}"),
                        "temperature factor: how warm the coldest inner surface stays, 0 as outdoors, 1 as indoors")
                .fact(
                        Rich.of("pen line"),
                        "a line drawn inside the insulation from one surface to the other without lifting the pen")
                .fact(
                        Rich.of("neck"),
                        "what is left of the insulation's thickness at the narrowest place of the pen line")
                .fact(
                        Rich.of("weakest path"),
                        "the way from indoors to outdoors with the least thermal resistance; its ratio says how much of the"
                                + " surfaces' resistance is left on it")
                .fact(Rich.of("a…b"), "an interval: the value lies between a and b, rounded outwards"));
    }
}
