package coldseam.report.pages;

import coldseam.audit.TerraceLine;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.words.Phrases;
import coldseam.report.words.TerraceWords;

/** A plain line for each terrace deck over a heated room. */
public final class TerracePanels {

    private TerracePanels() {}

    public static void write(Page page) {
        if (page.audit().terraces().isEmpty()) {
            return;
        }
        Flow flow = page.flow();
        flow.heading("Terraces");
        for (TerraceLine line : page.audit().terraces()) {
            flow.add(Blocks.panel(
                    Blocks.stack(
                            2,
                            Blocks.text(
                                    Rich.strong(Phrases.capital(line.surface().name()) + ": "
                                            + (line.safe() ? "dry under the deck" : "wet under the deck")),
                                    Style.BODY.with(line.safe() ? Palette.MOSS : Palette.EMBER)),
                            Blocks.text(
                                    Phrases.capital(TerraceWords.brief(
                                                    line, page.print().units())) + ".",
                                    Style.BODY)),
                    Palette.FROST,
                    line.safe() ? Palette.MOSS : Palette.EMBER));
            flow.space(6);
        }
    }
}
