package coldseam.junctions;

import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Upkeep;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** A detail computed for one setup: of a junction, or of a point. */
public sealed interface BridgeResult permits JunctionResult, PointResult {

    /** The option. */
    Detail detail();

    /** What it was computed for. */
    BridgeSetup setup();

    /** Of the heat-flow section. */
    Solution solution();

    /** L2D, W/(m·K), or L3D, W/K: in {@link #dimension()}. */
    Interval coupling();

    /** psi in a dimension system, or chi, which is the same in both; in {@link #dimension()}. */
    Interval psiOrChi(DimensionSystem system);

    /** Of {@link #coupling()} and {@link #psiOrChi}: W/(m·K), or W/K. */
    Dimension dimension();

    /** fRsi with Rsi 0.25 m²·K/W (ISO 13788), between indoors and outdoors; an estimate. */
    double temperatureFactor();

    /** Where the inner surface is coldest, in the section. */
    Point coldest();

    /** m, from the outer face of the wall that its frame stands in to the frame's; empty where it has none, or not that wall. */
    default OptionalDouble frameSetBack() {
        return OptionalDouble.empty();
    }

    /** What was simplified, in plain words. */
    ImmutableList<String> notes();

    /** What it asks somebody to look after. */
    default ImmutableList<Upkeep> upkeep() {
        return Upkeep.of(detail());
    }
}
