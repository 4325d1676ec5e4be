package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.detail.Connection;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** A detail that does not say how air, water or vapour control passes. */
final class LayerNotShownRule implements Rule {

    @Override
    public String id() {
        return "layer-not-shown";
    }

    @Override
    public String says() {
        return "Every detail says how air, water and vapour control pass.";
    }

    @Override
    public String closing() {
        return "Choose a detail that shows the connection, or add it to your own.";
    }

    @Override
    public int gravity() {
        return 15;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionSheet> silent = facts.sheets()
                .select(sheet -> sheet.chosen() && hidden(facts, sheet).notEmpty());
        return Facts.byDetail(silent).collect(sheets -> draft(facts, sheets));
    }

    private static ImmutableList<Control> hidden(Facts facts, JunctionSheet sheet) {
        Edge edge = facts.rows(sheet).getFirst().edge();
        return Layers.CONNECTED.select(control -> {
            Connection connection = sheet.result().detail().connections().get(control);
            boolean unknown = connection == null || connection == Connection.NOT_SHOWN;
            return unknown && facts.anyNeeds(edge, control) && facts.keeps(edge, control);
        });
    }

    private Draft draft(Facts facts, ImmutableList<JunctionSheet> sheets) {
        JunctionSheet first = sheets.getFirst();
        String layers =
                Layers.phrase(sheets.flatCollect(sheet -> hidden(facts, sheet)).distinct());
        return facts.about(
                sheets,
                this,
                Severity.UNKNOWN,
                String.format(
                        Locale.ROOT,
                        "%s not shown at the %s",
                        layers,
                        first.result().setup().kind().label()),
                String.format(
                        Locale.ROOT,
                        "\"%s\" does not show what becomes of %s",
                        first.result().detail().name(),
                        layers),
                "show how it is lapped, taped, sealed or gasketed; " + facts.better(first));
    }
}
