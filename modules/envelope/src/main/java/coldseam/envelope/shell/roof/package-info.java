/** Planes over a plan: straight skeletons, lean-tos, and their heights over each node. */
package coldseam.envelope.shell.roof;
