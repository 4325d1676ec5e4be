/**
 * The command: reads, computes, writes, and says in a few lines what it found.
 *
 * <p>The only package that prints and the only one that uses picocli.
 */
package coldseam.cli;
