package coldseam.assemblies.load;

import coldseam.envelope.Provenance;
import coldseam.envelope.Provenance.Sureness;

/** The share of the stress at 10 % strain, CS(10), that a board may carry for good without creeping too far. */
public enum PermanentShare {
    /** Expanded polystyrene. */
    EXPANDED_POLYSTYRENE(0.30, "EN 13163 annex D: 2 % creep after 50 years, as usually applied", Sureness.FROM_MEMORY),
    /** Extruded polystyrene: the lower end of declared values, 110 of 300 kPa. */
    EXTRUDED_POLYSTYRENE(0.36, "declared creep values of producers, EN 1606", Sureness.FROM_MEMORY),
    /** Stone wool boards for roofs and terraces: the lower end of one producer's range, 45 of 175 kPa. */
    MINERAL_WOOL(0.257, "a producer's table of permanent uniform loads, at most 2 % over 25 years", Sureness.READ),
    /** Anything else: dead load up to a fifth, the rule one producer of extruded board gives. */
    OTHER(0.20, "a producer's manual for extruded board, dead load", Sureness.READ);

    private final double share;
    private final Provenance provenance;

    PermanentShare(double share, String source, Sureness sureness) {
        this.share = share;
        this.provenance = new Provenance(source, sureness);
    }

    /** 0 to 1. */
    public double share() {
        return share;
    }

    /** Where it comes from. A creep value CC(2/1.5/50) that the producer declares goes first. */
    public Provenance provenance() {
        return provenance;
    }
}
