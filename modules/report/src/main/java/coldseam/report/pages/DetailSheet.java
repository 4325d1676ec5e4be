package coldseam.report.pages;

import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.junctions.DefaultPsi;
import coldseam.junctions.Detail;
import coldseam.junctions.JunctionResult;
import coldseam.report.drawing.Box;
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
        double drawn = LEAST;
        SectionDrawing drawing = new SectionDrawing(picture, flow.width(), drawn);
        for (int round = 0; round < 3; round++) {
            double free = flow.remaining() - tables(drawing).height(flow.width()) - Legend.HEIGHT - AROUND;
            double besideWords = free - words().height(flow.width());
            // On one page where that leaves a drawing one can work from; else the words go on the next.
            double room = Math.max(LEAST, Math.min(MOST, besideWords >= LEAST ? besideWords : free));
            if (round > 0 && room >= drawn) {
                break;
            }
            drawn = room;
            drawing = new SectionDrawing(picture, flow.width(), drawn);
        }
        SectionDrawing chosen = drawing;
        flow.add(Blocks.drawing(drawn + Legend.HEIGHT, words.figure(), (canvas, box) -> {
            chosen.draw(canvas, new Box(box.x0(), box.y0() + Legend.HEIGHT, box.x1(), box.y1()));
            Legend.draw(canvas, box, picture, chosen);
        }));
        flow.space(6);
        flow.add(tables(chosen));
        flow.space(10);
        flow.add(words());
        flow.space(6);
        flow.add(Blocks.text(
                "ψ with the proven interval of its computation. What carries loads or must resist fire needs an engineer's"
                        + " word before it is built.",
                Style.SMALL));
    }

    private Block words() {
        return words.columns();
    }

    private Block tables(SectionDrawing drawing) {
        return Blocks.beside(18, Lists.immutable.of(0.5, 0.5), Blocks.table(keys(drawing)), Blocks.table(numbers()));
    }

    private Table keys(SectionDrawing drawing) {
        Table table = Table.of(
                Table.Column.fixed("", 19),
                Table.Column.fixed("", 31),
                Table.Column.share("material", 1),
                Table.Column.number(
                        "λ, " + print.units().label(Dimension.CONDUCTIVITY), print.units() == UnitSystem.SI ? 58 : 84));
        for (SectionPicture.Key key : drawing.keys()) {
            table = table.row(
                    Table.Kind.PLAIN,
                    Swatch.number(key.number()),
                    Swatch.look(key.look()),
                    Table.Cell.of(key.material()),
                    Table.Cell.of(
                            key.solved() ? print.number(key.conductivity(), Dimension.CONDUCTIVITY) : "not counted"));
        }
        return table;
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
