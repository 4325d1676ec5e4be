package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.Connection;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

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
        return facts.sheets()
                .select(JunctionSheet::chosen)
                .collect(sheet -> draft(facts, sheet))
                .select(Optional::isPresent)
                .collect(Optional::get);
    }

    private Optional<Draft> draft(Facts facts, JunctionSheet sheet) {
        ImmutableList<String> broken = broken(facts, sheet);
        if (broken.isEmpty()) {
            return Optional.empty();
        }
        String kind = sheet.result().setup().kind().label();
        String layers = broken.makeString(", ");
        return Optional.of(facts.about(
                sheet,
                this,
                Severity.GAP,
                String.format(Locale.ROOT, "%s broken at the %s", layers, kind),
                String.format(
                        Locale.ROOT,
                        "with \"%s\" the %s does not pass",
                        sheet.result().detail().name(),
                        layers),
                "carry it across; " + facts.better(sheet)));
    }

    private static ImmutableList<String> broken(Facts facts, JunctionSheet sheet) {
        Edge edge = facts.rows(sheet).getFirst().edge();
        MutableList<String> broken = Lists.mutable.empty();
        if (heatBreaks(facts, sheet)) {
            broken.add("insulation");
        }
        for (Control control : Layers.CONNECTED) {
            Connection connection = sheet.result().detail().connections().get(control);
            if (connection == Connection.BROKEN && facts.anyNeeds(edge, control) && facts.keeps(edge, control)) {
                broken.add(Layers.word(control));
            }
        }
        return broken.toImmutable();
    }

    /** Whether the pen line of a judged sheet is broken. */
    static boolean heatBreaks(Facts facts, JunctionSheet sheet) {
        return facts.judged().contains(sheet) && !sheet.result().penLine().unbroken();
    }
}
