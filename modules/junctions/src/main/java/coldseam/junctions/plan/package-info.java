/** A section as it is drawn: what is seen of its pieces, what each was painted for, and where the section stops. */
package coldseam.junctions.plan;
