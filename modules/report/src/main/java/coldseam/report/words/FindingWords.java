package coldseam.report.words;

import coldseam.audit.BridgeRow;
import coldseam.audit.Finding;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.Subject;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of a finding, in one system of units; the sentences of each rule stand in {@link RuleWords}. */
public final class FindingWords {

    /** Most places a finding spells out. */
    private static final int MOST_PLACES = 4;

    /** So many findings whose words are the same are told once. */
    private static final int SEVERAL = 3;

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

    /**
     * What is not the same of all seams and points for which nobody chose.
     *
     * @param standIn the worst option and what it lets through
     * @param best the catalogue's best, likewise
     */
    public record Unchosen(String standIn, String best) {}

    /** Where several findings are of {@link #unchosen}, what is the same of them, to be told once; empty of fewer. */
    public Optional<String> toldOnce(ImmutableList<Finding> findings) {
        int several = findings.count(finding -> unchosen(finding).isPresent());
        return several < SEVERAL
                ? Optional.empty()
                : Optional.of(Format.of(
                        "Of %d kinds of seams and points nobody chose how they are built. Of each the worst option stands in until a detail"
                                + " is chosen for it, under junctions or points; beside it stands the catalogue's best.",
                        several));
    }

    /** Of a finding that is no more than that nobody chose, with something that stands in. */
    public Optional<Unchosen> unchosen(Finding finding) {
        return finding.breaches().size() == 1
                ? RuleWords.unchosen(finding.breaches().getFirst(), say)
                : Optional.empty();
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
        return words + ", " + new Print(say.units()).length(length) + (upright ? " high" : " long");
    }

    private static String sentence(String words) {
        return Phrases.capital(words) + ".";
    }
}
