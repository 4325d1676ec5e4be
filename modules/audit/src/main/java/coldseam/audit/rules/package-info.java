/**
 * What an audit holds a house to: one class for each rule, registered once in {@link coldseam.audit.rules.Rules}, each
 * with its id and the evidence of what it finds: values, no words. The report words them.
 *
 * <p>Rules draft; {@link coldseam.audit.rules.Findings} makes one finding of all drafts about one subject, the gravest
 * leading, so that one cause is listed once.
 */
package coldseam.audit.rules;
