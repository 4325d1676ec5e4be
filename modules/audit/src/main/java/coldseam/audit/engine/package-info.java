/**
 * From a house to its {@link coldseam.audit.Audit}: the shell, transmittances, every junction computed once, the
 * heat-loss coefficient, findings, hold points, inputs and words.
 */
package coldseam.audit.engine;
