/**
 * What of an audit rests on the house file's word alone: what it says, what it leaves out, and what there may be but seldom is. Each
 * is an {@link coldseam.audit.assumed.Assumption} that finds its evidence in an audit; what is said of it stands in {@code report}.
 */
package coldseam.audit.assumed;
