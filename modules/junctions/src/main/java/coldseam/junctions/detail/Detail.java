package coldseam.junctions.detail;

import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.junctions.language.DetailParameter;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Lists;

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
 * @param cost by its file or the house's prices; empty where neither gives one
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
        Optional<Cost> cost,
        DetailDrawing drawing) {

    /** Lengths of its own that a junction choice may set; none where the section is drawn by hand. */
    public ImmutableList<DetailParameter> parameters() {
        return drawing instanceof BandDrawing laid ? laid.parameters() : Lists.immutable.empty();
    }

    /**
     * The same detail with other values of its parameters.
     *
     * @param values m, by the parameter's name; each is one of {@link #parameters()} and in its range
     * @throws IllegalArgumentException where one is not
     */
    public Detail with(ImmutableMap<String, Double> values) {
        if (values.isEmpty()) {
            return this;
        }
        ImmutableList<String> known = parameters().collect(DetailParameter::name);
        if (!known.containsAll(values.castToMap().keySet())) {
            throw new IllegalArgumentException(id + " has the parameters " + known + "; got " + values.keysView());
        }
        return with(cost, ((BandDrawing) drawing).with(values));
    }

    /** The same detail at another price. */
    public Detail at(Cost other) {
        return with(Optional.of(other), drawing);
    }

    private Detail with(Optional<Cost> newCost, DetailDrawing newDrawing) {
        return new Detail(
                id,
                kind,
                name,
                rank,
                looksLike,
                order,
                connections,
                failures,
                photographs,
                cautions,
                newCost,
                newDrawing);
    }
}
