package coldseam.audit;

import coldseam.assemblies.moisture.SurfaceHumidity;
import org.eclipse.collections.api.list.ImmutableList;

/** Something different that was computed, for all the places it stands for, and how cold it gets indoors. */
public sealed interface Sheet permits BridgeSheet, PairSheet, VertexSheet {

    /** Such as "J3", "P1", "V1" or "T1", in the order of the report. */
    String id();

    /** What kind it is of, in plain words. */
    String kind();

    /** Names of the places. */
    ImmutableList<String> places();

    /** Whether the house file chose all that it is made of. */
    boolean chosen();

    /** fRsi; an estimate. */
    double temperatureFactor();

    /** What its coldest point bears at the design temperatures. */
    SurfaceHumidity humidity();

    /** Indoor relative humidity, 0 to 1, at which the coldest point reaches the dew point; 1 where it never does. */
    default double dewPointHumidity() {
        return humidity().humidityAtDewPoint();
    }

    /** The same for the mould limit, 80 % on the surface. */
    default double mouldHumidity() {
        return humidity().humidityAtMouldLimit();
    }
}
