package coldseam.report.pages;

import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.Cuboid;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexResult;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Table;
import coldseam.report.solid.BodyPicture;
import coldseam.report.words.Print;
import coldseam.report.words.VertexWords;
import org.eclipse.collections.impl.factory.Lists;

/** A computed corner on paper: what it looks like, its numbers, and how its own detail is built where it has one. */
public final class CornerSheet {

    /** Points: height of the view beside a cut, and of three cuts side by side. */
    static final double HEIGHT = 190;

    private static final double CUTS = 145;

    private static final double GAP = 6;

    /** m; what is shown of a corner that stands on metres of ground. */
    private static final Cuboid NEAR = Cuboid.of(-1.2, -1.2, -1.2, 1.2, 1.2, 1.2);

    private final Print print;
    private final VertexResult result;

    CornerSheet(Print print, VertexResult result) {
        this.print = print;
        this.result = result;
    }

    private BodyPicture picture() {
        BodySolution solution = result.surface();
        return onGround() ? new BodyPicture(solution, print.units(), NEAR) : new BodyPicture(solution, print.units());
    }

    private boolean onGround() {
        return result.heat().isEmpty();
    }

    /**
     * Sets a sheet of its own for one detail of a corner.
     *
     * @param layers in words
     */
    public static void write(Flow flow, VertexResult result, String layers, UnitSystem units) {
        Detail detail = result.corner().orElseThrow().detail();
        CornerSheet sheet = new CornerSheet(new Print(units), result);
        BodyPicture picture = sheet.picture();
        DetailSheet.head(flow, detail, layers);
        flow.add(Blocks.beside(
                18,
                Lists.immutable.of(0.5, 0.5),
                Blocks.drawing(
                        HEIGHT, "The corner from outside with the temperatures of its surfaces", picture::drawView),
                Blocks.stack(
                        GAP,
                        Blocks.drawing(
                                picture.keysHeight(1),
                                "The key to its materials",
                                (canvas, box) -> picture.drawKeys(canvas, box, 1)),
                        Blocks.table(sheet.numbers()))));
        flow.space(GAP);
        flow.add(Blocks.drawing(CUTS, "Three cuts through the corner's coldest place", picture::drawCuts));
        flow.space(GAP);
        sheet.words(flow);
        flow.small(
                "χ with the proven interval of its computation, for the corner as drawn. What carries loads or must resist"
                        + " fire needs an engineer's word before it is built.");
    }

    /** The whole from outside beside a cut; two cuts where it stands on the ground. */
    Block view() {
        return Blocks.figure(
                HEIGHT,
                onGround()
                        ? "An upright and a level cut through the coldest place of the corner"
                        : "The corner from outside with the temperatures of its surfaces, and a cut through its coldest place",
                DrawnResult.of(result.surface(), print.units(), result.setup()),
                (canvas, box) -> picture().drawBeside(canvas, box));
    }

    /** chi in both dimension systems and the coldest place. */
    Table numbers() {
        return Table.of(Table.Column.share("", 1), Table.Column.number("", 112))
                .fact(Rich.of("χ with external dimensions"), chi(DimensionSystem.EXTERNAL))
                .fact(Rich.of("χ with internal dimensions"), chi(DimensionSystem.INTERNAL))
                .fact(
                        Rich.marked("lowest temperature factor f_{Rsi}, an estimate"),
                        Print.factor(result.temperatureFactor()));
    }

    /** Adds how the corner's own detail looks, is built and fails; nothing where its edges say it all. */
    void words(Flow flow) {
        result.corner().ifPresent(own -> {
            flow.add(DetailWords.of(own.detail(), result.notes(), print).columns());
            flow.space(GAP);
        });
    }

    private String chi(DimensionSystem system) {
        return result.heat()
                .map(heat -> print.of(heat.chi(system), Dimension.POINT_TRANSMITTANCE))
                .orElseGet(() -> VertexWords.uncounted(result.setup()));
    }
}
