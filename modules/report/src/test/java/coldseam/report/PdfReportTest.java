package coldseam.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.UpkeepItem;
import coldseam.envelope.Submittal;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.Keeping;
import coldseam.report.pdf.Paper;
import coldseam.report.words.FindingWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.UpkeepWords;
import coldseam.report.words.VerdictWords;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class PdfReportTest {

    private static final Audit AUDIT = SampleAudit.create();
    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);
    private static final byte[] A4 = PdfReport.bytes(AUDIT, UnitSystem.SI, Paper.A4, Keeping.NOTHING);
    private static final String TEXT = text(A4);

    private static String text(byte[] pdf) {
        return text(pdf, 1, Integer.MAX_VALUE);
    }

    private static String text(byte[] pdf, int first, int last) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            stripper.setStartPage(first);
            stripper.setEndPage(last);
            return stripper.getText(document).replace('\u00a0', ' ');
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Without line ends and blanks, since columns break sentences anywhere. */
    private static String packed(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void saysTheVerdictOnTheFirstPage() {
        String cover = text(A4, 1, 1);
        assertTrue(cover.contains("Not unbroken"), cover);
        assertTrue(cover.contains(VerdictWords.below(AUDIT.verdict())), cover);
        assertTrue(cover.contains(AUDIT.house().name()), cover);
        assertTrue(cover.contains("96.7 W/K"), cover);
        assertTrue(cover.contains("Linnet Lane, plot 4"), cover);
        assertTrue(
                packed(cover)
                        .contains(
                                packed(
                                        "; mould and condensation (by diffusion alone) judged by months, condensation inside \"slab on foam\" not judged.")),
                cover);
        assertTrue(cover.contains("prepared by the rater · 2026-10-03 · revision B"), cover);
    }

    /** Where the first page is full, the list of contents goes with its heading, not over what stands there. */
    @Test
    void theContentsStandWhereTheirHeadingDoes() {
        byte[] full = PdfReport.bytes(
                SampleAudit.create("Linnet Yard 4, second house on the left ".repeat(14)),
                UnitSystem.SI,
                Paper.A4,
                Keeping.NOTHING);
        String first = text(full, 1, 1);
        String second = text(full, 2, 2);
        assertFalse(first.contains("In this report"), first);
        assertFalse(first.contains("Edge register"), first);
        assertTrue(second.contains("In this report"), second);
        assertTrue(second.contains("Edge register"), second);
    }

    /**
     * By the sample's areas: 179.2 m² of walls, 80 m² of terrace and roof, 80 m² of floor, nine tenths of each indoors; plaster is on
     * walls and roofs, inside of what carries.
     */
    @Test
    void listsWhatIsBroughtAndHowMuchOfIt() throws IOException {
        String list = quantities(A4);
        for (String line : List.of(
                "mineral wool board 160 mm 179 29 brick wall",
                "mineral wool board 240 mm 80 19 warm flat roof",
                "gypsum plaster 15 mm 233 3.5 brick wall",
                "reinforced concrete 200 mm 72…80 14…16 slab",
                "J1 Slab edge Slab run out to the face 36")) {
            assertTrue(list.contains(packed(line)), () -> line + "\n" + list);
        }
    }

    /** In numbers a household knows: at -10 °C the coldest spot has -10 + fRsi times 30. */
    @Test
    void tellsWhoLivesThereWhatItTakes() {
        String first = packed(text(A4, 1, 1));
        assertTrue(
                first.contains(packed(
                        "To keep 20 °C indoors while it is −10 °C outdoors takes about 2900 W, and 7900 kWh a year (1\u2009100"
                                + " EUR), of which sun and people give a part; fresh air is not included. The coldest spot"
                                + " inside, on sheet J1, then has about 10 °C; mould may grow there once the air indoors has"
                                + " 41 % of humidity, and it has 50 %.")),
                first);
    }

    private static String quantities(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String raw = packed(new PDFTextStripper().getText(document));
            int start = raw.indexOf(packed("Net, openings taken off"));
            return raw.substring(start, raw.indexOf(packed("What a seam takes beside"), start));
        }
    }

    @Test
    void showsEveryFindingWithItsPlaceAndRemedy() throws IOException {
        // Columns stand side by side, so each is read by itself: unsorted text keeps a cell together.
        String raw;
        try (PDDocument document = Loader.loadPDF(A4)) {
            raw = packed(new PDFTextStripper().getText(document));
        }
        for (Finding finding : AUDIT.findings()) {
            assertTrue(raw.contains(packed(WORDS.title(finding))), WORDS.title(finding));
            assertTrue(raw.contains(packed(WORDS.what(finding))), WORDS.what(finding));
            assertTrue(raw.contains(packed(WORDS.place(finding))), WORDS.place(finding));
            assertTrue(raw.contains(packed(WORDS.toDo(finding))), WORDS.toDo(finding));
        }
    }

    /** Each time is told once, above all that is done then. */
    @Test
    void tellsTheOwnerWhatIsLookedAfterWhenAndWhere() throws IOException {
        String page;
        try (PDDocument document = Loader.loadPDF(A4)) {
            String raw = packed(new PDFTextStripper().getText(document));
            int start = raw.indexOf(packed("What the owner looks after"));
            page = raw.substring(start, raw.indexOf("Inputsandtheirsources", start));
        }
        assertTrue(page.contains(packed(UpkeepWords.CAUTION)), page);
        String often = "";
        for (UpkeepItem item : AUDIT.upkeep()) {
            String time = Phrases.capital(item.upkeep().often());
            String look = packed(item.upkeep().look());
            assertTrue(page.contains(packed(time.equals(often) ? "" : time) + look), look);
            assertFalse(time.equals(often) && page.contains(packed(time) + look), look);
            String where = item.assemblies()
                    .newWithAll(item.sheets().collect(BridgeSheet::kind))
                    .getFirst();
            assertTrue(page.substring(page.indexOf(look) + look.length()).startsWith(packed(where)), look + where);
            often = time;
        }
    }

    @Test
    void hasASheetForEveryJunctionWithBothPsiValues() {
        for (BridgeSheet<JunctionResult> sheet : AUDIT.sheets()) {
            assertTrue(TEXT.contains(sheet.id() + " · "), sheet.id());
            assertTrue(TEXT.contains(sheet.result().detail().name()), sheet.id());
        }
        assertTrue(TEXT.contains(" · faces the ground and open air · "), "what a slab's edge faces");
        assertTrue(TEXT.contains("0.581 W/(m·K)"), "psi to the digits that inputs allow");
        assertTrue(TEXT.contains("52 % relative humidity"), "the humidity a builder understands");
        assertTrue(
                // The number stands at the end of the first of two lines.
                Pattern.compile("U of the wall, without[^f]{0,40}fasteners")
                        .matcher(TEXT)
                        .find(),
                "what the heat-loss page's U has besides");
    }

    /** Two numbers with three digits at the end of a line: the bounds of the heat-loss table. */
    private static final Pattern BOUNDS =
            Pattern.compile("([-−]?\\d+\\.\\d{3}) ([-−]?\\d+\\.\\d{3})$", Pattern.MULTILINE);

    private static void addsUp(byte[] pdf) {
        String text = text(pdf);
        int start = text.indexOf("Heat-loss coefficient by transmission");
        String table = text.substring(start, text.indexOf("What follows from it", start));
        List<BigDecimal[]> lines = new ArrayList<>();
        List<BigDecimal[]> sums = new ArrayList<>();
        BigDecimal[] total = null;
        for (String row : table.split("\n")) {
            Matcher m = BOUNDS.matcher(row.strip());
            if (m.find()) {
                BigDecimal[] bounds = {
                    new BigDecimal(m.group(1).replace('−', '-')),
                    new BigDecimal(m.group(2).replace('−', '-'))
                };
                if (row.startsWith("Sum of all lines")) {
                    total = bounds;
                } else if (row.contains(" together ")) {
                    sums.add(bounds);
                } else {
                    lines.add(bounds);
                }
            }
        }
        assertEquals(AUDIT.heatLoss().lines().size(), lines.size(), table);
        for (int i = 0; i < 2; i++) {
            int bound = i;
            BigDecimal all = lines.stream().map(b -> b[bound]).reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal bySums = sums.stream().map(b -> b[bound]).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertEquals(all, total[bound]);
            assertEquals(all, bySums);
        }
    }

    @Test
    void printsAHeatLossTableThatAddsUp() {
        addsUp(A4);
        addsUp(PdfReport.bytes(AUDIT, UnitSystem.US, Paper.LETTER, Keeping.NOTHING));
    }

    @Test
    void embedsASubsetOfEveryFont() throws IOException {
        try (PDDocument document = Loader.loadPDF(A4)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().matches("[A-Z]{6}\\+SourceSans3-.*"), font.getName());
                }
            }
        }
    }

    @Test
    void drawsNoPixels() throws IOException {
        try (PDDocument document = Loader.loadPDF(A4)) {
            for (PDPage page : document.getPages()) {
                assertFalse(page.getResources().getXObjectNames().iterator().hasNext(), "only vectors");
            }
        }
    }

    /** What a validator of PDF/A-3b looks at first; the whole was run through one by hand on 2026-11-25 and passed. */
    @Test
    void declaresItselfFitForKeepingAndCarriesItsData() throws IOException {
        try (PDDocument document = Loader.loadPDF(A4)) {
            var catalog = document.getDocumentCatalog();
            String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(xmp.contains("<pdfaid:part>3</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>"), xmp);
            assertTrue(xmp.contains(document.getDocumentInformation().getTitle()), xmp);
            assertEquals(1, catalog.getOutputIntents().size());
            var file = new PDDocumentNameDictionary(catalog)
                    .getEmbeddedFiles()
                    .getNames()
                    .get("audit.json");
            assertEquals(
                    AuditJson.text(AUDIT), new String(file.getEmbeddedFile().toByteArray(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void hasThePaperAskedFor() throws IOException {
        try (PDDocument document = Loader.loadPDF(A4)) {
            // 210 mm × 297 mm (ISO 216).
            assertEquals(595.276, document.getPage(0).getMediaBox().getWidth(), 0.001);
            assertEquals(841.890, document.getPage(0).getMediaBox().getHeight(), 0.001);
        }
        try (PDDocument document =
                Loader.loadPDF(PdfReport.bytes(AUDIT, UnitSystem.US, Paper.LETTER, Keeping.NOTHING))) {
            assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.001);
            assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 0.001);
        }
    }

    @Test
    void isTheSameDocumentByteForByte() {
        assertArrayEquals(A4, PdfReport.bytes(AUDIT, UnitSystem.SI, Paper.A4, Keeping.NOTHING));
    }

    @Test
    void numbersEveryPageAndNamesTheInput() throws IOException {
        try (PDDocument document = Loader.loadPDF(A4)) {
            int pages = document.getNumberOfPages();
            for (int i = 1; i <= pages; i++) {
                String page = text(A4, i, i);
                assertTrue(page.contains("page " + i + " of " + pages), page);
                assertTrue(page.contains("SHA-256 " + AUDIT.inputDigest().substring(0, 16)), page);
            }
            assertTrue(document.getDocumentCatalog().getDocumentOutline().hasChildren());
            assertTrue(document.getDocumentInformation()
                    .getTitle()
                    .contains(AUDIT.house().name()));
        }
        assertTrue(packed(TEXT).contains(AUDIT.inputDigest()), "the whole digest stands at the end");
        String first = packed(text(A4, 1, 1));
        assertTrue(first.contains("SHA-256" + AUDIT.inputDigest()), "and on the page that is filed alone");
        assertTrue(first.contains(packed("Surfaces 339.2 m² in external dimensions, ")), first);
        // Text is read by columns: the names of the files, then their digests.
        assertTrue(packed(TEXT).contains(SampleAudit.OWN_DIGEST), "and that of each detail of the house's own");
    }

    @Test
    void asksForWhatASubmittalMustBear() {
        byte[] unsigned = PdfReport.bytes(
                SampleAudit.create("Linnet Yard 4", Submittal.NONE), UnitSystem.SI, Paper.A4, Keeping.NOTHING);
        String said = "Not said in the house file (submittal): the address, who prepared it and its date.";
        assertTrue(text(unsigned, 1, 1).contains(said), () -> text(unsigned, 1, 1));
        assertFalse(TEXT.contains("Not said in the house file"), "the sample says by whom and when");
    }

    /** Many a house is called by its address. */
    @Test
    void saysTheAddressOnceWhereTheHouseIsCalledByIt() {
        Submittal none = Submittal.NONE;
        Submittal there = new Submittal(
                Optional.of("linnet yard 4"), none.client(), none.preparedBy(), none.date(), none.revision());
        String page = text(
                PdfReport.bytes(SampleAudit.create("Linnet Yard 4", there), UnitSystem.SI, Paper.A4, Keeping.NOTHING),
                1,
                1);
        assertFalse(page.contains("linnet yard 4"), page);
        assertTrue(page.contains("(submittal): who prepared it and its date."), page);
    }

    @Test
    void leavesRoomToSignAndNamesWhoHandsItIn() {
        String handed = TEXT.substring(TEXT.lastIndexOf("Handed in and reviewed"));
        assertTrue(
                Pattern.compile(
                                "name\\s+date\\s+signature\\s+prepared by\\s+the rater\\s+reviewed by\\s+What was looked at")
                        .matcher(handed)
                        .find(),
                handed);
    }

    /** Who has a sheet in hand finds its gap in the drawing of the house, and who has the gap finds its edges. */
    @Test
    void sheetsAndRegisterBearTheNumbersOfTheDrawing() {
        Matcher sheet = Pattern.compile("J1 · Slab edge[ .]+(\\d+)").matcher(text(A4, 1, 2));
        assertTrue(sheet.find(), () -> text(A4, 1, 2));
        int page = Integer.parseInt(sheet.group(1));
        assertTrue(text(A4, page, page).contains("Found here: gap 1"), () -> text(A4, page, page));
        assertTrue(
                Pattern.compile("slab edge: floor, south wall\\s+J1\\s+1\\s+10\\.00")
                        .matcher(TEXT)
                        .find(),
                TEXT);
    }

    @Test
    void listsItsSectionsWithTheirPages() {
        Matcher m = Pattern.compile("Heat loss\\s+(\\d+)").matcher(text(A4, 2, 2));
        assertTrue(m.find());
        int page = Integer.parseInt(m.group(1));
        assertTrue(text(A4, page, page).contains("Heat-loss coefficient by transmission"));
    }

    @Test
    void bookmarksLeadToEverySectionAndTheSheetsAreOneGroup() throws IOException {
        try (PDDocument document = Loader.loadPDF(A4)) {
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            assertEquals(
                    "Continuous insulation audit: " + AUDIT.house().name(),
                    document.getDocumentInformation().getTitle());
            List<String> top = new ArrayList<>();
            List<String> sheets = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                top.add(item.getTitle());
                assertTrue(item.findDestinationPage(document) != null, item.getTitle());
                for (PDOutlineItem under : item.children()) {
                    sheets.add(under.getTitle());
                }
            }
            assertEquals(1, top.stream().filter("Junctions"::equals).count(), top::toString);
            assertTrue(
                    top.containsAll(
                            List.of("Verdict", "Areas", "Heat loss", "Edge register", "Moisture", "Hold points")),
                    top::toString);
            assertEquals(AUDIT.sheets().size(), sheets.size(), sheets::toString);
            assertTrue(sheets.get(0).startsWith("J1 · Slab edge: "), sheets::toString);
        }
    }

    /** What is drawn is either a part of the reading order or decoration, and each part knows its page's content. */
    @Test
    void isTaggedInReadingOrderWithWordsForItsFigures() throws IOException {
        try (PDDocument document = Loader.loadPDF(A4)) {
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            List<PDStructureElement> parts = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot(), parts);
            List<String> types =
                    parts.stream().map(PDStructureElement::getStructureType).toList();
            assertEquals("Document", types.get(0));
            assertEquals(1, types.stream().filter("H1"::equals).count());
            assertTrue(types.contains("TOC"), types::toString);
            assertTrue(types.indexOf("TOC") < types.indexOf("H2"), "contents before the first section");
            assertTrue(types.containsAll(List.of("H3", "P", "Table", "TR", "TH", "TD", "Figure")), types::toString);
            for (PDStructureElement part : parts) {
                if (part.getStructureType().equals("Figure")) {
                    assertFalse(part.getAlternateDescription().isBlank(), "a figure without words");
                }
            }
            assertTrue(parts.stream()
                    .anyMatch(part -> part.getStructureType().equals("Figure")
                            && part.getAlternateDescription().startsWith("Section of the slab edge, ")));
            int marked = 0;
            for (PDPage page : document.getPages()) {
                marked += check(page);
            }
            long leaves = parts.stream()
                    .filter(part -> part.getCOSObject().getItem(COSName.K) instanceof COSInteger)
                    .count();
            assertEquals(leaves, marked, "every marked content belongs to one part");
            assertTrue(document.getPage(1).getAnnotations().size() > 10, "contents lead to their pages");
        }
    }

    private static void collect(PDStructureNode node, List<PDStructureElement> into) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                into.add(element);
                collect(element, into);
            }
        }
    }

    /** Counts a page's numbered contents; nothing may be painted outside marked content. */
    private static int check(PDPage page) throws IOException {
        int depth = 0;
        int numbered = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof Operator operator) {
                String name = operator.getName();
                if (name.equals("BMC") || name.equals("BDC")) {
                    depth++;
                    numbered += name.equals("BDC") ? 1 : 0;
                    assertEquals(1, depth, "marked content within marked content");
                } else if (name.equals("EMC")) {
                    depth--;
                } else if (List.of("Tj", "TJ", "f", "S", "s", "B").contains(name)) {
                    assertEquals(1, depth, name + " outside marked content");
                }
            }
        }
        assertEquals(0, depth);
        return numbered;
    }

    @Test
    void saysWhatMoistureDoes() {
        int from = TEXT.indexOf("Mould on inner surfaces");
        assertTrue(from > 0);
        String moisture = TEXT.substring(from, TEXT.indexOf("Hold points", from));
        assertTrue(packed(moisture).contains(packed("below the limit")), moisture);
        assertTrue(packed(moisture).contains(packed("it meets the ground, for which the")), moisture);
        assertTrue(moisture.contains("driving rain"), "the limits of the method");
        // The made-up months ask for most in February or January, never in a warm one.
        assertTrue(moisture.contains("asks for most"), moisture);
        assertTrue(text(A4, 1, 1).contains("the house has 50 %"));
    }

    /**
     * By hand: 30 K over 0.13 + 0.015/0.57 + 0.24/0.77 + 0.16/0.036 + 0.02/0.87 + 0.04 = 4.975 m²·K/W; 0.468 of it lies
     * inside the masonry's outer face and 4.912 inside the board's.
     */
    @Test
    void saysHowColdEachLayerGetsWhereItMeetsOutdoorAir() {
        String assemblies = packed(TEXT.substring(TEXT.indexOf("Layers from inside to outside")));
        assertTrue(assemblies.contains(packed("inner surface 0.13 19.2")), assemblies);
        assertTrue(assemblies.contains(packed("solid brick masonry air 240 mm 0.770 0.31 17.2")), assemblies);
        assertTrue(assemblies.contains(packed("mineral wool board heat 160 mm 0.036 4.44 −9.6")), assemblies);
        assertTrue(assemblies.contains(packed("outer surface 0.04 −10.0")), assemblies);
        // The ground is not as cold as the air.
        assertTrue(assemblies.contains(packed("extruded polystyrene board heat 120 mm 0.034 3.53 –")), assemblies);
    }

    @Test
    void drawsTheBestOptionWhereItSavesWhatTheTotalShows() {
        String all = packed(TEXT);
        assertEquals(1, all.split(packed("It is drawn at the end of this sheet"), -1).length - 1, TEXT);
        assertEquals(1, all.split(packed("does not show as much, so it is not drawn"), -1).length - 1, TEXT);
        assertEquals(1, all.split(packed("Best option of the catalogue for these layers:"), -1).length - 1, TEXT);
    }

    @Test
    void printsUsUnitsOnlyWhereAskedTo() {
        String us = text(PdfReport.bytes(AUDIT, UnitSystem.US, Paper.LETTER, Keeping.NOTHING));
        int end = us.indexOf(
                "Inputs and their sources",
                us.indexOf("Hold points", us.indexOf("Heat-loss coefficient by transmission")));
        // What the audit itself says in words (findings, inputs, method) is the audit's; numbers of the report are
        // ours.
        String numbers = us.substring(us.indexOf("Heat-loss coefficient by transmission"), end);
        assertFalse(numbers.contains("W/K"), numbers);
        assertFalse(numbers.contains("W/(m"), numbers);
        assertTrue(numbers.contains("Btu/(h·ft·°F)"), numbers);
        assertTrue(numbers.contains("θ, °F") && !numbers.contains("°C"), numbers);
        // Lengths in a detail's sentences come in inches, what was written behind them.
        String sheets = us.substring(0, us.indexOf("Heat-loss coefficient by transmission"));
        String rest = sheets.replaceAll("\\(\\d+\\s+mm\\)", "");
        assertTrue(rest.length() < sheets.length(), sheets);
        assertFalse(rest.matches("(?s).*\\d\\s+mm\\b.*"), rest);
    }

    /** Collects glyphs that stand outside the margins. */
    private static List<String> outside(byte[] pdf, double left, double right, double top, double bottom)
            throws IOException {
        List<String> out = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    for (TextPosition p : positions) {
                        double width = document.getPage(getCurrentPageNo() - 1)
                                .getMediaBox()
                                .getWidth();
                        double height = document.getPage(getCurrentPageNo() - 1)
                                .getMediaBox()
                                .getHeight();
                        float x = p.getTextMatrix().getTranslateX();
                        float y = p.getTextMatrix().getTranslateY();
                        boolean upright = Math.abs(p.getDir()) < 1;
                        double end = upright ? x + p.getWidthDirAdj() : x;
                        // The blank after a line's last word keeps words apart and shows nothing.
                        boolean shows = !p.getUnicode().isBlank();
                        if (shows && (x < left - 0.5 || end > width - right + 0.5 || y < bottom || y > height - top)) {
                            out.add("page " + getCurrentPageNo() + " at " + x + ", " + y + ": " + text);
                        }
                    }
                }
            };
            stripper.writeText(document, new StringWriter());
        }
        return out.stream().distinct().toList();
    }

    @Test
    void keepsAllTextWithinTheMargins() throws IOException {
        String name = "The long house of the very long name that runs on past the edge of any sheet of paper, "
                + "Unbreakable" + "wordofverymanyletters".repeat(8);
        for (Paper paper : Paper.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                byte[] pdf = PdfReport.bytes(SampleAudit.create(name), units, paper, Keeping.NOTHING);
                // 54 points at the sides; heads stand 46 points below the upper edge, feet 36 above the lower.
                assertEquals(List.of(), outside(pdf, 54, 54, 40, 30), paper + " " + units);
            }
        }
    }

    @Test
    void bearsNamesThatNoFontHas() {
        String text = text(PdfReport.bytes(
                SampleAudit.create("家 House\t\u0007 \uD83C\uDFE0"), UnitSystem.SI, Paper.A4, Keeping.NOTHING));
        assertTrue(text.contains("? House"), text.substring(0, 200));
    }
}
