package coldseam.report;

import coldseam.audit.Audit;
import coldseam.files.AtomicFiles;
import coldseam.report.data.AuditText;
import java.io.IOException;
import java.nio.file.Path;

/** The audit as data, in SI units; keys carry their unit and intervals both bounds. */
public final class AuditJson {

    private AuditJson() {}

    /**
     * Writes the file whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(Audit audit, Path path) throws IOException {
        AtomicFiles.write(path, text(audit));
    }

    /** The file's text. */
    public static String text(Audit audit) {
        return AuditText.json(audit);
    }

    /** Its JSON Schema (draft 2020-12), shipped as {@code coldseam/report/audit.schema.json} too. */
    public static String schema() {
        return AuditText.schema();
    }
}
