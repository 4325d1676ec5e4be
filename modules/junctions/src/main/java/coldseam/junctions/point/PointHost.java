package coldseam.junctions.point;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PointSetup;
import coldseam.junctions.TypicalBuild;
import java.util.Optional;

/** Surfaces a builder would take things through, for looking at options before there is a house. */
public final class PointHost {

    private PointHost() {}

    /** The usual surface of a kind: a deck under posts, a floor over columns, a wall otherwise. */
    public static PointSetup typical(PointKind kind, TypicalBuild build) {
        JunctionSetup junction = build.setup(
                switch (kind) {
                    case STEEL_POST, TIMBER_POST -> JunctionKind.TERRACE_EDGE;
                    case COLUMN -> JunctionKind.OVERHANG_EDGE;
                    default -> JunctionKind.INTERMEDIATE_FLOOR;
                });
        return of(junction.first(), flow(kind), junction.indoorTemperature(), junction.outdoorTemperature());
    }

    /** A named build-up, lying as the kind's usual surface does. */
    public static PointSetup of(Assembly host, PointKind kind, TypicalBuild build) {
        PointSetup typical = typical(kind, build);
        return of(host, typical.flow(), typical.indoorTemperature(), typical.outdoorTemperature());
    }

    /** A surface towards outdoors with the detail's own lengths. */
    public static PointSetup of(Assembly host, HeatFlow flow, double indoorTemperature, double outdoorTemperature) {
        return new PointSetup(host, Exposure.outdoors(), flow, Optional.empty(), indoorTemperature, outdoorTemperature);
    }

    private static HeatFlow flow(PointKind kind) {
        return switch (kind) {
            case STEEL_POST, TIMBER_POST -> HeatFlow.UPWARDS;
            case COLUMN -> HeatFlow.DOWNWARDS;
            default -> HeatFlow.HORIZONTAL;
        };
    }
}
