package coldseam.report.pages;

import coldseam.envelope.Assembly;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Table;
import coldseam.report.section.Legend;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import coldseam.report.words.Print;
import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;

/** A section's drawing with its legend, as tall as the blocks on its page let it be, and the key to its numbers. */
record SectionBlock(SectionPicture picture, SectionDrawing drawing, double height) {

    /** A taller drawing may show more materials, which makes the table below it taller: so often is it fitted again. */
    private static final int ROUNDS = 3;

    /**
     * Fits a drawing.
     *
     * @param width points
     * @param least height to begin with, points
     * @param room the height there is beside the key of a drawing, points
     */
    static SectionBlock fit(SectionPicture picture, double width, double least, ToDoubleFunction<SectionDrawing> room) {
        SectionBlock block = new SectionBlock(picture, new SectionDrawing(picture, width, least), least);
        for (int round = 0; round < ROUNDS; round++) {
            double height = room.applyAsDouble(block.drawing);
            if (round > 0 && height >= block.height) {
                break;
            }
            block = new SectionBlock(picture, new SectionDrawing(picture, width, height), height);
        }
        return block;
    }

    /**
     * Drawing and legend.
     *
     * @param result that is drawn
     * @param figure what they show, in words
     */
    Block block(BridgeResult result, String figure) {
        return drawn(
                DrawnResult.of(result, picture.system()),
                picture,
                drawing,
                Legend.HEIGHT,
                figure,
                (canvas, box) -> Legend.draw(canvas, box, picture, drawing));
    }

    /**
     * A drawing with something below.
     *
     * @param drawn all that decides what is drawn, beside the limits and sizes
     * @param below points
     * @param figure what they show, in words
     * @param under draws what is below
     */
    static Block drawn(
            Record drawn,
            SectionPicture picture,
            SectionDrawing drawing,
            double below,
            String figure,
            BiConsumer<Canvas, Box> under) {
        return Blocks.figure(
                drawing.height() + below,
                figure,
                new Question(drawn, picture.limits(), drawing.width(), drawing.height(), below),
                (canvas, box) -> {
                    drawing.draw(canvas, new Box(box.x0(), box.y0() + below, box.x1(), box.y1()));
                    under.accept(canvas, box);
                });
    }

    private record Question(
            Record drawn, ImmutableList<SectionPicture.Limit> limits, double width, double height, double below) {}

    /** The materials of a drawing by their numbers, as thick as the build-ups have them. */
    static Table keys(SectionDrawing drawing, ImmutableList<Assembly> assemblies, Print print) {
        return Listing.<SectionPicture.Key>empty()
                .cell(Table.Column.fixed("", 19), key -> Swatch.number(key.number()))
                .cell(Table.Column.fixed("", 31), key -> Swatch.look(key.look()))
                .share("material", 1, SectionPicture.Key::material)
                .with(
                        new Table.Column(conductivityHead(print), 56, true, Align.RIGHT),
                        key -> key.solved()
                                ? key.says(number -> print.number(number, Dimension.CONDUCTIVITY))
                                : "not counted")
                .rich(Table.Column.number("thickness", 52), key -> thicknesses(assemblies, key.material(), print))
                .of(drawing.keys());
    }

    /** The sign, and below it the unit, broken where it is long. */
    private static Rich conductivityHead(Print print) {
        String unit = print.units().label(Dimension.CONDUCTIVITY);
        int slash = unit.indexOf('/');
        return print.units() == UnitSystem.SI
                ? Rich.of("λ, " + unit)
                : Rich.of("λ, " + unit.substring(0, slash + 1))
                        .plus(Rich.newLine())
                        .plus(unit.substring(slash + 1));
    }

    private static Rich thicknesses(ImmutableList<Assembly> assemblies, String material, Print print) {
        ImmutableList<String> distinct = assemblies
                .flatCollect(Assembly::layers)
                .select(layer -> layer.material().name().equals(material))
                .collect(layer -> print.of(layer.thickness(), Dimension.THICKNESS))
                .distinct();
        if (distinct.isEmpty()) {
            return Rich.of("–");
        }
        Rich text = Rich.of(distinct.getFirst());
        for (String more : distinct.drop(1)) {
            text = text.plus(Rich.newLine()).plus(more);
        }
        return text;
    }
}
