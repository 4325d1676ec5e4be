package coldseam.report.data;

import coldseam.audit.Audit;
import coldseam.files.JsonText;

/** The audit as JSON text, and the schema of it. */
public final class AuditText {

    private AuditText() {}

    /** The audit as JSON; the same audit gives the same text. */
    public static String json(Audit audit) {
        return JsonText.write(Convert.audit(audit));
    }

    /** The JSON Schema (draft 2020-12) of {@link #json}. */
    public static String schema() {
        return DataSchema.text(AuditData.class, "An audit written by coldseam");
    }
}
