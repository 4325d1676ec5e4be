/** Points, directions and outlines on the shell's lattice of 0.1 mm; and a surface's own axes, in metres. */
package coldseam.envelope.shell.lattice;
