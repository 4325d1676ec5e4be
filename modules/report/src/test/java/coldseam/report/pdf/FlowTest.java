package coldseam.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class FlowTest {

    private static final DocumentInfo INFO = new DocumentInfo("t", "s", "c", "k", 1);

    private static PDDocument set(java.util.function.Consumer<Flow> content) throws IOException {
        try (Flow flow = new Flow(Paper.A4, INFO)) {
            content.accept(flow);
            return Loader.loadPDF(flow.finish("head", "foot"));
        }
    }

    private static String page(PDDocument document, int number) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        return stripper.getText(document);
    }

    @Test
    void aTableRunsOverPagesWithItsHeadRepeated() throws IOException {
        Table table = Table.of(Table.Column.share("the head", 1), Table.Column.number("size", 60));
        for (int i = 0; i < 130; i++) {
            table = table.row("row " + i + ".", Integer.toString(i));
        }
        Table all = table;
        try (PDDocument document = set(flow -> flow.add(all))) {
            assertTrue(document.getNumberOfPages() > 2);
            StringBuilder text = new StringBuilder();
            for (int p = 1; p <= document.getNumberOfPages(); p++) {
                assertTrue(page(document, p).contains("the head"), "page " + p);
                text.append(page(document, p));
            }
            for (int i = 0; i < 130; i++) {
                assertTrue(text.indexOf("row " + i + ".") >= 0, "row " + i);
            }
        }
    }

    @Test
    void aRowHigherThanAPageIsCutAtALine() throws IOException {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < 3000; i++) {
            words.append("w").append(i).append("_ ");
        }
        Table table = Table.of(Table.Column.share("head", 1)).row(words.toString());
        try (PDDocument document = set(flow -> flow.add(table))) {
            String all = new PDFTextStripper().getText(document);
            for (int i = 0; i < 3000; i++) {
                assertTrue(all.contains("w" + i + "_"), "word " + i);
            }
        }
    }

    /** A table that runs over a page takes at least two rows along. */
    @Test
    void aTablesLastRowDoesNotStandAlone() throws IOException {
        for (int before = 30; before < 48; before++) {
            Table table = Table.of(Table.Column.share("head", 1));
            for (int i = 0; i < before; i++) {
                table = table.row("filler");
            }
            Table all = table.row("the last but one").row("the very last");
            try (PDDocument document = set(flow -> flow.add(all))) {
                for (int p = 1; p <= document.getNumberOfPages(); p++) {
                    String text = page(document, p);
                    assertEquals(
                            text.contains("the last but one"), text.contains("the very last"), before + " rows before");
                }
            }
        }
    }

    @Test
    void aGroupsTitleStandsWithItsFirstRow() throws IOException {
        for (int before = 30; before < 48; before++) {
            Table table = Table.of(Table.Column.share("head", 1));
            for (int i = 0; i < before; i++) {
                table = table.row("filler");
            }
            Table all = table.row(Table.Kind.GROUP, Table.Cell.of("the group")).row("its first row");
            try (PDDocument document = set(flow -> flow.add(all))) {
                for (int p = 1; p <= document.getNumberOfPages(); p++) {
                    String text = page(document, p);
                    assertEquals(text.contains("the group"), text.contains("its first row"), before + " rows before");
                }
            }
        }
    }

    /** Two headings, one under the other, stand with the first line of what is told under them, or a table's first row. */
    @Test
    void aHeadingStandsWithWhatFollowsIt() throws IOException {
        Block item = Blocks.item("–", Rich.of("followed by " + "word ".repeat(120)), Style.BODY);
        Table table = Table.of(Table.Column.share("head", 1)).row("followed by " + "word ".repeat(160));
        for (int before = 30; before < 60; before++) {
            for (boolean tabled : new boolean[] {false, true}) {
                int lines = before;
                try (PDDocument document = set(flow -> {
                    for (int i = 0; i < lines; i++) {
                        flow.body("filler");
                    }
                    flow.heading("the chapter");
                    flow.space(4);
                    flow.heading("its first part");
                    if (tabled) {
                        flow.add(table);
                    } else {
                        flow.add(item);
                    }
                })) {
                    for (int p = 1; p <= document.getNumberOfPages(); p++) {
                        String text = page(document, p);
                        assertEquals(text.contains("the chapter"), text.contains("followed"), before + " lines");
                        assertEquals(text.contains("its first part"), text.contains("followed"), before + " lines");
                    }
                }
            }
        }
    }

    @Test
    void columnsTooHighForAPageAreSetOneAfterTheOther() throws IOException {
        Block tall = Blocks.stack(
                Lists.immutable.withAll(java.util.stream.IntStream.range(0, 90)
                        .mapToObj(i -> Blocks.text("line " + i + ".", Style.BODY))
                        .toList()),
                0);
        Block beside = Blocks.beside(10, Lists.immutable.of(0.5, 0.5), tall, Blocks.text("the other", Style.BODY));
        try (PDDocument document = set(flow -> flow.add(beside))) {
            String all = new PDFTextStripper().getText(document);
            assertTrue(all.contains("line 89.") && all.contains("the other"), all);
            assertEquals(2, document.getNumberOfPages());
        }
    }
}
