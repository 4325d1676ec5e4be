package coldseam.report.pages;

import coldseam.audit.SideSummary;
import coldseam.audit.engine.GroundRow;
import coldseam.envelope.Body;
import coldseam.envelope.shell.OpenEdge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Side;
import coldseam.files.quantity.Dimension;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Hatch;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Type;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The six sides: areas, insulated shares and mean transmittances, with the box unfolded. */
public final class SixSides {

    private SixSides() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Print print = page.print();
        flow.section("The six sides");
        Shell shell = page.audit().shell();
        ImmutableList<GroundRow> ground = GroundRow.of(page.audit());
        Block facts = Blocks.stack(
                6,
                Blocks.text(
                        shell.closed()
                                ? "The shell is closed: every edge is shared by exactly two surfaces or belongs to an"
                                        + " opening."
                                : "The shell is open: "
                                        + Phrases.count(shell.openEdges().size(), "edge is", "edges are")
                                        + " not shared by exactly two surfaces.",
                        Style.BODY.with(shell.closed() ? Palette.INK : Palette.EMBER)),
                fact("heated volume, outer faces", print.of(shell.externalVolume(), Dimension.VOLUME)),
                fact("heated volume, inner faces", print.of(shell.internalVolume(), Dimension.VOLUME)),
                fact("heated floor area", print.of(shell.floorArea(), Dimension.AREA)),
                fact("floor on the ground", print.of(shell.groundFloorArea(), Dimension.AREA)),
                fact("its exposed perimeter", print.length(shell.exposedPerimeter())),
                characteristic(ground, print));
        flow.add(Blocks.beside(
                18,
                Lists.immutable.of(0.56, 0.44),
                Blocks.drawing(
                        196,
                        "The six sides of the house unfolded, each with its mean U and its insulated share, as in the"
                                + " table.",
                        (c, b) -> net(c, b, page)),
                facts));
        flow.space(8);
        flow.add(table(page));
        flow.space(4);
        flow.small(
                "The insulated share is of the opaque area. Mean transmittances are weighed by area, openings counted"
                        + " in. What stands beside a heated neighbour is in neither.");
        flow.small(floors(page.audit().house().body()));
        missing(page);
        openEdges(page);
    }

    /** Of one floor; several have theirs, by which their U are reckoned, beside those. */
    private static Block characteristic(ImmutableList<GroundRow> ground, Print print) {
        if (ground.isEmpty()) {
            return Blocks.space(0);
        }
        String what = "characteristic dimension B′";
        return ground.size() == 1
                ? fact(what, print.length(ground.getOnly().method().floor().characteristicDimension()))
                : fact(what, "see Heat loss");
    }

    /** What the heated floor area is, since other trades count other ones. */
    private static String floors(Body body) {
        return "The heated floor area is that of every heated storey between the inner faces of its outer walls, with inner walls,"
                + " stairs and what is low under a slope. A floor area that leaves those out is to be reckoned apart."
                + (body instanceof Body.Storeys storeys && storeys.wings().notEmpty()
                        ? " Where a wing's footprint ends at the house's, the strip that a wall between them would stand on is counted;"
                                + " where its floor lies a step or more higher or lower than the house's, it is left out."
                        : "");
    }

    private static void missing(Page page) {
        for (SideSummary side : page.audit().sides().select(each -> each.missing() > 0)) {
            page.flow()
                    .add(Blocks.text(
                            page.print().of(side.missing(), Dimension.AREA) + " are missing "
                                    + page.audit().shell().nameOf(side.side())
                                    + ": nothing closes the envelope there. They count as not insulated; the mean is"
                                    + " of the surfaces that are there.",
                            Style.BODY.with(Palette.EMBER)));
        }
    }

    private static Block fact(String what, String value) {
        return Blocks.beside(
                6,
                Lists.immutable.of(0.6, 0.4),
                Blocks.text(what, Style.BODY.with(Palette.SLATE)),
                Blocks.text(value, Style.BODY.with(Face.SEMIBOLD).aligned(Align.RIGHT)));
    }

    private static Table table(Page page) {
        Print print = page.print();
        return Listing.<SideSummary>empty()
                .share("side", 1, side -> Phrases.capital(page.audit().shell().nameOf(side.side())))
                .number(print.head("gross area", Dimension.AREA), 84, side -> print.number(side.area(), Dimension.AREA))
                .number(
                        print.head("openings", Dimension.AREA),
                        78,
                        side -> print.number(side.openings(), Dimension.AREA))
                .number("insulated", 66, SixSides::insulated)
                .number(
                        print.head("mean U", Dimension.TRANSMITTANCE),
                        110,
                        side -> side.exposedArea() > 0
                                ? print.number(side.meanTransmittance(), Dimension.TRANSMITTANCE)
                                : "–")
                .of(page.audit().sides());
    }

    private static String insulated(SideSummary side) {
        return side.isParty() ? "party wall" : side.area() > 0 ? Print.percent(side.insulatedShare()) : "no surface";
    }

    private static void openEdges(Page page) {
        Shell shell = page.audit().shell();
        if (shell.closed()) {
            return;
        }
        Flow flow = page.flow();
        flow.heading("Open edges");
        flow.add(Listing.<OpenEdge>empty()
                .share("place", 1.4, OpenEdge::place)
                .share("surfaces beside it", 1, edge -> edge.surfaces().makeString(", "))
                .number("length", 70, edge -> page.print().length(edge.length()))
                .of(shell.openEdges()));
    }

    /** The box unfolded: the walls in a row, what lies above and below at the south wall. */
    private static void net(Canvas canvas, Box box, Page page) {
        double s = Math.min(box.width() / 4, box.height() / 3) - 2;
        Side[] row = {Side.WEST, Side.SOUTH, Side.EAST, Side.NORTH};
        for (int i = 0; i < row.length; i++) {
            side(canvas, box.x0() + i * s, box.y0() + s, s, row[i], page);
        }
        side(canvas, box.x0() + s, box.y0() + 2 * s, s, Side.ABOVE, page);
        side(canvas, box.x0() + s, box.y0(), s, Side.BELOW, page);
    }

    private static void side(Canvas canvas, double x, double y, double s, Side which, Page page) {
        Box square = new Box(x, y, x + s, y + s);
        SideSummary summary = page.audit().sides().detect(candidate -> candidate.side() == which);
        boolean present = summary != null && summary.area() > 0 && !summary.isParty();
        double share = present ? summary.insulatedShare() : 0;
        Box insulated = new Box(x, y, x + s, y + s * share);
        canvas.fill(square.corners(), present ? Palette.EMBER.tint(0.75) : Palette.WHITE);
        if (share > 0) {
            canvas.fill(insulated.corners(), Look.INSULATION_BOARD.tint());
            Hatch.CROSSES.draw(canvas, insulated.corners(), insulated);
        }
        canvas.outline(square.corners(), Pen.of(0.8, Palette.INK));
        canvas.fill(new Box(x + 5, y + s / 2 - 15, x + s - 5, y + s / 2 + 16).corners(), Palette.WHITE);
        canvas.text(
                Phrases.capital(page.audit().shell().nameOf(which)),
                x + s / 2,
                y + s / 2 + 5,
                Type.of(8.2).with(Face.SEMIBOLD),
                Align.CENTRE);
        String below = present
                ? "U " + page.print().number(summary.meanTransmittance(), Dimension.TRANSMITTANCE)
                : summary == null ? "no surface" : insulated(summary);
        canvas.text(below, x + s / 2, y + s / 2 - 4, Type.of(7), Align.CENTRE);
        if (present) {
            canvas.text(Print.percent(share), x + s / 2, y + s / 2 - 12, Type.of(7), Align.CENTRE);
        }
    }
}
