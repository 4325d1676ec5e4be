package coldseam.envelope;

/**
 * The kinds of junction, each with the names its two bands have in detail files.
 *
 * <p>The first band and the second are ordered: an edge of this kind lists its surfaces so. Where a kind has one surface
 * only (a jamb, a partition), the second name is what meets it.
 */
public enum JunctionKind implements BridgeKind {
    SLAB_EDGE("slab edge", "floor", "wall"),
    EXISTING_SLAB_EDGE("existing slab edge", "floor", "wall"),
    PORCH_SLAB("porch slab against the house", "floor", "wall"),
    SLAB_THRESHOLD("door threshold on a slab", "floor", "door"),
    FOUNDATION_WALL_TOP("foundation wall to frame wall", "foundation", "wall"),
    CELLAR_SLAB_EDGE("cellar slab to wall", "floor", "wall"),
    BEARING_WALL_THROUGH_SLAB("bearing wall through the slab's insulation", "floor", "bearing wall"),
    UNHEATED_BELOW_EDGE("floor over an unheated space", "floor", "wall"),
    CRAWL_SPACE_EDGE("crawl space edge", "floor", "wall"),
    STEPPED_FOOTING("stepped footing", "floor", "wall"),
    OUTSIDE_CORNER("outside corner", "wall", "other wall"),
    INSIDE_CORNER("inside corner", "wall", "other wall"),
    INTERMEDIATE_FLOOR("intermediate floor", "wall", "storey floor"),
    PARTITION("partition", "wall", "partition"),
    PARTY_WALL("party wall", "wall", "party wall"),
    WALL_THICKNESS_CHANGE("change of wall thickness", "wall", "other wall"),
    VENEER_LEDGE("masonry veneer ledge", "wall", "ledge"),
    LEDGER("ledger", "wall", "ledger"),
    CANOPY("canopy", "wall", "canopy"),
    OVERHANG_EDGE("overhang edge", "floor", "wall"),
    WALL_UNDER_OVERHANG("wall under an overhang", "floor", "wall"),
    UNHEATED_NEIGHBOUR("unheated neighbour", "wall", "neighbour"),
    JAMB("jamb", "wall", "frame"),
    HEAD("head", "wall", "frame"),
    SILL("sill", "wall", "frame"),
    SHUTTER_BOX("shutter box", "wall", "frame"),
    EAVES_COLD_LOFT("eaves under a cold loft", "ceiling", "wall"),
    EAVES("eaves of an insulated roof", "roof", "wall"),
    VERGE("verge", "roof", "wall"),
    GABLE_COLD_LOFT("gable under a cold loft", "ceiling", "wall"),
    RIDGE("ridge", "roof", "other roof"),
    HIP("hip", "roof", "other roof"),
    VALLEY("valley", "roof", "other roof"),
    KNEE_WALL("knee wall", "roof", "wall"),
    DORMER_CHEEK("dormer cheek", "roof", "cheek"),
    ROOFLIGHT("rooflight", "roof", "frame"),
    FLAT_ROOF_EDGE("flat roof edge", "roof", "wall"),
    PARAPET("parapet", "roof", "wall"),
    WALL_TO_TERRACE("wall to terrace", "deck", "wall"),
    TERRACE_EDGE("terrace edge over a room", "deck", "wall"),
    TERRACE_TO_ROOF("terrace to roof", "deck", "roof"),
    TERRACE_THRESHOLD("door threshold on a terrace", "deck", "door"),
    ROOF_STEP("step between heights", "roof", "wall"),
    BALCONY("balcony", "wall", "balcony");

    private final String label;
    private final String first;
    private final String second;

    JunctionKind(String label, String first, String second) {
        this.label = label;
        this.first = first;
        this.second = second;
    }

    @Override
    public String label() {
        return label;
    }

    /** What the first band is called in a detail file. */
    public String first() {
        return first;
    }

    /** What the second band is called in a detail file. */
    public String second() {
        return second;
    }
}
