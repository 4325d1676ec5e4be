package coldseam.cli;

import coldseam.audit.engine.HousePoints;
import coldseam.envelope.Assembly;
import coldseam.envelope.PointKind;
import coldseam.envelope.Site;
import coldseam.envelope.file.house.HouseFile;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.point.PointCatalogue;
import coldseam.junctions.point.PointHost;
import coldseam.junctions.point.PointSetup;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The layers through which point details are looked at: a house's, a named build-up, or typical ones.
 *
 * @param catalogue with the house's own details
 * @param ofHouse the house's sets of points; empty without a house
 * @param fromHouse whether a house was given
 * @param site of the house
 * @param named build-up asked for by name
 * @param build whose build-ups stand in
 */
record PointLayers(
        PointCatalogue catalogue,
        ImmutableList<HousePoints> ofHouse,
        boolean fromHouse,
        Optional<Site> site,
        Optional<Assembly> named,
        TypicalBuild build) {

    /**
     * A surface to look at.
     *
     * @param setup what details are computed for
     * @param origin where it comes from, in words
     */
    record Place(PointSetup setup, String origin) {}

    /**
     * Reads what was asked for.
     *
     * @throws RefusedException where a name means no build-up
     * @throws coldseam.envelope.file.FileFaultException with every fault of the house file
     */
    static PointLayers of(LayerOptions options, Workshop workshop) {
        Optional<Assembly> named = options.layers(workshop).first();
        if (options.house.isEmpty()) {
            return new PointLayers(
                    PointCatalogue.builtIn(), Lists.immutable.empty(), false, Optional.empty(), named, options.build);
        }
        Path path = options.house.get();
        LoadedHouse loaded = HouseFile.read(path, workshop.known(path), workshop.knownPoints(path));
        return new PointLayers(
                workshop.points(loaded.house(), path),
                HousePoints.of(loaded.house(), ShellBuilder.build(loaded.house())),
                true,
                Optional.of(loaded.house().site()),
                named,
                options.build);
    }

    /** Whether neither a house nor a build-up was named. */
    boolean typical() {
        return !fromHouse && named.isEmpty();
    }

    /** The surfaces of a kind to look at; with a house and no named build-up those its points go through, else one. */
    ImmutableList<Place> places(PointKind kind) {
        if (named.isPresent()) {
            return Lists.immutable.of(new Place(PointHost.of(named.get(), kind, build), "as named"));
        }
        if (fromHouse) {
            return ofHouse.select(set -> set.setup().isPresent() && kind(set) == kind)
                    .collect(set -> new Place(
                            set.setup().orElseThrow(),
                            set.points().name() + ", " + set.surface().name()));
        }
        return Lists.immutable.of(new Place(PointHost.typical(kind, build), "typical build-up"));
    }

    private PointKind kind(HousePoints set) {
        return set.points()
                .kind()
                .orElseGet(() -> catalogue
                        .find(set.points().detail().orElseThrow())
                        .orElseThrow()
                        .kind());
    }
}
