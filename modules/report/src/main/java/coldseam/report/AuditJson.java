package coldseam.report;

import coldseam.audit.Audit;
import coldseam.report.data.AuditForm;

/** The audit as data, in SI units; keys carry their unit and intervals both bounds. */
public final class AuditJson {

    private AuditJson() {}

    /** The file's text. */
    public static String text(Audit audit) {
        return AuditForm.AUDIT.text(audit);
    }

    /** Its JSON Schema (draft 2020-12), shipped as {@code coldseam/report/audit.schema.json} too. */
    public static String schema() {
        return AuditForm.AUDIT.schema("An audit written by coldseam");
    }
}
