/**
 * First checks of what insulation carries and how far a build-up sticks out.
 *
 * <p>Pressures are in Pa, lengths in m, forces in N. These are sanity checks for the choice of a board; they replace no structural
 * design, and every result carries {@link coldseam.assemblies.load.CompressionCheck#CAUTION}.
 *
 * <p>They wait in the tests, with the values that hold them, for a house file that says what stands on a board: a stress without a
 * load would be invented.
 */
package coldseam.assemblies.load;
