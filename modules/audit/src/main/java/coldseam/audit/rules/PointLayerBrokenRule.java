package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.PointSheet;
import coldseam.envelope.Control;
import coldseam.junctions.detail.Connection;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** A control layer that is left open around something that goes through it. */
final class PointLayerBrokenRule implements Rule {

    @Override
    public String id() {
        return "point-layer-broken";
    }

    @Override
    public String says() {
        return "Air, water and vapour control are joined to whatever goes through them.";
    }

    @Override
    public String closing() {
        return "Choose a detail in which the layer is sealed to it.";
    }

    @Override
    public int gravity() {
        return 17;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<PointSheet> found = facts.pointSheets()
                .select(sheet -> sheet.chosen() && broken(facts, sheet).notEmpty());
        return PointDrafts.byDetail(found).collect(sheets -> draft(facts, sheets));
    }

    private static ImmutableList<Control> broken(Facts facts, PointSheet sheet) {
        return Layers.CONNECTED.select(control -> {
            Connection connection = sheet.result().detail().connections().get(control);
            return connection == Connection.BROKEN && PointDrafts.pierces(facts, sheet, control);
        });
    }

    private Draft draft(Facts facts, ImmutableList<PointSheet> sheets) {
        PointSheet first = sheets.getFirst();
        String layers =
                Layers.phrase(sheets.flatCollect(sheet -> broken(facts, sheet)).distinct());
        return PointDrafts.about(
                facts,
                sheets,
                this,
                Severity.GAP,
                layers + " broken at a " + PointDrafts.counted(first),
                String.format(
                        Locale.ROOT,
                        "\"%1$s\" leaves %2$s open around it",
                        first.result().detail().name(),
                        layers),
                "seal it; " + PointDrafts.better(facts, first));
    }
}
