package coldseam.report.pages;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.DefaultPsi;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.section.Legend;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** One option of the catalogue as a sheet: drawing, numbers, and what a builder needs to know. */
public final class DetailSheet {

    private static final double LEAST = 300;
    private static final double MOST = 400;

    /** Points: the gaps between the blocks, and the last line. */
    private static final double AROUND = 44;

    private final Flow flow;
    private final Print print;
    private final JunctionResult result;
    private final DetailWords words;

    private DetailSheet(Flow flow, Print print, JunctionResult result) {
        this.flow = flow;
        this.print = print;
        this.result = result;
        this.words = new DetailWords(result, print);
    }

    /**
     * Sets the sheet.
     *
     * @param between the build-ups in words
     * @param limits temperatures whose isotherms are marked
     */
    public static void write(
            Flow flow,
            JunctionResult result,
            String between,
            ImmutableList<SectionPicture.Limit> limits,
            UnitSystem units) {
        new DetailSheet(flow, new Print(units), result).write(between, limits);
    }

    private void write(String between, ImmutableList<SectionPicture.Limit> limits) {
        Detail detail = result.detail();
        flow.section(detail.name());
        flow.add(Blocks.text(
                Print.capital(detail.kind().label()) + ", "
                        + detail.rank().name().toLowerCase(Locale.ROOT) + " option (" + detail.id() + "), between "
                        + between + ".",
                Style.BODY));
        flow.space(6);
        SectionPicture picture = SectionPicture.of(result, limits, print.units());
        SectionBlock section = SectionBlock.fit(picture, flow.width(), LEAST, drawing -> {
            double free = flow.remaining() - tables(drawing).height(flow.width()) - Legend.HEIGHT - AROUND;
            double besideWords = free - words.columns().height(flow.width());
            // On one page where that leaves a drawing one can work from; else the words go on the next.
            return Math.max(LEAST, Math.min(MOST, besideWords >= LEAST ? besideWords : free));
        });
        flow.add(section.block(words.figure()));
        flow.space(6);
        flow.add(tables(section.drawing()));
        flow.space(10);
        flow.add(words.columns());
        flow.space(6);
        flow.add(Blocks.text(
                "ψ with the proven interval of its computation. What carries loads or must resist fire needs an engineer's"
                        + " word before it is built.",
                Style.SMALL));
    }

    private Block tables(SectionDrawing drawing) {
        return Blocks.beside(
                18,
                Lists.immutable.of(0.5, 0.5),
                Blocks.table(SectionBlock.keys(drawing, print)),
                Blocks.table(numbers()));
    }

    private Table numbers() {
        Table table = words.psi(Table.of(Table.Column.share("result", 1), Table.Column.number("", 122)));
        Optional<DefaultPsi> tabulated = DefaultPsi.beside(result);
        if (tabulated.isPresent()) {
            DefaultPsi psi = tabulated.get();
            table = DetailWords.row(
                    table,
                    "ISO 14683 " + psi.code() + ": " + DefaultPsi.CAUTION,
                    print.number(psi.external(), Dimension.LINEAR_TRANSMITTANCE) + " ext., "
                            + print.number(psi.internal(), Dimension.LINEAR_TRANSMITTANCE) + " int.");
        }
        return words.rest(table);
    }
}
