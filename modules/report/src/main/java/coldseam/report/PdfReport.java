package coldseam.report;

import coldseam.audit.Audit;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.Keeping;
import coldseam.report.house.HouseDrawing;
import coldseam.report.pages.AreaPages;
import coldseam.report.pages.Assemblies;
import coldseam.report.pages.BridgeSheets;
import coldseam.report.pages.Cover;
import coldseam.report.pages.Gaps;
import coldseam.report.pages.HeatLossPages;
import coldseam.report.pages.HoldPointPages;
import coldseam.report.pages.HouseViews;
import coldseam.report.pages.InputPages;
import coldseam.report.pages.Method;
import coldseam.report.pages.MoisturePages;
import coldseam.report.pages.Page;
import coldseam.report.pages.Quantities;
import coldseam.report.pages.Register;
import coldseam.report.pages.SixSides;
import coldseam.report.pages.UpkeepPages;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Paper;
import coldseam.report.words.Print;
import coldseam.report.words.VerdictWords;
import java.util.function.Supplier;

/**
 * The audit as a PDF: vector drawings, embedded fonts, readable in black and white; the same audit gives the same bytes. It
 * keeps to PDF/A-3b and carries the audit's JSON inside.
 */
public final class PdfReport {

    private static final int DIGEST_SHOWN = 16;

    private PdfReport() {}

    /** Makes ready what every report needs, whatever its house: that may be done while a house is read. */
    public static void prepare() {
        Flow.prepare();
    }

    /** The report's bytes, with the views of its house drawn on the way. */
    public static byte[] bytes(Audit audit, UnitSystem units, Paper paper, Keeping keeping) {
        return bytes(audit, units, paper, keeping, () -> HouseDrawing.Views.of(audit.shell()));
    }

    /**
     * The report's bytes.
     *
     * @param keeping what earlier runs drew; they are the same without
     * @param views of the audit's shell, asked for on another core
     */
    public static byte[] bytes(
            Audit audit, UnitSystem units, Paper paper, Keeping keeping, Supplier<HouseDrawing.Views> views) {
        String tool = "coldseam " + audit.version();
        DocumentInfo info = new DocumentInfo(
                "Continuous insulation audit: " + audit.house().name(),
                VerdictWords.sentence(audit.verdict()),
                tool,
                "insulation continuity, thermal bridges, " + audit.inputDigest(),
                identity(audit, units, paper));
        try (Flow flow = new Flow(paper, info, keeping)) {
            Page page = new Page(audit, flow, new Print(units));
            Supplier<HouseDrawing> drawing = flow.beside(() -> new HouseDrawing(audit, views.get()));
            Cover cover = new Cover();
            cover.write(page);
            SixSides.write(page);
            HouseViews.write(page, drawing);
            Gaps.write(page);
            BridgeSheets.write(page);
            AreaPages.write(page);
            HeatLossPages.write(page);
            Register.write(page);
            Assemblies.write(page);
            Quantities.write(page);
            MoisturePages.write(page);
            HoldPointPages.write(page);
            UpkeepPages.write(page);
            InputPages.write(page);
            Method.write(page);
            // While the last pages are written, which the list of contents waits for.
            String data = AuditJson.text(audit);
            cover.writeContents(page);
            flow.attach("audit.json", "The audit as data", data);
            String digest = audit.inputDigest();
            return flow.finish(
                    audit.house().name()
                            + audit.house()
                                    .submittal()
                                    .revision()
                                    .map(", revision "::concat)
                                    .orElse(""),
                    tool + " · house file SHA-256 " + digest.substring(0, Math.min(DIGEST_SHOWN, digest.length())));
        }
    }

    /** Equal for equal documents: made of the files' digests, the version and the way it is printed. */
    private static long identity(Audit audit, UnitSystem units, Paper paper) {
        long id = 1125899906842597L;
        for (char c : (audit.digests() + audit.version() + units + paper).toCharArray()) {
            id = 31 * id + c;
        }
        return id;
    }
}
