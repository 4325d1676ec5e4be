/**
 * First checks of what insulation carries and how far a build-up sticks out.
 *
 * <p>Pressures are in Pa, lengths in m, forces in N. These are sanity checks for the choice of a board; they replace no structural
 * design, and every result carries {@link coldseam.assemblies.load.CompressionCheck#CAUTION}.
 *
 * <p>No command reaches these yet: they wait for the work on building, which will describe decks, boards and screws in the house file.
 */
package coldseam.assemblies.load;
