/** Points, directions and outlines on the shell's lattice of 0.1 mm. */
package coldseam.envelope.shell.lattice;
