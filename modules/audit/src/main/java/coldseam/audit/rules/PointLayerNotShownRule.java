package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.PointSheet;
import coldseam.envelope.Control;
import coldseam.junctions.detail.Connection;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** A point detail that does not say how air, water or vapour control passes. */
final class PointLayerNotShownRule implements Rule {

    @Override
    public String id() {
        return "point-layer-not-shown";
    }

    @Override
    public String says() {
        return "Every point detail says how air, water and vapour control are joined to what goes through them.";
    }

    @Override
    public String closing() {
        return "Choose a detail that shows the connection, or add it to your own.";
    }

    @Override
    public int gravity() {
        return 18;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<PointSheet> found = facts.pointSheets()
                .select(sheet -> sheet.chosen() && hidden(facts, sheet).notEmpty());
        return PointDrafts.byDetail(found).collect(sheets -> draft(facts, sheets));
    }

    private static ImmutableList<Control> hidden(Facts facts, PointSheet sheet) {
        return Layers.CONNECTED.select(control -> {
            Connection connection = sheet.result().detail().connections().get(control);
            return (connection == null || connection == Connection.NOT_SHOWN)
                    && PointDrafts.pierces(facts, sheet, control);
        });
    }

    private Draft draft(Facts facts, ImmutableList<PointSheet> sheets) {
        PointSheet first = sheets.getFirst();
        String layers =
                Layers.phrase(sheets.flatCollect(sheet -> hidden(facts, sheet)).distinct());
        return PointDrafts.about(
                facts,
                sheets,
                this,
                Severity.UNKNOWN,
                layers + " not shown at a " + PointDrafts.counted(first),
                String.format(
                        Locale.ROOT,
                        "\"%1$s\" does not show how %2$s is joined to it",
                        first.result().detail().name(),
                        layers),
                "show how it is lapped, taped, sealed or gasketed; " + PointDrafts.better(facts, first));
    }
}
