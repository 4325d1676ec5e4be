package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.Connection;
import java.util.Locale;
import java.util.Optional;
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
        return facts.sheets()
                .select(JunctionSheet::chosen)
                .collect(sheet -> draft(facts, sheet))
                .select(Optional::isPresent)
                .collect(Optional::get);
    }

    private Optional<Draft> draft(Facts facts, JunctionSheet sheet) {
        Edge edge = facts.rows(sheet).getFirst().edge();
        ImmutableList<Control> hidden = Layers.CONNECTED.select(control -> {
            Connection connection = sheet.result().detail().connections().get(control);
            boolean unknown = connection == null || connection == Connection.NOT_SHOWN;
            return unknown && facts.anyNeeds(edge, control) && facts.keeps(edge, control);
        });
        if (hidden.isEmpty()) {
            return Optional.empty();
        }
        String layers = hidden.collect(Layers::word).makeString(", ");
        String detail = sheet.result().detail().name();
        return Optional.of(facts.about(
                sheet,
                this,
                Severity.UNKNOWN,
                String.format(
                        Locale.ROOT,
                        "%s not shown at the %s",
                        layers,
                        sheet.result().setup().kind().label()),
                String.format(Locale.ROOT, "\"%s\" does not show how the %s passes", detail, layers),
                "show how it is lapped, taped, sealed or gasketed; " + facts.better(sheet)));
    }
}
