package coldseam.cli;

import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.PointResult;
import coldseam.junctions.point.Fastener;
import coldseam.report.words.Print;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The chi of screws through mineral wool board beside what ISO 6946 corrects U by, in the columns of a terminal. */
record FastenerTable(DetailLines lines, UnitSystem units, BridgeComputer computer) {

    /** 1/m², for the share of U; common practice, no source. */
    private static final double PER_AREA = 6;

    private static final String ROW = "  %-9s  %-9s  %-21s  %-17s  %11s";

    void print() {
        ImmutableList<Fastener> fasteners = Fastener.table();
        ImmutableList<PointResult> results = Lists.immutable.fromStream(
                fasteners.castToList().parallelStream().map(each -> computer.compute(each.detail(), each.setup())));
        lines.terminal()
                .fold(Format.of(
                        "Screws through mineral wool board: shaft %s, %s into the base, plate %s across; render outside",
                        units.format(Fastener.SHAFT, Dimension.THICKNESS),
                        units.format(Fastener.EMBEDDED, Dimension.THICKNESS),
                        units.format(Fastener.PLATE, Dimension.THICKNESS)));
        String unit = units.label(Dimension.POINT_TRANSMITTANCE);
        for (Fastener.Base base : Fastener.Base.values()) {
            lines.say("");
            lines.say("into " + Words.word(base));
            lines.say(ROW.formatted("board", "steel", "chi, " + unit, "ISO 6946, " + unit, "6 per m²"));
            fasteners
                    .zip(results)
                    .select(pair -> pair.getOne().base() == base)
                    .forEach(pair -> row(pair.getOne(), pair.getTwo()));
        }
    }

    private void row(Fastener fastener, PointResult result) {
        lines.say(ROW.formatted(
                units.format(fastener.board(), Dimension.THICKNESS),
                Words.word(fastener.steel()),
                new Print(units).number(result.chi(), Dimension.POINT_TRANSMITTANCE),
                units.number(fastener.correction(), Dimension.POINT_TRANSMITTANCE),
                Format.of("U %+.1f %%", 100 * PER_AREA * result.chi().middle() / result.transmittance())));
    }
}
