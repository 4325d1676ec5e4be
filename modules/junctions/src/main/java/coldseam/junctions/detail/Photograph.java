package coldseam.junctions.detail;

import coldseam.envelope.Stop;
import coldseam.files.Noun;
import coldseam.files.Short;
import java.util.Optional;

/**
 * What to photograph before it is covered.
 *
 * @param shows what is to be seen in it
 * @param stop the moment before it is covered; empty for every stop of the detail's kind
 */
@Noun("a photograph")
@Short
public record Photograph(String shows, Optional<Stop> stop) {}
