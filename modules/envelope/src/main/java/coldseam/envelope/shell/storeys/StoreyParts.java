package coldseam.envelope.shell.storeys;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.PlanRegions;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What lies over and under each storey where no other does, and of what build-up.
 *
 * @param forms of each storey's roof
 */
record StoreyParts(House house, Stacks stacks, PlanRegions regions, ImmutableList<Optional<RoofForm>> forms)
        implements StoreyLevels.Lookup {

    public Optional<Assembly> find(Optional<String> name) {
        return house.assembly(name);
    }

    /** The build-up of what lies open, or hangs over. */
    public Optional<Assembly> assembly(PlanRegions.Region region) {
        if (region.open()) {
            Body.Storey storey = stacks.storey(region.lower());
            return find(region.lowerRoof() ? storey.lowerRoof().map(Body.LowerRoof::assembly) : storey.terrace());
        }
        return underside(region.lower() + 1, region.part());
    }

    /** The build-up of what lies under a part of a storey. */
    public Optional<Assembly> underside(int storey, int part) {
        Optional<Body.Base> base = base(storey, part);
        return find(
                base.isPresent()
                        ? base.flatMap(Body.Base::assembly)
                        : stacks.storey(storey).overhang());
    }

    /** What a part of a storey stands on; empty for an overhang in the open. */
    public Optional<Body.Base> base(int storey, int part) {
        return part > 0
                ? Optional.of(stacks.stack(storey).otherBases().get(part - 1).base())
                : stacks.lowest(storey)
                        ? Optional.of(stacks.stack(storey).base())
                        : stacks.storey(storey).base();
    }

    private ImmutableList<PlanRegions.Region> flat(int storey) {
        return regions.beside(storey, true, false)
                .reject(region -> region.lowerRoof() && forms.get(storey).isPresent());
    }

    private ImmutableList<PlanRegions.Region> inTheOpen(int storey) {
        return regions.beside(storey, false, false)
                .reject(region ->
                        base(storey + 1, region.part()).map(Body.Base::onGround).orElse(false));
    }

    @Override
    public Optional<Assembly> terrace(int storey) {
        return flat(storey)
                .collect(this::assembly)
                .maxByOptional(Footprint::thickness)
                .orElse(Optional.empty());
    }

    @Override
    public Optional<Assembly> overhang(int storey) {
        return inTheOpen(storey - 1)
                .collect(this::assembly)
                .maxByOptional(Footprint::thickness)
                .orElse(Optional.empty());
    }

    @Override
    public boolean hasTerrace(int storey) {
        return flat(storey).notEmpty();
    }

    /** The surface that lies open above a storey in a cell, or hangs over it; empty where a step of the walls does. */
    public Optional<PlanRegions.Region> beside(int storey, boolean open, int cell) {
        return regions.beside(storey, open, false)
                .detectOptional(region -> region.cells().contains(cell));
    }

    /** What slopes over a storey in a cell. */
    public Optional<RoofForm> form(int cell, int storey) {
        boolean covered = stacks.top(storey)
                || beside(storey, true, cell).map(PlanRegions.Region::lowerRoof).orElse(false);
        return covered ? forms.get(storey) : Optional.empty();
    }
}
