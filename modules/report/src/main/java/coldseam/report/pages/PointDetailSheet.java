package coldseam.report.pages;

import coldseam.envelope.Control;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.PointResult;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Detail;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.section.Legend;
import coldseam.report.section.PointPictures;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A point detail on paper: drawing, numbers, and what a builder needs to know. */
public final class PointDetailSheet {

    /** Least height of a drawing that shares its page with the words, and of one that does not; points. */
    private static final double BESIDE_WORDS = 175;

    private static final double LEAST = 300;
    private static final double MOST = 400;

    /** Points: the gaps between the blocks. */
    private static final double AROUND = 30;

    private final Flow flow;
    private final Print print;
    private final PointResult result;

    PointDetailSheet(Flow flow, Print print, PointResult result) {
        this.flow = flow;
        this.print = print;
        this.result = result;
    }

    /**
     * Sets a sheet of its own for one option.
     *
     * @param through the build-up in words
     * @param limits temperatures whose isotherms are marked
     */
    public static void write(
            Flow flow,
            PointResult result,
            String through,
            ImmutableList<SectionPicture.Limit> limits,
            UnitSystem units) {
        Detail detail = result.detail();
        flow.section(detail.name());
        flow.add(Blocks.text(
                Print.capital(detail.kind().label()) + ", "
                        + detail.rank().name().toLowerCase(Locale.ROOT) + " option (" + detail.id() + "), through "
                        + through + ".",
                Style.BODY));
        flow.space(6);
        Block caution = Blocks.text(
                "χ with the proven interval of its computation, for the shape as drawn. What carries loads or must resist"
                        + " fire needs an engineer's word before it is built.",
                Style.SMALL);
        new PointDetailSheet(flow, new Print(units), result).write(limits, caution);
    }

    /** Sets drawing, tables and words; {@code said} stands between the tables and the words. */
    void write(ImmutableList<SectionPicture.Limit> limits, Block said) {
        SectionPicture picture = PointPictures.of(result, limits, print.units());
        SectionBlock section = SectionBlock.fit(picture, flow.width(), LEAST, drawing -> {
            double rest = tables(drawing).height(flow.width()) + said.height(flow.width()) + Legend.HEIGHT + AROUND;
            double besideWords = flow.remaining() - rest - words().height(flow.width());
            return besideWords >= BESIDE_WORDS
                    ? Math.min(MOST, besideWords)
                    : Math.max(LEAST, Math.min(MOST, flow.remaining() - rest));
        });
        flow.add(section.block("Section through the middle of the "
                + result.detail().kind().label() + ", "
                + result.detail().name()
                + ", turned about its axis, to scale with its materials numbered as in the table and isotherms."));
        flow.space(6);
        flow.add(tables(section.drawing()));
        flow.space(8);
        flow.add(said);
        flow.space(8);
        flow.add(words());
    }

    private Block words() {
        return Blocks.beside(18, Lists.immutable.of(0.5, 0.5), Blocks.stack(left(), 2), Blocks.stack(right(), 2));
    }

    private Block tables(SectionDrawing drawing) {
        return Blocks.beside(
                18,
                Lists.immutable.of(0.5, 0.5),
                Blocks.table(SectionBlock.keys(drawing, print)),
                Blocks.table(numbers()));
    }

    private Table numbers() {
        Table table = Table.of(Table.Column.share("result", 1), Table.Column.number("", 122));
        table = DetailWords.row(table, "χ, each", print.of(result.chi(), Dimension.POINT_TRANSMITTANCE));
        table = DetailWords.row(
                table,
                "L_{3D} of a disc of " + print.of(result.area(), Dimension.AREA),
                print.of(result.coupling(), Dimension.POINT_TRANSMITTANCE));
        table = DetailWords.row(table, "U of the surface", print.of(result.transmittance(), Dimension.TRANSMITTANCE));
        return DetailWords.row(
                table, "f_{Rsi}, R_{si} 0.25 m²·K/W, estimate", Print.factor(result.temperatureFactor()));
    }

    private ImmutableList<Block> left() {
        Detail detail = result.detail();
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text("What it looks like", Style.SUBSECTION));
        out.add(Blocks.text(detail.looksLike(), Style.BODY));
        out.add(Blocks.space(5));
        DetailWords.list(out, "Order of building", detail.order(), true, Style.BODY);
        out.add(Blocks.text("How the layers pass", Style.SUBSECTION));
        for (Control control : new Control[] {Control.AIR, Control.WATER, Control.VAPOUR}) {
            Connection how = detail.connections().getIfAbsentValue(control, Connection.NOT_SHOWN);
            out.add(DetailWords.connection(
                    Print.capital(control.name().toLowerCase(Locale.ROOT)),
                    how.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    how.carriesAcross()));
        }
        return out.toImmutable();
    }

    private ImmutableList<Block> right() {
        Detail detail = result.detail();
        MutableList<Block> out = Lists.mutable.empty();
        DetailWords.list(out, "How it fails", detail.failures(), false, Style.BODY);
        DetailWords.list(out, "Photograph before it is covered", detail.photographs(), false, Style.BODY);
        DetailWords.list(out, "Cautions", detail.cautions(), false, Style.BODY);
        DetailWords.list(out, "Simplified in the drawing", result.notes(), false, Style.BODY);
        return out.toImmutable();
    }
}
