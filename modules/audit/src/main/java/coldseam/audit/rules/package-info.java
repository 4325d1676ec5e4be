/**
 * What an audit holds a house to: one class for each rule, registered once in {@link coldseam.audit.rules.Rules}, each
 * with its id, what it says and how to close what it finds.
 *
 * <p>Rules draft; {@link coldseam.audit.rules.Findings} makes one finding of all drafts about one subject, the gravest
 * leading, so that one cause is listed once.
 */
package coldseam.audit.rules;
