package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.envelope.Opening;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.TakeOff;
import org.eclipse.collections.api.block.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What the house is built of and how much of it: layers by their area, seams by their length, windows and doors by their size. */
public final class Quantities {

    /** m. */
    private static final double THINNEST_BY_VOLUME = 0.0095;

    private Quantities() {}

    /** Sets the section. */
    public static void write(Page page) {
        Audit audit = page.audit();
        Flow flow = page.flow();
        Print print = page.print();
        flow.section("Materials and quantities");
        boolean old = audit.house().retrofit().isPresent();
        flow.body(
                "Net, openings taken off, rounded: nothing is added for waste, laps and offcuts. What lies inside of what"
                        + " carries is measured by the house's inner faces, what lies outside of it by the outer ones; what carries, and a"
                        + " floor from there down, from the one to the other, since it may end between the walls or run out under them. "
                        + (old
                                ? "What carries and stays is left out, and so are layers that are said to be there already. "
                                : "")
                        + "Members between fill are by their share. Fasteners, tapes and sealants are not counted.");
        flow.heading("Layers");
        flow.add(Listing.<TakeOff.OfMaterial>empty()
                .share("material", 0.5, each -> each.material() + (each.falls() ? ", to falls, mean" : ""))
                .number("thickness", 62, each -> print.of(each.thickness(), Dimension.THICKNESS))
                .number(
                        print.head("area", Dimension.AREA),
                        74,
                        each -> amount(each.least(), each.area(), Dimension.AREA, print))
                .number(print.head("volume", Dimension.VOLUME), 68, each -> volume(each, print))
                .share("in", 0.5, each -> each.assemblies().makeString(", "))
                .of(TakeOff.materials(audit)));
        flow.heading("Seams");
        flow.add(Listing.<BridgeSheet<?>>empty()
                .fixed("sheet", 32, BridgeSheet::id)
                .share("seam", 0.4, sheet -> Phrases.capital(sheet.kind()))
                .share("built as", 0.6, sheet -> sheet.result().detail().name())
                .number(
                        print.head("length", Dimension.LENGTH),
                        60,
                        sheet -> amount(sheet.size(), Dimension.LENGTH, print))
                .of(audit.sheets().collect(sheet -> sheet)));
        flow.space(3);
        flow.small("Lengths in " + Words.word(audit.heatLoss().system())
                + " dimensions. What a seam takes beside the layers (blocks, strips, flashings) stands on its sheet.");
        ImmutableList<Opening> openings = audit.house().openings();
        if (openings.notEmpty()) {
            Table table = Listing.<ImmutableList<Opening>>empty()
                    .number("number", 50, like -> "" + like.size())
                    .fixed("kind", 60, like -> Words.word(like.getFirst().kind()))
                    .number("width", 62, like -> print.length(like.getFirst().width()))
                    .number("height", 62, like -> print.length(like.getFirst().height()))
                    .share("which", 1, like -> like.collect(Opening::name).makeString(", "))
                    .of(alike(openings));
            flow.heading("Windows and doors");
            flow.add(table);
        }
    }

    /** To what is ordered: whole numbers, below ten tenths. */
    private static String amount(double inside, Dimension dimension, Print print) {
        return print.units().number(inside, dimension, print.units().value(inside, dimension) < 10 ? 1 : 0);
    }

    /** From the least to the most; one number where they print alike. */
    private static String amount(double least, double most, Dimension dimension, Print print) {
        String from = amount(least, dimension, print);
        String to = amount(most, dimension, print);
        return from.equals(to) ? to : from + "…" + to;
    }

    /** Of what comes by volume; sheets, foils and coats of a few millimetres come by their area. */
    private static String volume(TakeOff.OfMaterial each, Print print) {
        return each.thickness() < THINNEST_BY_VOLUME
                ? "–"
                : amount(each.least() * each.thickness(), each.volume(), Dimension.VOLUME, print);
    }

    private static ImmutableList<ImmutableList<Opening>> alike(ImmutableList<Opening> openings) {
        Function<Opening, Object> by = one -> Lists.immutable.of(one.kind(), one.width(), one.height());
        return openings.distinctBy(by)
                .collect(first -> openings.select(one -> by.valueOf(one).equals(by.valueOf(first))));
    }
}
