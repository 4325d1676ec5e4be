package coldseam.junctions.detail;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.DrawingNames;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * One option for a kind of bridge, a junction, a point or a corner: what its file says.
 *
 * @param id unique in its catalogue
 * @param kind of bridge it is for, or is looked at for
 * @param also other kinds that its file is for, drawn in the same way
 * @param name plain, short
 * @param suits new builds, old houses, or both
 * @param rank among its kind's options
 * @param looksLike what one sees on site
 * @param order of building, first step first
 * @param connections of air, water and vapour control
 * @param failures how it goes wrong
 * @param photographs what to photograph before it is covered
 * @param cautions structure, fire, moisture: what must be asked of whom
 * @param cost by its file or the house's prices; empty where neither gives one
 * @param drawing how its section is put together
 * @param own whether it is a file of the house's own, whose path is its id
 */
public record Detail(
        String id,
        BridgeKind kind,
        ImmutableList<? extends BridgeKind> also,
        String name,
        Rank rank,
        Suits suits,
        String looksLike,
        ImmutableList<String> order,
        ImmutableMap<Control, Connection> connections,
        ImmutableList<String> failures,
        ImmutableList<Photograph> photographs,
        ImmutableList<String> cautions,
        Optional<Cost> cost,
        DetailDrawing drawing,
        boolean own) {

    /** Layers but that of heat, which is computed, of which it does not say how they pass. */
    public ImmutableList<Control> unsaid() {
        return DrawingNames.CONTROLS.select(
                control -> connections.getIfAbsentValue(control, Connection.NOT_SHOWN) == Connection.NOT_SHOWN);
    }

    /** Name and id, as reasons and faults call it. */
    public String who() {
        return "\"" + name + "\" (" + id + ")";
    }

    /**
     * The kind of junction it is for.
     *
     * @throws ClassCastException where it is for a point
     */
    public JunctionKind junction() {
        return (JunctionKind) kind;
    }

    /**
     * The kind of point it is for.
     *
     * @throws ClassCastException where it is for a junction
     */
    public PointKind point() {
        return (PointKind) kind;
    }

    /** All kinds that its file is for, that which it is looked at for first. */
    public ImmutableList<BridgeKind> kinds() {
        return Lists.immutable.<BridgeKind>of(kind).newWithAll(also);
    }

    /** The same detail, looked at for another of its kinds. */
    public Detail lookedAtFor(BridgeKind other) {
        return other == kind
                ? this
                : with(other, kinds().newWithout(other), id, cost, drawing.of((JunctionKind) other), own);
    }

    /** Lengths of its own that a house may set; none where the section is drawn by hand. */
    public ImmutableList<DetailParameter> parameters() {
        return drawing.parameters();
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
        return with(id, cost, drawing.with(values), own);
    }

    /** The same detail with those of the values that it has a parameter for and allows. */
    public Detail withAllowed(ImmutableMap<String, Double> values) {
        return with(values.select(
                (name, value) -> parameters().anySatisfy(each -> each.name().equals(name) && each.allows(value))));
    }

    /** The same detail where it stands already: nobody asks whether its layers hold insulation. */
    public Detail asFound() {
        return with(id, cost, drawing.onBareLayers(), own);
    }

    /** The same detail at another price. */
    public Detail at(Cost other) {
        return with(id, Optional.of(other), drawing, own);
    }

    /** The same detail as one of the house's own, under the path of its file. */
    public Detail ofHouse(String path) {
        return with(path, cost, drawing, true);
    }

    private Detail with(String newId, Optional<Cost> newCost, DetailDrawing newDrawing, boolean newOwn) {
        return with(kind, also, newId, newCost, newDrawing, newOwn);
    }

    private Detail with(
            BridgeKind newKind,
            ImmutableList<? extends BridgeKind> others,
            String newId,
            Optional<Cost> newCost,
            DetailDrawing newDrawing,
            boolean newOwn) {
        return new Detail(
                newId,
                newKind,
                others,
                name,
                rank,
                suits,
                looksLike,
                order,
                connections,
                failures,
                photographs,
                cautions,
                newCost,
                newDrawing,
                newOwn);
    }
}
