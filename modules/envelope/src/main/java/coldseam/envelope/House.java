package coldseam.envelope;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A house as its file describes it, checked and in SI.
 *
 * @param submittal what its audit is handed in with
 * @param site climate, ground and conventions
 * @param retrofit what stays of an old house; empty where everything is built new
 * @param materials by name: the built-in ones that are used and the house's own
 * @param assemblies by name
 * @param body its shape
 * @param openings windows and doors
 * @param choices which detail for which junctions, in the file's order: the first that matches wins
 * @param ownPsi psi values the house brings along, with their source
 * @param seams junctions that geometry cannot show: partitions, ledgers, canopies, balconies
 * @param points things that go through a surface's insulation, in the file's order
 * @param corners details of corners that it names, in the file's order
 * @param limits of the audit
 * @param prices for money columns
 */
public record House(
        String name,
        Submittal submittal,
        Site site,
        Optional<Retrofit> retrofit,
        ImmutableMap<String, Material> materials,
        ImmutableMap<String, Assembly> assemblies,
        Body body,
        ImmutableList<Opening> openings,
        ImmutableList<JunctionChoice> choices,
        ImmutableList<OwnPsi> ownPsi,
        ImmutableList<Seam> seams,
        ImmutableList<PointBridges> points,
        ImmutableList<String> corners,
        Limits limits,
        Prices prices) {

    /**
     * As it was found, before anything is built; empty where its file does not say. What of it is not known is as it will be.
     */
    public Optional<House> asFound() {
        return retrofit.flatMap(Retrofit::found).map(found -> found.in(this));
    }

    /** The assembly that a part names, if it names one. */
    public Optional<Assembly> assembly(Optional<String> named) {
        return named.map(assemblies::get);
    }

    /** With other build-ups under their names. */
    public House withAssemblies(ImmutableMap<String, Assembly> others) {
        return with(others, openings, choices, ownPsi, points);
    }

    public House withOpenings(ImmutableList<Opening> others) {
        return with(assemblies, others, choices, ownPsi, points);
    }

    public House withChoices(ImmutableList<JunctionChoice> others) {
        return with(assemblies, openings, others, ownPsi, points);
    }

    public House withOwnPsi(ImmutableList<OwnPsi> others) {
        return with(assemblies, openings, choices, others, points);
    }

    public House withPoints(ImmutableList<PointBridges> others) {
        return with(assemblies, openings, choices, ownPsi, others);
    }

    private House with(
            ImmutableMap<String, Assembly> itsAssemblies,
            ImmutableList<Opening> itsOpenings,
            ImmutableList<JunctionChoice> itsChoices,
            ImmutableList<OwnPsi> itsOwnPsi,
            ImmutableList<PointBridges> itsPoints) {
        return new House(
                name,
                submittal,
                site,
                retrofit,
                materials,
                itsAssemblies,
                body,
                itsOpenings,
                itsChoices,
                itsOwnPsi,
                seams,
                itsPoints,
                corners,
                limits,
                prices);
    }
}
