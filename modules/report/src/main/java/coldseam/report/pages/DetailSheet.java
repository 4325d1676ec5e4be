package coldseam.report.pages;

import coldseam.envelope.Assembly;
import coldseam.files.Words;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.detail.Detail;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Style;
import coldseam.report.section.Legend;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import coldseam.report.solid.BodyPicture;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A computed detail, of a junction or of a point, on paper: drawing, numbers, and what a builder needs to know. */
public final class DetailSheet {

    /** Points: the gaps below the drawing, below the tables, and below the words. */
    private static final double GAP = 6;

    private static final double BELOW_TABLES = 8;

    /** Points: height of the three cuts through a point of boxes. */
    private static final double CUTS = 150;

    /**
     * How tall a drawing may be.
     *
     * @param least points
     * @param most points
     * @param besideWords least height that the words on the same page leave it, points; with less they go on the next page
     */
    private record Room(double least, double most, double besideWords) {
        /** A section one can work from; in the audit its words always go on. */
        static final Room IN_AUDIT = new Room(235, 420, Double.POSITIVE_INFINITY);

        static final Room OF_ITS_OWN = new Room(300, 400, 300);

        /** What goes through at a spot is small: a low drawing shows it. */
        static final Room ROUND = new Room(300, 400, 175);
    }

    private final Flow flow;
    private final Print print;
    private final BridgeResult result;
    private final DetailWords words;
    private final DetailNumbers numbers;

    DetailSheet(Flow flow, Print print, BridgeResult result) {
        this.flow = flow;
        this.print = print;
        this.result = result;
        this.words = DetailWords.of(result, print);
        this.numbers = new DetailNumbers(result, print);
    }

    /** Its layers in words: "between" two build-ups or "through" one. */
    public static String layers(BridgeSetup setup) {
        return (setup instanceof PointSetup ? "through " : "between ")
                + setup.assemblies().collect(Assembly::name).makeString(" and ");
    }

    /**
     * Sets a sheet of its own for one option.
     *
     * @param layers in words
     * @param limits temperatures whose isotherms are marked
     */
    public static void write(
            Flow flow,
            BridgeResult result,
            String layers,
            ImmutableList<SectionPicture.Limit> limits,
            UnitSystem units) {
        Detail detail = result.detail();
        boolean round = result instanceof PointResult;
        head(flow, detail, layers);
        Block caution = Blocks.text(
                (round ? "χ" : "ψ") + " with the proven interval of its computation"
                        + (round ? ", for the shape as drawn" : "")
                        + ". What carries loads or must resist fire needs an engineer's word before it is built.",
                Style.SMALL);
        new DetailSheet(flow, new Print(units), result)
                .set(limits, round ? Room.ROUND : Room.OF_ITS_OWN, true, Optional.empty(), Optional.of(caution));
    }

    /** Its name, and what it is in which layers. */
    static void head(Flow flow, Detail detail, String layers) {
        flow.section(detail.name());
        flow.body(Phrases.capital(detail.kind().label()) + ", "
                + Words.word(detail.rank()) + " option (" + detail.id() + "), " + layers
                + ".");
        flow.space(GAP);
    }

    /**
     * Sets the body of a sheet in the audit.
     *
     * @param said between the tables and the words
     */
    void write(ImmutableList<SectionPicture.Limit> limits, Block said) {
        set(
                limits,
                result instanceof PointResult ? Room.ROUND : Room.IN_AUDIT,
                false,
                Optional.of(said),
                Optional.empty());
    }

    private void set(
            ImmutableList<SectionPicture.Limit> limits,
            Room room,
            boolean tabulated,
            Optional<Block> said,
            Optional<Block> last) {
        SectionPicture picture = SectionPicture.of(result, limits, print.units());
        Optional<Block> cuts = cuts();
        double below = below(said, BELOW_TABLES) + below(cuts, BELOW_TABLES);
        double wordy = words.columns().height(flow.width()) + below(last, GAP) + BELOW_TABLES;
        // The drawing takes what the tables and words of the first page leave.
        SectionBlock section = SectionBlock.fit(picture, flow.width(), room.least(), drawing -> {
            double rest = tables(drawing, tabulated).height(flow.width()) + below + Legend.HEIGHT + GAP + 1;
            double free = flow.remaining() - rest;
            double besideWords = free - wordy;
            return Math.max(
                    besideWords >= room.besideWords() ? room.besideWords() : room.least(),
                    Math.min(room.most(), besideWords >= room.besideWords() ? besideWords : free));
        });
        flow.add(section.block(result, numbers.figure()));
        flow.space(GAP);
        flow.add(tables(section.drawing(), tabulated));
        flow.space(BELOW_TABLES);
        for (Optional<Block> block : Lists.immutable.of(cuts, said)) {
            block.ifPresent(each -> {
                flow.add(each);
                flow.space(BELOW_TABLES);
            });
        }
        flow.add(words.columns());
        last.ifPresent(block -> {
            flow.space(GAP);
            flow.add(block);
        });
    }

    /** Three cuts through a point of boxes: the section alone does not show what stands beside its plane. */
    private Optional<Block> cuts() {
        return result instanceof PointResult point
                ? point.body()
                        .map(body -> Blocks.figure(
                                CUTS,
                                "Three cuts, along a layer, across what stands beside the axis, and through the axis; what is the same"
                                        + " on both sides is shown once",
                                DrawnResult.of(point, print.units()),
                                (canvas, box) ->
                                        BodyPicture.through(body, print.units()).drawCuts(canvas, box)))
                : Optional.empty();
    }

    private double below(Optional<Block> block, double gap) {
        return block.map(each -> each.height(flow.width()) + gap).orElse(0.0);
    }

    private Block tables(SectionDrawing drawing, boolean tabulated) {
        return Blocks.beside(
                18,
                Lists.immutable.of(0.52, 0.48),
                Blocks.table(SectionBlock.keys(drawing, result.setup().assemblies(), print)),
                Blocks.table(numbers.table(tabulated)));
    }
}
