package coldseam.envelope.shell;

import coldseam.envelope.Point3;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * An edge that is not shared: a hole in the envelope.
 *
 * @param from one end
 * @param to the other end
 * @param length m
 * @param surfaces names of the surfaces beside it (one, or more than two)
 * @param place where a person finds it, in words, without its length
 */
public record OpenEdge(Point3 from, Point3 to, double length, ImmutableList<String> surfaces, String place) {}
