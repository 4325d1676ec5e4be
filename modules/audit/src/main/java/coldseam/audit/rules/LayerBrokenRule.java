package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.detail.Connection;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A control layer that stops at a junction: heat by the pen line, the others by what the detail says. */
final class LayerBrokenRule implements Rule {

    @Override
    public String id() {
        return "layer-broken";
    }

    @Override
    public String says() {
        return "Insulation, air, water and vapour control pass through every junction without a break.";
    }

    @Override
    public String closing() {
        return "Choose a detail in which the layer is carried across.";
    }

    @Override
    public int gravity() {
        return 10;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionSheet> broken = facts.sheets()
                .select(sheet -> sheet.chosen() && broken(facts, sheet).notEmpty());
        return Facts.byDetail(broken).collect(sheets -> draft(facts, sheets));
    }

    private Draft draft(Facts facts, ImmutableList<JunctionSheet> sheets) {
        ImmutableList<JunctionSheet> worstFirst = sheets.toSortedListBy(
                        sheet -> -sheet.result().psiExternal().middle())
                .toImmutable();
        JunctionSheet worst = worstFirst.getFirst();
        String layers =
                Layers.phrase(sheets.flatCollect(sheet -> broken(facts, sheet)).distinct());
        return facts.about(
                worstFirst,
                this,
                Severity.GAP,
                String.format(
                        Locale.ROOT,
                        "%s broken at the %s",
                        layers,
                        worst.result().setup().kind().label()),
                String.format(
                        Locale.ROOT,
                        "%s ends at \"%s\"",
                        layers,
                        worst.result().detail().name()),
                "carry it across; " + facts.better(worst));
    }

    private static ImmutableList<Control> broken(Facts facts, JunctionSheet sheet) {
        Edge edge = facts.rows(sheet).getFirst().edge();
        return Lists.immutable.of(Control.values()).select(control -> {
            if (control == Control.HEAT) {
                return heatBreaks(facts, sheet);
            }
            Connection connection = sheet.result().detail().connections().get(control);
            return connection == Connection.BROKEN && facts.anyNeeds(edge, control) && facts.keeps(edge, control);
        });
    }

    /** Whether the pen line of a judged sheet is broken. */
    static boolean heatBreaks(Facts facts, JunctionSheet sheet) {
        return facts.judged().contains(sheet) && !sheet.result().penLine().unbroken();
    }
}
