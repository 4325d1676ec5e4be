package coldseam.report.pdf;

import coldseam.junctions.Keeping;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Type;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** A PDF being written; the same steps give the same bytes. */
final class PdfDocument implements AutoCloseable {

    private final PDDocument document = new PDDocument();
    private final Map<Face, PDFont> fonts = new EnumMap<>(Face.class);
    private final List<PDPage> pages = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final List<PDOutlineItem> branch = new ArrayList<>();
    private final Paper paper;
    private final StructureTree structure;
    private final Keeping keeping;
    private final Steps steps = new Steps();
    private PDPageContentStream stream;

    /** How hard pages are packed, of 9: a third of the usual 6's time, for files a twentieth larger. PDFBox reads it from a property alone. */
    private static final String PACKING = "4";

    static {
        System.setProperty(Filter.SYSPROP_DEFLATELEVEL, PACKING);
    }

    /** Pages whose steps wait at most, with as many that are being written: their drawings are in memory. */
    private static final int WAITING = 8;

    /**
     * Opens a document. Whatever PDFBox does is a step, since it knows no threads.
     *
     * @param keeping what earlier runs drew
     */
    PdfDocument(Paper paper, DocumentInfo info, Keeping keeping) {
        this.paper = paper;
        this.keeping = keeping;
        this.structure = new StructureTree(document);
        steps.add(() -> open(info));
    }

    /** Loads the classes of PDFBox that a document begins with. */
    static void prepare() {
        attempt(() -> new PDDocument().close());
    }

    private void open(DocumentInfo info) {
        for (Face face : Face.values()) {
            attempt(() -> {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Shipped.font(face)));
                // Ligatures would make the set width another than the measured one, and words hard to search for.
                font.setEnableGsub(false);
                fonts.put(face, PDType0Font.load(document, font, true));
            });
        }
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(info.title());
        about.setSubject(info.subject());
        about.setCreator(info.creator());
        about.setProducer(info.creator());
        about.setKeywords(info.keywords());
        document.setDocumentInformation(about);
        document.setDocumentId(info.identity());
        attempt(() -> new Archive(document).declare(info));
        document.getDocumentCatalog().setDocumentOutline(outline);
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
        shown.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(shown);
    }

    /** A step of PDFBox. */
    interface Step {
        void run() throws IOException;
    }

    static void attempt(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Begins a page, which is written once the drawings on it and on those before it are made. */
    Canvas page(String title) {
        if (pages.size() % WAITING == 0) {
            steps.take();
        }
        PDPage page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
        pages.add(page);
        titles.add(title);
        AtomicReference<Canvas> own = new AtomicReference<>();
        steps.add(() -> {
            closePage();
            document.addPage(page);
            attempt(() -> stream = new PDPageContentStream(document, page));
            own.set(new PdfCanvas(stream, fonts, structure, page));
        });
        return new DeferredCanvas(steps, keeping, own::get);
    }

    /** Begins work on another core; see {@link Steps#beside}. */
    <T> Supplier<T> beside(Callable<T> work) {
        return steps.beside(work);
    }

    int pageCount() {
        return pages.size();
    }

    /** Names the running title of the page that is open. */
    void title(String title) {
        titles.set(titles.size() - 1, title);
    }

    /** Adds a bookmark to the open page. */
    void bookmark(int level, String text, double top) {
        PDPage page = pages.get(pages.size() - 1);
        steps.add(() -> bookmark(level, text, page, top));
    }

    private void bookmark(int level, String text, PDPage page, double top) {
        PDPageXYZDestination target = new PDPageXYZDestination();
        target.setPage(page);
        target.setLeft(0);
        target.setTop((int) Math.ceil(top));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(FontMetrics.shared().settable(text));
        item.setDestination(target);
        while (branch.size() >= level) {
            branch.remove(branch.size() - 1);
        }
        PDOutlineNode parent = branch.isEmpty() ? outline : branch.get(branch.size() - 1);
        parent.addLast(item);
        branch.add(item);
    }

    /** Writes all pages so far. */
    private void written() {
        steps.finish();
        closePage();
    }

    private void closePage() {
        if (stream != null) {
            attempt(stream::close);
            stream = null;
        }
    }

    /** Puts a file inside. */
    void attach(String name, String says, String json) {
        written();
        attempt(() -> new Archive(document).attach(name, says, json));
    }

    /** Draws more onto a page that is done. */
    void onto(int page, Consumer<Canvas> drawing) {
        written();
        attempt(() -> {
            try (PDPageContentStream more = new PDPageContentStream(
                    document, pages.get(page), PDPageContentStream.AppendMode.APPEND, true, true)) {
                drawing.accept(new PdfCanvas(more, fonts, structure, pages.get(page)));
            }
        });
    }

    /** Keeps a place in the reading order for the list of contents. */
    void reserveContents() {
        steps.add(structure::reserveContents);
    }

    /** Draws the list of contents onto a page that is done. */
    void contentsOnto(int page, Consumer<Canvas> drawing) {
        written();
        structure.reopenContents();
        onto(page, drawing);
        structure.close();
    }

    /** Lets a box of a page lead to another page. */
    void link(int page, Box box, int target) {
        PDPage from = pages.get(page);
        PDPage to = pages.get(target);
        steps.add(() -> link(from, box, to));
    }

    private void link(PDPage from, Box box, PDPage to) {
        PDAnnotationLink link = new PDAnnotationLink();
        link.setRectangle(
                new PDRectangle((float) box.x0(), (float) box.y0(), (float) box.width(), (float) box.height()));
        PDPageFitWidthDestination there = new PDPageFitWidthDestination();
        there.setPage(to);
        there.setTop((int) paper.height());
        link.setDestination(there);
        PDBorderStyleDictionary none = new PDBorderStyleDictionary();
        none.setWidth(0);
        link.setBorderStyle(none);
        link.setPrinted(true);
        attempt(() -> from.getAnnotations().add(link));
    }

    /** Heads and feet of all pages but the head of the first; then the bytes. */
    byte[] finish(Margins margins, String head, String foot) {
        written();
        Type small = new Type(Face.REGULAR, 7.6, Palette.SLATE);
        double left = margins.left();
        double right = paper.width() - margins.right();
        for (int i = 0; i < pages.size(); i++) {
            int page = i;
            onto(page, canvas -> {
                double top = paper.height() - margins.top() + 16;
                if (page > 0) {
                    double room = (right - left) * 0.48;
                    canvas.text(Cut.to(room, head, small), left, top, small, Align.LEFT);
                    canvas.text(Cut.to(room, titles.get(page), small), right, top, small, Align.RIGHT);
                    canvas.line(left, top - 4, right, top - 4, Pen.of(0.4, Palette.RULE));
                }
                double bottom = margins.bottom() - 22;
                canvas.line(left, bottom + 10, right, bottom + 10, Pen.of(0.4, Palette.RULE));
                canvas.text(foot, left, bottom, small, Align.LEFT);
                canvas.text("page " + (page + 1) + " of " + pages.size(), right, bottom, small, Align.RIGHT);
            });
        }
        structure.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        attempt(() -> document.save(out));
        return out.toByteArray();
    }

    @Override
    public void close() {
        steps.close();
        closePage();
        attempt(document::close);
    }
}
