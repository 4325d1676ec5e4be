package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Cost;
import java.util.Optional;
import org.eclipse.collections.api.map.ImmutableMap;

/** One computed bridge, a junction or a point, for all the places it stands for. */
public sealed interface BridgeSheet permits JunctionSheet, PointSheet {

    /** Such as "J3" or "P1", in the order of the report. */
    String id();

    /** What kind of bridge it is, in plain words. */
    String kind();

    /** Whether the house file chose the detail. */
    boolean chosen();

    /** Its detail. */
    Option option();

    /** The best option of the catalogue for the same setup; empty where it is this one, or where none fits. */
    Optional<Option> better();

    /** How its detail says that air, water and vapour control pass. */
    ImmutableMap<Control, Connection> connections();

    /** fRsi; an estimate. */
    double temperatureFactor();

    /** Indoor relative humidity, 0 to 1, at which the coldest point reaches the dew point at the design temperatures. */
    double dewPointHumidity();

    /** The same for the mould limit, 80 % on the surface. */
    double mouldHumidity();

    /** Of psi, W/(m·K), or of chi, W/K. */
    Dimension dimension();

    /**
     * A detail as it is compared.
     *
     * @param id in the catalogue
     * @param name plain
     * @param external psi with external dimensions, or chi
     * @param internal psi with internal dimensions, or chi
     * @param cost where somebody gave one
     */
    record Option(String id, String name, Interval external, Interval internal, Optional<Cost> cost) {

        /** In a dimension system. */
        public Interval in(DimensionSystem system) {
            return system == DimensionSystem.EXTERNAL ? external : internal;
        }
    }
}
