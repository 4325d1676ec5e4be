package coldseam.envelope;

/** The part a layer plays, by which a junction detail finds it whatever layers a house has. */
public enum Role {
    /** Inner lining: plasterboard, plaster, flooring, screed. */
    FINISH,
    /** What carries: masonry, slab, studs with what is between them, sheathing. */
    STRUCTURE,
    /** The continuous insulation. */
    INSULATION,
    /** An air layer. */
    AIR_LAYER,
    /** A sheet or coat too thin to matter for heat. */
    MEMBRANE,
    /** Weather face: render, brick leaf, boards, paving, tiles. */
    CLADDING
}
