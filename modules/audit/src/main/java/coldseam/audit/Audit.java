package coldseam.audit;

import coldseam.envelope.House;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.PointResult;
import coldseam.junctions.detail.Upkeep;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.multimap.list.ImmutableListMultimap;

/**
 * The audit of one house.
 *
 * @param house as read
 * @param digests of the files it was made from
 * @param verdict what a reader wants to know first
 * @param sides the six sides
 * @param assemblies each one that is used
 * @param sheets one for each different junction: a kind, a detail and a setup
 * @param junctions one row for each edge, in the shell's order
 * @param found the seams as they were found; empty where the house file does not say
 * @param pairSheets one for each different pair of seams that touch and are computed in one section
 * @param pairs one row for each two seams that touch
 * @param pointSheets one for each different point: a detail and a setup
 * @param points one row for each set of points, in the house file's order
 * @param vertexSheets one for each different vertex that is computed
 * @param heatLoss the table that adds up
 * @param findings by weight, the heaviest first; numbers as in the drawing
 * @param mould on the junctions' inner surfaces
 * @param terraces one line for each terrace deck
 * @param holdPoints what must be seen before it is covered, in order of building
 * @param notes what had to be assumed or left out
 * @param work what was to be solved, as it was known before
 */
public record Audit(
        House house,
        Digests digests,
        String version,
        Shell shell,
        Verdict verdict,
        ImmutableList<SideSummary> sides,
        ImmutableList<AssemblyRow> assemblies,
        ImmutableList<BridgeSheet<JunctionResult>> sheets,
        ImmutableList<JunctionRow> junctions,
        Optional<AsFound> found,
        ImmutableList<PairSheet> pairSheets,
        ImmutableList<PairRow> pairs,
        ImmutableList<BridgeSheet<PointResult>> pointSheets,
        ImmutableList<PointRow> points,
        ImmutableList<VertexSheet> vertexSheets,
        ImmutableList<VertexRow> vertices,
        HeatLoss heatLoss,
        ImmutableList<Finding> findings,
        Mould mould,
        ImmutableList<TerraceLine> terraces,
        ImmutableList<HoldPoint> holdPoints,
        ImmutableList<Note> notes,
        Work work) {

    /** SHA-256 of the house file, hexadecimal. */
    public String inputDigest() {
        return digests.house();
    }

    /** What layers in sight and the chosen details ask to be looked after, in the order of its list. */
    public ImmutableList<UpkeepItem> upkeep() {
        ImmutableList<BridgeSheet<?>> chosen = Lists.immutable
                .<BridgeSheet<?>>ofAll(sheets)
                .newWithAll(pointSheets)
                .select(BridgeSheet::chosen);
        // Asked once of each, not once for each line of the list.
        ImmutableListMultimap<Upkeep, Surface> bySurface = shell.surfaces().groupByEach(Upkeep::of);
        ImmutableListMultimap<Upkeep, BridgeSheet<?>> bySheet =
                chosen.groupByEach(sheet -> sheet.result().upkeep());
        return Upkeep.all()
                .collect(each -> new UpkeepItem(each, bySurface.get(each), bySheet.get(each)))
                .reject(item -> item.places().isEmpty());
    }

    /** Every edge, then every set of points. */
    public ImmutableList<BridgeRow> bridges() {
        return Lists.immutable.<BridgeRow>ofAll(junctions).newWithAll(points);
    }
}
