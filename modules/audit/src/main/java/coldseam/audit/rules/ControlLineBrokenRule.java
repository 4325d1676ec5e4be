package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.ControlLine;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A control layer whose line does not get through a junction's section although the detail says that it is carried across:
 * the two surfaces' layers lie on the two sides of the insulation, or no strip along the drawing's joints joins them.
 */
final class ControlLineBrokenRule implements Rule {

    @Override
    public String id() {
        return "control-line-broken";
    }

    @Override
    public String says() {
        return "The line of each control layer runs unbroken through every junction's section, on one side of the insulation.";
    }

    @Override
    public String closing() {
        return "Control both surfaces on the same side of the insulation, or draw what joins the two layers.";
    }

    @Override
    public int gravity() {
        return 11;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionSheet> broken = facts.sheets()
                .select(sheet -> sheet.chosen() && stopped(facts, sheet).notEmpty());
        return Facts.byDetail(broken).collect(sheets -> draft(facts, sheets));
    }

    private Draft draft(Facts facts, ImmutableList<JunctionSheet> sheets) {
        JunctionSheet first = sheets.getFirst();
        ImmutableList<ControlLine> lines = stopped(facts, first);
        String layers = Layers.phrase(sheets.flatCollect(sheet -> stopped(facts, sheet))
                .collect(ControlLine::control)
                .distinct());
        boolean changes = lines.anySatisfy(line -> changesSide(line).isPresent());
        String kind = first.result().setup().kind().label();
        return facts.about(
                sheets,
                this,
                Severity.GAP,
                String.format(
                        Locale.ROOT,
                        "%s %s at the %s",
                        layers,
                        changes ? "changes to the other side of the insulation" : "does not reach across",
                        kind),
                lines.collect(ControlLineBrokenRule::what).distinct().makeString("; "),
                changes
                        ? "let both surfaces control it on the same side of the insulation, or draw the strip that joins the two"
                                + " layers through it"
                        : "draw what joins the two layers; " + facts.better(first));
    }

    private static String what(ControlLine line) {
        String word = SurfaceControlRule.word(line.control());
        return changesSide(line)
                .map(change -> word + " control lies " + zone(change.first().name())
                        + " the insulation in one surface and "
                        + zone(change.second().name()) + " it in the other, and nothing that is drawn joins the two")
                .orElse("no tape or lap along the joints of the drawing joins the two layers of " + word + " control");
    }

    private static String zone(String zone) {
        return zone.toLowerCase(Locale.ROOT);
    }

    private static Optional<ControlLine.ChangesSide> changesSide(ControlLine line) {
        return line.match(
                continuous -> Optional.empty(), broken -> Optional.empty(), Optional::of, notShown -> Optional.empty());
    }

    private static ImmutableList<ControlLine> stopped(Facts facts, JunctionSheet sheet) {
        Edge edge = facts.rows(sheet).getFirst().edge();
        return sheet.result().controls().select(line -> stops(line) && counts(facts, edge, line.control()));
    }

    /** Whether both surfaces need the control and name it: else there is nothing that the line must join. */
    private static boolean counts(Facts facts, Edge edge, Control control) {
        return Facts.beside(edge).allSatisfy(surface -> Facts.needs(surface, control)) && facts.keeps(edge, control);
    }

    /** What a detail says to be broken is another rule's finding. */
    private static boolean stops(ControlLine line) {
        return line.match(
                continuous -> false,
                broken -> broken.why() == ControlLine.Broken.Reason.OUT_OF_REACH,
                changesSide -> true,
                notShown -> false);
    }
}
