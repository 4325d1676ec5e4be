package coldseam.audit.rules;

import coldseam.audit.AssemblyRow;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.JunctionSheet;
import coldseam.audit.Mould;
import coldseam.audit.PointRow;
import coldseam.audit.PointSheet;
import coldseam.audit.Subject;
import coldseam.audit.TerraceLine;
import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * What rules look at.
 *
 * @param house as read
 * @param shell of it
 * @param transmittances W/(m²·K), by the surface's name
 * @param sheets every different junction
 * @param rows one for each edge
 * @param misfits why the detail chosen for an edge does not fit, by the edge's name; only edges with such reasons
 * @param assemblies each one that is used
 * @param mould on the junctions' inner surfaces
 * @param pointSheets every different point
 * @param points one for each set of points
 * @param pointMisfits why the detail chosen for a set of points does not fit, by the set's name; only sets with such reasons
 * @param terraces one for each terrace deck
 * @param units in which findings write their values
 */
public record Facts(
        House house,
        Shell shell,
        ImmutableMap<String, Double> transmittances,
        ImmutableList<JunctionSheet> sheets,
        ImmutableList<JunctionRow> rows,
        ImmutableMap<String, ImmutableList<String>> misfits,
        ImmutableList<AssemblyRow> assemblies,
        Mould mould,
        ImmutableList<PointSheet> pointSheets,
        ImmutableList<PointRow> points,
        ImmutableMap<String, ImmutableList<String>> pointMisfits,
        ImmutableList<TerraceLine> terraces,
        UnitSystem units) {

    /** Most places a finding spells out. */
    private static final int MOST_PLACES = 4;

    /** m, that the ends of an upright edge may lie apart in plan. */
    private static final double UPRIGHT = 1e-3;

    /** The words of a sentence with its first letter as a capital. */
    static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** The rows of a sheet. */
    ImmutableList<JunctionRow> rows(JunctionSheet sheet) {
        return rows.select(row -> row.isOn(sheet));
    }

    /** Sheets whose detail somebody chose and whose surfaces all have the heat layer they need: what is judged by value. */
    ImmutableList<JunctionSheet> judged() {
        return sheets.select(JunctionSheet::chosen)
                .select(sheet -> rows(sheet).anySatisfy(row -> keeps(row.edge(), Control.HEAT)));
    }

    /** Whether every surface beside an edge that needs a control layer has it. */
    boolean keeps(Edge edge, Control control) {
        return beside(edge).allSatisfy(surface -> !needs(surface, control) || has(surface, control));
    }

    /** Whether some surface beside an edge needs a control layer. */
    boolean anyNeeds(Edge edge, Control control) {
        return beside(edge).anySatisfy(surface -> needs(surface, control));
    }

    static ImmutableList<Surface> beside(Edge edge) {
        return edge.second()
                .map(second -> Lists.immutable.of(edge.first(), second))
                .orElse(Lists.immutable.of(edge.first()));
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

    /** Whether a surface has a control layer; what has no assembly is another rule's finding. */
    static boolean has(Surface surface, Control control) {
        return surface.assembly().map(assembly -> assembly.controls(control)).orElse(true);
    }

    /** A value with its unit, as findings print it. */
    String say(double value, Dimension dimension) {
        return units.format(value, dimension);
    }

    /** A proven interval with its unit. */
    String say(Interval value, Dimension dimension) {
        return units.interval(value.lower(), value.upper(), dimension);
    }

    /** psi of a sheet with external dimensions; an own psi of the house goes before the computed one. */
    Interval externalPsi(JunctionSheet sheet, JunctionRow row) {
        Interval psi = row.psi();
        boolean external = house.site().dimensions() == DimensionSystem.EXTERNAL;
        JunctionResult result = sheet.result();
        return external
                ? psi
                : psi.plus(result.psiExternal().middle() - result.psiInternal().middle());
    }

    /** W/K that a sheet's edges lose more than with the best option; never less than none. */
    private Optional<Interval> lostAgainstBest(JunctionSheet sheet) {
        if (sheet.best().isEmpty()) {
            return Optional.empty();
        }
        DimensionSystem system = house.site().dimensions();
        Interval best = sheet.best().get().psi(system);
        Interval sum = rows(sheet).injectInto(Interval.of(0), (total, row) -> {
            Interval more =
                    new Interval(row.psi().lower() - best.upper(), row.psi().upper() - best.lower());
            return total.plus(more.times(row.length() * row.factor()));
        });
        return Optional.of(new Interval(Math.max(0, sum.lower()), Math.max(0, sum.upper())));
    }

    /** Sheets with one detail, each group in the sheets' order: what is wrong with them has one cause. */
    static ImmutableList<ImmutableList<JunctionSheet>> byDetail(ImmutableList<JunctionSheet> sheets) {
        return sheets.collect(Facts::cause)
                .distinct()
                .collect(cause -> sheets.select(sheet -> cause(sheet).equals(cause)));
    }

    private static String cause(JunctionSheet sheet) {
        return "detail " + sheet.result().detail().id() + " at "
                + sheet.result().setup().kind();
    }

    /** A draft about all edges of sheets with one detail. */
    Draft about(
            ImmutableList<JunctionSheet> worstFirst,
            Rule rule,
            Severity severity,
            String title,
            String what,
            String toDo) {
        ImmutableList<JunctionRow> rows = worstFirst.flatCollect(this::rows);
        return new Draft(
                rule,
                cause(worstFirst.getFirst()),
                severity,
                title,
                what,
                new Subject.Edges(rows),
                worstFirst,
                Optional.empty(),
                lostAgainstBest(worstFirst),
                toDo);
    }

    /** W/K of several sheets together; empty where none can be said. */
    Optional<Interval> lostAgainstBest(ImmutableList<JunctionSheet> several) {
        ImmutableList<Interval> known = several.collect(this::lostAgainstBest)
                .select(Optional::isPresent)
                .collect(Optional::get);
        return known.isEmpty() ? Optional.empty() : Optional.of(known.injectInto(Interval.of(0), Interval::plus));
    }

    /** What the catalogue would do instead, as a next step; empty words where it has nothing better. */
    String better(JunctionSheet sheet) {
        return sheet.best()
                .map(best -> String.format(
                        Locale.ROOT,
                        "the catalogue's best here is \"%s\" (%s), psi %s%s",
                        best.detail().name(),
                        best.detail().id(),
                        say(best.psiExternal(), Dimension.LINEAR_TRANSMITTANCE),
                        best.detail()
                                .cost()
                                .map(cost -> ", " + cost.sourced(units))
                                .orElse("")))
                .orElse("the catalogue has nothing better for these layers");
    }

    /** Where something is, in words. */
    String place(Subject subject) {
        return phrase(subject.match(
                edges -> edges.rows()
                        .collect(row -> place(
                                row.edge().place(),
                                row.length(),
                                row.edge().from(),
                                row.edge().to())),
                points -> points.rows()
                        .collect(row ->
                                row.points().name() + ", " + row.surface().name()),
                surfaces -> surfaces.all().collect(Facts::place),
                hole -> hole.edges().collect(edge -> place(edge.place(), edge.length(), edge.from(), edge.to()))));
    }

    private static String place(Surface surface) {
        boolean said = surface.name().contains(surface.storey());
        return said ? surface.name() : surface.name() + ", " + surface.storey();
    }

    private String place(String words, double length, Point3 from, Point3 to) {
        boolean upright = Math.hypot(to.x() - from.x(), to.y() - from.y()) < UPRIGHT;
        String said = units == UnitSystem.US
                ? say(length, Dimension.LENGTH)
                : units.number(length, Dimension.LENGTH) + " " + units.label(Dimension.LENGTH);
        return words + ", " + said + (upright ? " high" : " long");
    }

    /** Several places in one phrase; the first few spelled out. */
    static String phrase(ImmutableList<String> all) {
        ImmutableList<String> distinct = all.distinct();
        int more = distinct.size() - MOST_PLACES;
        String named = distinct.take(MOST_PLACES).makeString("; ");
        return more > 0 ? named + "; and " + more + " more" : named;
    }
}
