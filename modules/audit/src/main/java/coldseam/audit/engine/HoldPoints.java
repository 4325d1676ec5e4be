package coldseam.audit.engine;

import static coldseam.envelope.JunctionKind.BALCONY;
import static coldseam.envelope.JunctionKind.BEARING_WALL_THROUGH_SLAB;
import static coldseam.envelope.JunctionKind.CANOPY;
import static coldseam.envelope.JunctionKind.CELLAR_SLAB_EDGE;
import static coldseam.envelope.JunctionKind.CRAWL_SPACE_EDGE;
import static coldseam.envelope.JunctionKind.DORMER_CHEEK;
import static coldseam.envelope.JunctionKind.EAVES;
import static coldseam.envelope.JunctionKind.EAVES_COLD_LOFT;
import static coldseam.envelope.JunctionKind.EXISTING_SLAB_EDGE;
import static coldseam.envelope.JunctionKind.FLAT_ROOF_EDGE;
import static coldseam.envelope.JunctionKind.FOUNDATION_WALL_TOP;
import static coldseam.envelope.JunctionKind.GABLE_COLD_LOFT;
import static coldseam.envelope.JunctionKind.HEAD;
import static coldseam.envelope.JunctionKind.HIP;
import static coldseam.envelope.JunctionKind.INSIDE_CORNER;
import static coldseam.envelope.JunctionKind.INTERMEDIATE_FLOOR;
import static coldseam.envelope.JunctionKind.JAMB;
import static coldseam.envelope.JunctionKind.KNEE_WALL;
import static coldseam.envelope.JunctionKind.LEDGER;
import static coldseam.envelope.JunctionKind.OUTSIDE_CORNER;
import static coldseam.envelope.JunctionKind.OVERHANG_EDGE;
import static coldseam.envelope.JunctionKind.PARAPET;
import static coldseam.envelope.JunctionKind.PARTITION;
import static coldseam.envelope.JunctionKind.PARTY_WALL;
import static coldseam.envelope.JunctionKind.PORCH_SLAB;
import static coldseam.envelope.JunctionKind.RIDGE;
import static coldseam.envelope.JunctionKind.ROOFLIGHT;
import static coldseam.envelope.JunctionKind.ROOF_STEP;
import static coldseam.envelope.JunctionKind.SHUTTER_BOX;
import static coldseam.envelope.JunctionKind.SILL;
import static coldseam.envelope.JunctionKind.SLAB_EDGE;
import static coldseam.envelope.JunctionKind.SLAB_THRESHOLD;
import static coldseam.envelope.JunctionKind.STEPPED_FOOTING;
import static coldseam.envelope.JunctionKind.TERRACE_EDGE;
import static coldseam.envelope.JunctionKind.TERRACE_THRESHOLD;
import static coldseam.envelope.JunctionKind.TERRACE_TO_ROOF;
import static coldseam.envelope.JunctionKind.UNHEATED_BELOW_EDGE;
import static coldseam.envelope.JunctionKind.VALLEY;
import static coldseam.envelope.JunctionKind.VENEER_LEDGE;
import static coldseam.envelope.JunctionKind.VERGE;
import static coldseam.envelope.JunctionKind.WALL_THICKNESS_CHANGE;
import static coldseam.envelope.JunctionKind.WALL_TO_TERRACE;
import static coldseam.envelope.JunctionKind.WALL_UNDER_OVERHANG;

import coldseam.audit.BridgeSheet;
import coldseam.audit.HoldPoint;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.PointKind;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/** What must be seen before it is covered, in the order of building; common practice, no source. */
final class HoldPoints {

    /**
     * A stop in the order of building.
     *
     * @param kinds of bridge it belongs to; it is left out where the house has none of them, unless {@code always}
     */
    private record Stop(
            String name, String before, boolean always, ImmutableList<String> lookAt, ImmutableSet<BridgeKind> kinds) {}

