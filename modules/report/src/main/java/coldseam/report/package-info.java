/**
 * The audit as documents: PDF, SVG, JSON and CSV. Nothing is computed here that another room could compute; documents only
 * show the {@link coldseam.audit.Audit}.
 */
package coldseam.report;
