package coldseam.audit.rules;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.Mould;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.Subject;
import coldseam.audit.TerraceLine;
import coldseam.audit.Value;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * What rules look at.
 *
 * @param house as read
 * @param shell of it
 * @param transmittances W/(m²·K), by the surface's name; of the ground too, where it meets that
 * @param sheets every different bridge, junctions first
 * @param rows every edge, then every set of points
 * @param pairs every two seams that touch
 * @param corners every corner where three or more edges meet
 * @param assemblies each one that is used
 * @param mould on the junctions' and corners' inner surfaces
 * @param terraces one for each terrace deck
 */
public record Facts(
        House house,
        Shell shell,
        ImmutableMap<String, Double> transmittances,
        ImmutableList<BridgeSheet<?>> sheets,
        ImmutableList<BridgeRow> rows,
        ImmutableList<PairRow> pairs,
        ImmutableList<VertexRow> corners,
        ImmutableList<AssemblyRow> assemblies,
        Mould mould,
        ImmutableList<TerraceLine> terraces) {

    /**
     * U of a surface's layers by ISO 6946 with the corrections that apply, without the ground, W/(m²·K).
     *
     * @param surface that has an assembly
     */
    static double assemblyTransmittance(Surface surface) {
        return transmittance(surface, surface.assembly().orElseThrow());
    }

    /** The name of the assembly of a surface that has one. */
    static String assembly(Surface surface) {
        return surface.assembly().map(Assembly::name).orElseThrow();
    }

    /** W/(m²·K), of another build-up in the place of a surface's own. */
    public static double transmittance(Surface surface, Assembly assembly) {
        return Transmittance.of(assembly, HeatFlow.through(surface.normal()), OuterSurface.of(surface.exposure()))
                .corrected();
    }

    /** What rules look at in a house that was audited. */
    public static Facts of(Audit audit) {
        return new Facts(
                audit.house(),
                audit.shell(),
                audit.heatLoss()
                        .lines()
                        .select(line -> line.part() instanceof HeatLoss.Part.OfSurface)
                        .toImmutableMap(
                                line -> ((HeatLoss.Part.OfSurface) line.part())
                                        .surface()
                                        .name(),
                                line -> line.transmittance().middle()),
                Lists.immutable.<BridgeSheet<?>>ofAll(audit.sheets()).newWithAll(audit.pointSheets()),
                Lists.immutable.<BridgeRow>ofAll(audit.junctions()).newWithAll(audit.points()),
                audit.pairs(),
                audit.vertices(),
                audit.assemblies(),
                audit.mould(),
                audit.terraces());
    }

    /** The same of some of the bridges alone: rules judge each by itself, and the rest of the house as a whole. */
    public Facts only(Predicate<BridgeRow> bridges) {
        ImmutableList<BridgeRow> some = rows.select(bridges::test);
        return new Facts(
                house,
                shell,
                transmittances,
                sheets.select(sheet -> some.anySatisfy(row -> row.isOn(sheet))),
                some,
                pairs.select(pair -> some.contains(pair.pair().one())
                        && some.contains(pair.pair().other())),
                corners,
                assemblies,
                mould,
                terraces);
    }

    ImmutableList<BridgeRow> rows(BridgeSheet<?> sheet) {
        return rows.select(row -> row.isOn(sheet));
    }

    /** Whether a sheet is judged by value: somebody chose its detail and its surfaces all have the heat layer they need. */
    boolean judges(BridgeSheet<?> sheet) {
        return sheet.chosen() && rows(sheet).anySatisfy(row -> keeps(row.surfaces(), Control.HEAT));
    }

    /** Corners that are computed, whose edges' details somebody chose and whose surfaces all have the heat layer they need. */
    ImmutableList<VertexRow> judgedCorners() {
        return corners.select(row -> row.sheet().filter(VertexSheet::chosen).isPresent()
                && keeps(row.corner().surfaces(), Control.HEAT));
    }

    /** Pairs computed in one section whose details somebody chose and whose surfaces all have the heat layer they need. */
    ImmutableList<PairRow> judgedPairs() {
        return pairs.select(row -> row.sheet().filter(PairSheet::chosen).isPresent()
                && keeps(row.pair().one().surfaces(), Control.HEAT)
                && keeps(row.pair().other().surfaces(), Control.HEAT));
    }

    /** Whether a control layer must pass a bridge: a surface of its first place needs it, and none that does lacks it. */
    boolean mustPass(BridgeSheet<?> sheet, Control control) {
        BridgeRow row = rows(sheet).getFirst();
        return row.surfaces().anySatisfy(surface -> needs(surface, control)) && keeps(row.surfaces(), control);
    }

    /** Whether a control layer must be joined at a bridge: every surface of its first place needs it and has it. */
    boolean mustJoin(BridgeSheet<?> sheet, Control control) {
        BridgeRow row = rows(sheet).getFirst();
        return row.surfaces().allSatisfy(surface -> needs(surface, control)) && keeps(row.surfaces(), control);
    }

    /** Whether every surface that needs a control layer has it. */
    private static boolean keeps(ImmutableList<Surface> surfaces, Control control) {
        return surfaces.allSatisfy(surface -> !needs(surface, control) || has(surface, control));
    }

    /**
     * Whether a surface needs a control layer: none towards heated neighbours; water control where rain or the ground's
     * moisture is.
     */
    static boolean needs(Surface surface, Control control) {
        Exposure.Kind kind = surface.exposure().kind();
        if (kind == Exposure.Kind.PARTY) {
            return false;
        }
        return control != Control.WATER || kind == Exposure.Kind.OUTDOORS || kind == Exposure.Kind.GROUND;
    }

    /**
     * Whether a surface has a control layer, of heat one that can hold it; what has no assembly is another rule's finding.
     */
    static boolean has(Surface surface, Control control) {
        return surface.assembly()
                .map(assembly -> control == Control.HEAT ? assembly.holdsHeat() : assembly.controls(control))
                .orElse(true);
    }

    /** W/K that a sheet's places lose more than with the best option; never less than none. */
    private Optional<Interval> lostAgainstBest(BridgeSheet<?> sheet) {
        return sheet.best().map(found -> {
            Interval best = found.psiOrChi(house.site().dimensions());
            Interval sum = rows(sheet).injectInto(Interval.of(0), (total, row) -> {
                Interval more = new Interval(
                        row.transmittance().lower() - best.upper(),
                        row.transmittance().upper() - best.lower());
                return total.plus(more.times(row.size() * row.factor()));
            });
            return new Interval(Math.max(0, sum.lower()), Math.max(0, sum.upper()));
        });
    }

    /** W/K of several sheets together; empty where none can be said. */
    Optional<Interval> lostAgainstBest(ImmutableList<BridgeSheet<?>> several) {
        ImmutableList<Interval> known = several.collect(this::lostAgainstBest)
                .select(Optional::isPresent)
                .collect(Optional::get);
        return known.isEmpty() ? Optional.empty() : Optional.of(known.injectInto(Interval.of(0), Interval::plus));
    }

    /** Sheets with one detail, each group in the sheets' order: what is wrong with them has one cause. */
    static ImmutableList<ImmutableList<BridgeSheet<?>>> byDetail(ImmutableList<BridgeSheet<?>> sheets) {
        return Groups.by(sheets, Facts::cause);
    }

    static String cause(BridgeSheet<?> sheet) {
        return "detail " + sheet.result().detail().id() + " at " + sheet.kind();
    }

    /** A draft about all places of sheets with one detail. */
    Draft about(ImmutableList<BridgeSheet<?>> worstFirst, Severity severity, Evidence evidence) {
        return new Draft(
                cause(worstFirst.getFirst()),
                severity,
                evidence,
                new Subject.Bridges(worstFirst.flatCollect(this::rows)),
                worstFirst,
                lostAgainstBest(worstFirst));
    }

    /** How much of the house some rows of one sort are: a length, or how many. */
    static Value extent(ImmutableList<BridgeRow> rows) {
        double size = rows.sumOfDouble(BridgeRow::size);
        return rows.getFirst() instanceof JunctionRow
                ? Value.of("length", size, Dimension.LENGTH)
                : Value.of("number", size, Dimension.RATIO);
    }
}
