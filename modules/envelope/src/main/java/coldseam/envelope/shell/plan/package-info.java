/** Footprints laid over one another: the plan's cells and bounds, and what lies open or hangs over. */
package coldseam.envelope.shell.plan;
