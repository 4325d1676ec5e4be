/**
 * Rules, findings and the heat-loss coefficient: everything computed once into one immutable {@link coldseam.audit.Audit};
 * documents only show it.
 */
package coldseam.audit;
