package coldseam.junctions;

import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * One option for a kind of junction: what a detail file says, apart from its drawing.
 *
 * @param id unique in its catalogue
 * @param kind of junction it is for
 * @param name plain, short
 * @param rank among its kind's options
 * @param looksLike what one sees on site
 * @param order of building, first step first
 * @param connections of air, water and vapour control
 * @param failures how it goes wrong
 * @param photographs what to photograph before it is covered
 * @param cautions structure, fire, moisture: what must be asked of whom
 * @param costPerMetre in the house's currency
 * @param drawing how its section is put together
 */
public record Detail(
        String id,
        JunctionKind kind,
        String name,
        Rank rank,
        String looksLike,
        ImmutableList<String> order,
        ImmutableMap<Control, Connection> connections,
        ImmutableList<String> failures,
        ImmutableList<String> photographs,
        ImmutableList<String> cautions,
        OptionalDouble costPerMetre,
        DetailDrawing drawing) {}