    private static final ImmutableList<Stop> STOPS = Lists.immutable.of(
            new Stop(
                    "The old house, opened",
                    "anything new is fixed to it",
                    true,
                    Lists.immutable.of(
                            "levels and flatness of what the boards will stand on",
                            "moisture of old wood, at most 19 % by weight",
                            "rot, insects, loose masonry, cables and pipes that are in the way"),
                    Sets.immutable.empty()),
            new Stop(
                    "Foundation insulation",
                    "the trench is filled",
                    false,
                    Lists.immutable.of(
                            "how deep the board really goes, with a rule in the picture",
                            "damp-proofing and drain behind and below it",
                            "its top edge: covered, and open to inspection where insects are a risk"),
                    Sets.immutable.of(
                            EXISTING_SLAB_EDGE, FOUNDATION_WALL_TOP, CELLAR_SLAB_EDGE, STEPPED_FOOTING, PORCH_SLAB)),
            new Stop(
                    "Under the slab",
                    "concrete is poured",
                    false,
                    Lists.immutable.of(
                            "two layers of board with joints that do not coincide",
                            "the whole field, every edge and every pipe",
                            "the upright strip at the edge, up to the slab's top",
                            "the sheet: lapped, taped, turned up"),
                    Sets.immutable.of(SLAB_EDGE, CELLAR_SLAB_EDGE, BEARING_WALL_THROUGH_SLAB, SLAB_THRESHOLD)),
            new Stop(
                    "Over the crawl space",
                    "the floor is closed",
                    false,
                    Lists.immutable.of(
                            "insulation tight between and under the joists, and against the rim",
                            "the airtight layer, joined to the wall's",
                            "vents free, ground sheet lapped and sealed"),
                    Sets.immutable.of(CRAWL_SPACE_EDGE, UNHEATED_BELOW_EDGE)),
            new Stop(
                    "Foot of the walls and thresholds",
                    "walls and doors are set on them",
                    false,
                    Lists.immutable.of(
                            "insulating block or strip under the wall or the door, with the load it is rated for",
                            "capillary break",
                            "airtight layer of floor and wall joined"),
                    Sets.immutable.of(
                            SLAB_EDGE,
                            EXISTING_SLAB_EDGE,
                            SLAB_THRESHOLD,
                            TERRACE_THRESHOLD,
                            OVERHANG_EDGE,
                            WALL_UNDER_OVERHANG)),
            new Stop(
                    "Strips around floors and beams",
                    "joists, slabs or partitions cover them",
                    false,
                    Lists.immutable.of(
                            "the airtight strip around the floor's edge, with a lap above and below",
                            "insulation in front of the floor's edge, in one piece"),
                    Sets.immutable.of(INTERMEDIATE_FLOOR, PARTITION, LEDGER, BALCONY, CANOPY, VENEER_LEDGE)),
            new Stop(
                    "Posts, columns, brackets and anchors",
                    "insulation closes around them",
                    false,
                    Lists.immutable.of(
                            "their number against the plan, and what stands under each foot",
                            "each sealed where it goes through the airtight layer",
                            "boards tight around them, the slit foamed"),
                    Sets.immutable.of(
                            PointKind.STEEL_POST,
                            PointKind.TIMBER_POST,
                            PointKind.COLUMN,
                            PointKind.BRACKET,
                            PointKind.CLADDING_BRACKET,
                            PointKind.ANCHOR_BOLT)),
            new Stop(
                    "Airtight and watertight layer of the walls",
                    "insulation covers it; first pressure test",
                    true,
                    Lists.immutable.of(
                            "every lap shedding water, every joint taped, sealed or plastered",
                            "corners, where three planes meet",
                            "pressure test with the leaks marked"),
                    Sets.immutable.of(OUTSIDE_CORNER, INSIDE_CORNER, PARTY_WALL, WALL_THICKNESS_CHANGE)),
            new Stop(
                    "The terrace deck",
                    "pavers or boards cover it",
                    false,
                    Lists.immutable.of(
                            "slope of the structure and of the membrane",
                            "insulation in two layers, joints that do not coincide, tight against the wall and the edge",
                            "membrane turned up at walls, doors and edges",
                            "flood test, only where the structure is proven to carry the water"),
                    Sets.immutable.of(WALL_TO_TERRACE, TERRACE_EDGE, TERRACE_TO_ROOF, TERRACE_THRESHOLD)),
            new Stop(
                    "Edges of the terrace and steps between roofs",
                    "wall and roof boards close them",
                    false,
                    Lists.immutable.of(
                            "the strip left open for the neighbour's layer, at least 300 mm wide",
                            "boards of deck, wall and roof touching without a gap"),
                    Sets.immutable.of(TERRACE_EDGE, TERRACE_TO_ROOF, ROOF_STEP)),
            new Stop(
                    "Roof insulation, eaves and verges",
                    "the covering is laid",
                    false,
                    Lists.immutable.of(
                            "airtight layer of roof and wall joined at eaves and verge",
                            "roof insulation carried over the wall's, at full thickness",
                            "gaps wider than 3 mm filled"),
                    Sets.immutable.of(
                            EAVES,
                            EAVES_COLD_LOFT,
                            VERGE,
                            GABLE_COLD_LOFT,
                            RIDGE,
                            HIP,
                            VALLEY,
                            KNEE_WALL,
                            DORMER_CHEEK,
                            FLAT_ROOF_EDGE,
                            PARAPET,
                            ROOFLIGHT)),
            new Stop(
                    "Windows and doors",
                    "their joints are covered",
                    false,
                    Lists.immutable.of(
                            "position in the wall, each kind once with a rule in the picture",
                            "airtight joint all round, drained sill or pan",
                            "insulation over the frame"),
                    Sets.immutable.of(JAMB, HEAD, SILL, SHUTTER_BOX, ROOFLIGHT, SLAB_THRESHOLD, TERRACE_THRESHOLD)),
            new Stop(
                    "Wall insulation",
                    "battens, render or cladding cover it",
                    true,
                    Lists.immutable.of(
                            "each elevation whole, and close up",
                            "second layer with joints away from the first's",
                            "gaps wider than 3 mm filled, nothing pressed flat"),
                    Sets.immutable.of(
                            OUTSIDE_CORNER,
                            INSIDE_CORNER,
                            INTERMEDIATE_FLOOR,
                            WALL_UNDER_OVERHANG,
                            PointKind.FASTENER)),
            new Stop(
                    "Pipes, cables and vents",
                    "their openings are covered",
                    true,
                    Lists.immutable.of("each sealed in the airtight layer and packed with insulation"),
                    Sets.immutable.of(PointKind.PIPE, PointKind.DUCT)),
            new Stop(
                    "Caps and flashings",
                    "scaffolding comes down",
                    false,
                    Lists.immutable.of(
                            "caps of parapets and verges, flashings wherever the thickness changes",
                            "water led outwards everywhere"),
                    Sets.immutable.of(PARAPET, VERGE, EAVES, FLAT_ROOF_EDGE, TERRACE_EDGE, ROOF_STEP, WALL_TO_TERRACE)),
            new Stop(
                    "The finished envelope",
                    "linings close; last pressure test",
                    true,
                    Lists.immutable.of(
                            "pressure test and infrared pictures on a cold day",
                            "ventilation set up before the house is lived in"),
                    Sets.immutable.empty()));

    private HoldPoints() {}

    /** A point of a list: a capital first, no full stop at the end, wherever it comes from. */
    private static String item(String words) {
        String bare = words.strip().replaceFirst("\\.$", "");
        return bare.substring(0, 1).toUpperCase(Locale.ROOT) + bare.substring(1);
    }

    /** Those that this house has, with the sheets they belong to and what their details ask to be photographed. */
    static ImmutableList<HoldPoint> of(ImmutableList<BridgeSheet<?>> sheets) {
        return STOPS.collect(stop -> {
                    ImmutableList<BridgeSheet<?>> own = sheets.select(sheet ->
                            stop.kinds().contains(sheet.result().detail().kind()));
                    return new HoldPoint(
                            stop.name(),
                            stop.before(),
                            stop.lookAt()
                                    .newWithAll(own.flatCollect(
                                            sheet -> sheet.result().detail().photographs()))
                                    .collect(HoldPoints::item)
                                    .distinct(),
                            own);
                })
                .zip(STOPS)
                .select(pair -> pair.getTwo().always() || pair.getOne().sheets().notEmpty())
                .collect(pair -> pair.getOne());
    }
}
