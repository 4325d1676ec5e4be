/**
 * The few words of a detail file: lines, lengths, conditions and statements, parsed and checked before any house is at hand.
 * Lines across a band are metres from its inner face.
 */
package coldseam.junctions.language;
