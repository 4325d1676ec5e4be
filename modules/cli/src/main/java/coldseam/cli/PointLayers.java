package coldseam.cli;

import coldseam.audit.engine.HousePoints;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.envelope.Assembly;
import coldseam.envelope.PointKind;
import coldseam.envelope.Site;
import coldseam.junctions.PointSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.point.PointHost;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

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
        Catalogue catalogue,
        ImmutableList<HousePoints> ofHouse,
        boolean fromHouse,
        Optional<Site> site,
        Optional<Assembly> named,
        TypicalBuild build) {

    /**
     * A surface to look at.
     *
     * @param setup what details are computed for
     * @param parameters m, of the house's own detail there
     * @param origin where it comes from, in words
     */
    record Place(PointSetup setup, ImmutableMap<String, Double> parameters, String origin) {

        Place(PointSetup setup, String origin) {
            this(setup, Maps.immutable.empty(), origin);
        }

        /** A detail with those of the lengths there that it has too and allows. */
        Detail laid(Detail detail) {
            return detail.withAllowed(parameters);
        }
    }

    /**
     * Reads what was asked for.
     *
     * @throws RefusedException where a name means no build-up
     * @throws coldseam.files.FileFaultException with every fault of the house file
     */
    static PointLayers of(LayerOptions options, Workshop workshop) {
        Optional<Assembly> named = options.layers(workshop).first();
        Optional<HouseAudit> house = options.house(workshop);
        return new PointLayers(
                house.map(HouseAudit::catalogue).orElseGet(CatalogueFile::builtIn),
                house.map(each -> HousePoints.of(each.house(), each.shell())).orElse(Lists.immutable.empty()),
                house.isPresent(),
                house.map(each -> each.house().site()),
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
                            set.points().parameters(),
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
                        .point());
    }
}
