package coldseam.report.words;

import coldseam.assemblies.ground.Basement;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.assemblies.ground.SuspendedFloor;
import coldseam.audit.engine.GroundRow;
import coldseam.envelope.Body;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** What U of floors on the ground follows from, beside the table of their sizes. */
public record GroundWords(Print print) {

    /** What the table's heads mean; marked for {@code Rich}. */
    public static final String SYMBOLS =
            "By ISO 13370:2017 (from memory). A is the area between outer faces; P the perimeter exposed to outdoors, to the ground"
                    + " or to an unheated space; B′ = A/(P/2); w the mean thickness of the walls along P; dt = w + λ·(R_{si} + R_{f} +"
                    + " R_{se}), with the λ of the ground and the R_{f} of the floor from face to face; under a suspended floor that of"
                    + " its ground.";

    /** What is particular to basements, edges and crawl spaces, a sentence for each floor that has one. */
    public ImmutableList<String> of(ImmutableList<GroundRow> rows) {
        MutableList<String> said = Lists.mutable.empty();
        for (GroundRow row : rows) {
            if (row.method() instanceof Basement basement) {
                said.add(row.name() + ": " + basement(basement));
            } else if (row.method() instanceof SuspendedFloor floor) {
                said.add(row.name() + ": " + suspended(floor));
            } else if (row.method() instanceof SlabOnGround slab && slab.edgePsi() < 0) {
                said.add(row.name() + ": U holds ψ of the edge insulation, "
                        + print.of(slab.edgePsi(), Dimension.LINEAR_TRANSMITTANCE) + ", twice over B′.");
            }
        }
        return said.toImmutable();
    }

    private String basement(Basement basement) {
        return "its floor lies " + print.length(basement.depth())
                + " under the ground, the mean along P; its U is that of dt and half of this depth together. Walls in the ground:"
                + " dw = " + print.length(basement.wallThickness()) + ", U "
                + print.of(basement.wallTransmittance(), Dimension.TRANSMITTANCE) + ".";
    }

    private String suspended(SuspendedFloor floor) {
        return "the floor itself has U " + print.of(floor.floorTransmittance(), Dimension.TRANSMITTANCE)
                + ", the ground under it " + print.of(floor.groundTransmittance(), Dimension.TRANSMITTANCE)
                + ", and the space to outdoors, spread over the floor, "
                + print.of(floor.edgeTransmittance(), Dimension.TRANSMITTANCE) + ", of which vents have "
                + print.of(floor.ventilationPart(), Dimension.TRANSMITTANCE) + ". The space: "
                + crawlSpace(print, floor.space()) + ". Its temperature factor b is "
                + print.of(floor.temperatureFactor(), Dimension.RATIO) + ".";
    }

    /** What a crawl space is like. */
    static String crawlSpace(Print print, Body.CrawlSpace space) {
        return "floor " + print.length(space.height()) + " over the ground, walls of U "
                + print.of(space.wallTransmittance(), Dimension.TRANSMITTANCE) + ", vents of "
                + print.of(space.vents(), Dimension.OPENING_PER_LENGTH) + ", wind of "
                + print.of(space.windSpeed(), Dimension.SPEED) + ", shielding factor "
                + print.of(space.windShielding(), Dimension.RATIO)
                + (space.groundResistance() > 0
                        ? ", ground insulated with " + print.of(space.groundResistance(), Dimension.RESISTANCE)
                        : ", bare ground");
    }
}
