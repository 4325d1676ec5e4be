package coldseam.report.pdf;

import coldseam.report.drawing.Tag;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * The logical structure of a document: which marked content of which page is a heading, a paragraph, a cell or a figure with
 * its alternative text (ISO 32000-1:2008 14.7 and 14.8, from memory).
 *
 * <p>The document is tagged, in reading order; it does not claim to keep to PDF/UA.
 */
final class StructureTree {

    private static final COSName ATTRIBUTES = COSName.getPDFName("A");
    private static final COSName OWNER = COSName.getPDFName("O");

    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final List<PDStructureNode> open = new ArrayList<>();

    /** For each page, the elements of its marked contents by their number. */
    private final Map<PDPage, List<PDStructureElement>> owners = new LinkedHashMap<>();

    private PDStructureElement contents;

    /** The tree of a document without parts. */
    StructureTree(PDDocument document) {
        PDStructureElement whole = new PDStructureElement("Document", root);
        root.appendKid(whole);
        open.add(whole);
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDMarkInfo info = new PDMarkInfo();
        info.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(info);
    }

    /** Opens a part inside the one that is open. */
    void open(Tag tag, String alternative) {
        PDStructureNode parent = open.get(open.size() - 1);
        PDStructureElement element = new PDStructureElement(name(tag), parent);
        if (!alternative.isEmpty()) {
            element.setAlternateDescription(alternative);
        }
        if (tag == Tag.HEAD_CELL) {
            COSDictionary scope = new COSDictionary();
            scope.setName(OWNER, "Table");
            scope.setName("Scope", "Column");
            element.getCOSObject().setItem(ATTRIBUTES, scope);
        }
        parent.appendKid(element);
        open.add(element);
    }

    /** Gives the open part the next marked content of a page, and its number. */
    int mark(PDPage page) {
        PDStructureElement element = (PDStructureElement) open.get(open.size() - 1);
        List<PDStructureElement> own = owners.computeIfAbsent(page, none -> new ArrayList<>());
        int number = own.size();
        own.add(element);
        element.setPage(page);
        element.getCOSObject().setItem(COSName.K, COSInteger.get(number));
        return number;
    }

    /** Closes the open part. */
    void close() {
        open.remove(open.size() - 1);
    }

    /** Keeps a place for the list of contents, which is drawn last. */
    void reserveContents() {
        open(Tag.CONTENTS, "");
        contents = (PDStructureElement) open.get(open.size() - 1);
        close();
    }

    /** Opens the list of contents once more, where one was reserved. */
    void reopenContents() {
        open.add(contents == null ? open.get(open.size() - 1) : contents);
    }

    /** Writes down which part each marked content belongs to. */
    void finish() {
        COSArray numbers = new COSArray();
        int key = 0;
        for (Map.Entry<PDPage, List<PDStructureElement>> page : owners.entrySet()) {
            COSArray elements = new COSArray();
            page.getValue().forEach(element -> elements.add(element.getCOSObject()));
            page.getKey().setStructParents(key);
            page.getKey().getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
            numbers.add(COSInteger.get(key));
            numbers.add(elements);
            key++;
        }
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, numbers);
        root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
        root.setParentTreeNextKey(key);
    }

    private static String name(Tag tag) {
        return switch (tag) {
            case TITLE -> "H1";
            case HEADING -> "H2";
            case SUBHEADING -> "H3";
            case PARAGRAPH -> "P";
            case FIGURE -> "Figure";
            case CONTENTS -> "TOC";
            case TABLE -> "Table";
            case ROW -> "TR";
            case HEAD_CELL -> "TH";
            case CELL -> "TD";
        };
    }

    /** The structure type of a part. */
    static COSName type(Tag tag) {
        return COSName.getPDFName(name(tag));
    }
}
