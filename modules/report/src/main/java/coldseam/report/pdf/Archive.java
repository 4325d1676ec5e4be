package coldseam.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** What makes a document fit to be kept: PDF/A-3, level B (ISO 19005-3:2012, from memory), with the audit's data inside. */
record Archive(PDDocument document) {

    /** Says what the colours are and which kind of document this is. */
    void declare(DocumentInfo info) throws IOException {
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.getPDFName("OutputIntent"));
        intent.setItem(COSName.S, COSName.getPDFName("GTS_PDFA1"));
        intent.setString(COSName.getPDFName("OutputConditionIdentifier"), "sRGB primaries, gamma 2.2");
        intent.setString(COSName.getPDFName("Info"), "sRGB primaries, gamma 2.2");
        PDStream profile =
                new PDStream(document, new ByteArrayInputStream(Shipped.colourProfile()), COSName.FLATE_DECODE);
        profile.getCOSObject().setInt(COSName.N, 3);
        intent.setItem(COSName.getPDFName("DestOutputProfile"), profile);
        COSArray intents = new COSArray();
        intents.add(intent);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("OutputIntents"), intents);
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(xmp(info).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    /** Puts a JSON file inside, as the data of what the document shows. */
    void attach(String name, String says, String json) throws IOException {
        byte[] content = json.getBytes(StandardCharsets.UTF_8);
        PDEmbeddedFile file = new PDEmbeddedFile(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
        file.setSubtype("application/json");
        file.setSize(content.length);
        PDComplexFileSpecification specification = new PDComplexFileSpecification();
        specification.setFile(name);
        specification.setFileUnicode(name);
        specification.setFileDescription(says);
        specification.setEmbeddedFile(file);
        specification.setEmbeddedFileUnicode(file);
        specification.getCOSObject().setItem(COSName.getPDFName("AFRelationship"), COSName.getPDFName("Data"));
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(Map.of(name, specification));
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(catalog);
        names.setEmbeddedFiles(tree);
        catalog.setNames(names);
        COSArray associated = new COSArray();
        associated.add(specification);
        catalog.getCOSObject().setItem(COSName.getPDFName("AF"), associated);
    }

    private static String xmp(DocumentInfo info) {
        return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                + "<rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\""
                + " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n"
                + "<pdfaid:part>3</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>\n"
                + "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" + escaped(info.title())
                + "</rdf:li></rdf:Alt></dc:title>\n"
                + "<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">" + escaped(info.subject())
                + "</rdf:li></rdf:Alt></dc:description>\n"
                + "<pdf:Keywords>" + escaped(info.keywords()) + "</pdf:Keywords>\n"
                + "<pdf:Producer>" + escaped(info.creator()) + "</pdf:Producer>\n"
                + "<xmp:CreatorTool>" + escaped(info.creator()) + "</xmp:CreatorTool>\n"
                + "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"w\"?>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replaceAll("\\p{Cntrl}", " ");
    }
}
