/**
 * First checks of what insulation carries and how far a build-up sticks out.
 *
 * <p>Pressures are in Pa, lengths in m, forces in N. These are sanity checks for the choice of a board; they replace no structural
 * design, and every result carries {@link coldseam.assemblies.load.CompressionCheck#CAUTION}.
 */
package coldseam.assemblies.load;
