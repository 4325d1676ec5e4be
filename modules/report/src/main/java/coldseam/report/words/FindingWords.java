package coldseam.report.words;

import coldseam.audit.BridgeRow;
import coldseam.audit.Finding;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.Subject;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of a finding, in one system of units; the sentences of each rule stand in {@link RuleWords}. */
public final class FindingWords {

    /** Most places a finding spells out. */
    private static final int MOST_PLACES = 4;

    /** m, that the ends of an upright edge may lie apart in plan. */
    private static final double UPRIGHT = 1e-3;

    private final Phrases say;

    /** Words with values in some units. */
    public FindingWords(UnitSystem units) {
        this.say = new Phrases(units);
    }

    /** Short, with a capital. */
    public String title(Finding finding) {
        return Phrases.capital(RuleWords.title(finding.breaches().getFirst(), say));
    }

    /** What was found, with values and units: a sentence. */
    public String what(Finding finding) {
        return sentence(finding.breaches()
                .collect(breach -> RuleWords.what(breach, say))
                .makeString("; "));
    }

    /**
     * What closes it: a sentence. What is wrong with a surface is each mended by itself; a better option mends all that is wrong
     * with a seam.
     */
    public String toDo(Finding finding) {
        boolean apart = finding.subject() instanceof Subject.Surfaces;
        return sentence(finding.breaches()
                .take(apart ? Integer.MAX_VALUE : 1)
                .collect(breach -> RuleWords.toDo(breach, say))
                .distinct()
                .makeString("; "));
    }

    /** Where a person can walk to; the first few places spelled out. */
    public String place(Finding finding) {
        ImmutableList<String> all = places(finding);
        ImmutableList<String> named = all.distinct().take(MOST_PLACES);
        int more = all.count(place -> !named.contains(place));
        return named.collect(place -> counted(place, all.count(place::equals))).makeString("; ")
                + (more > 0 ? "; and " + more + " more" : "");
    }

    /** The first place alone. */
    public String firstPlace(Finding finding) {
        ImmutableList<String> all = places(finding);
        return counted(all.getFirst(), all.count(all.getFirst()::equals))
                + (all.distinct().size() > 1 ? " and other places" : "");
    }

    /** A place, and of how many alike. */
    private static String counted(String place, int alike) {
        return alike > 1 ? alike + " × " + place : place;
    }

    private ImmutableList<String> places(Finding finding) {
        return finding.subject()
                .match(
                        bridges -> bridges.rows().<String>collect(this::place),
                        surfaces -> surfaces.all().collect(FindingWords::place),
                        hole -> hole.edges().collect(e -> place(e.place(), e.length(), e.from(), e.to())),
                        corners -> corners.rows().collect(row -> row.corner().place()));
    }

    private static String place(Surface surface) {
        boolean said = surface.name().contains(surface.storey());
        return said ? surface.name() : surface.name() + ", " + surface.storey();
    }

    private String place(BridgeRow row) {
        if (row instanceof JunctionRow junction) {
            return place(
                    junction.edge().place(),
                    junction.length(),
                    junction.edge().from(),
                    junction.edge().to());
        }
        return row.name() + ", " + ((PointRow) row).surface().name();
    }

    private String place(String words, double length, Point3 from, Point3 to) {
        boolean upright = Math.hypot(to.x() - from.x(), to.y() - from.y()) < UPRIGHT;
        UnitSystem units = say.units();
        String said = units == UnitSystem.US
                ? say.say(length, Dimension.LENGTH)
                : units.number(length, Dimension.LENGTH) + " " + units.label(Dimension.LENGTH);
        return words + ", " + said + (upright ? " high" : " long");
    }

    private static String sentence(String words) {
        return Phrases.capital(words) + ".";
    }
}
