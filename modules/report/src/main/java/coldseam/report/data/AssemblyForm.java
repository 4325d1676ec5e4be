package coldseam.report.data;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.report.data.Types.TEXTS;
import static coldseam.report.data.Types.WORD;

import coldseam.assemblies.moisture.Condensation;
import coldseam.audit.AssemblyRow;
import coldseam.envelope.Layer;
import coldseam.files.JsonForm;
import coldseam.report.words.Phrases;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;

/** Build-ups, and the water in them. */
final class AssemblyForm {

    private static final JsonForm<Layer> LAYER = JsonForm.<Layer>of("LayerData")
            .with("material", TEXT, layer -> layer.material().name())
            .with("thickness_m", NUMBER, Layer::thickness)
            .with("conductivity_W_per_mK", NUMBER, layer -> layer.material().conductivity())
            .with("role", WORD, Layer::role)
            .with(
                    "controls",
                    TEXTS,
                    layer ->
                            layer.controls().toSortedList().collect(Types::word).toImmutable())
            .maybe(
                    "framing",
                    TEXT,
                    layer -> layer.framing().map(each -> each.material().name()))
            .maybe("framingShare", NUMBER, layer -> layer.framing().map(Layer.Framing::share))
            .says("of the area, 0 to 1")
            .maybe("framingWidth_m", NUMBER, layer -> spaced(layer).map(Layer.Spaced::width))
            .says("of each member, where the share follows from how they stand")
            .maybe("framingSpacing_m", NUMBER, layer -> spaced(layer).map(Layer.Spaced::spacing))
            .says("from the middle of one to that of the next")
            .maybe("framingBesides", NUMBER, layer -> spaced(layer).map(Layer.Spaced::besides))
            .says("share that plates, lintels, studs at openings and blocking are said to take besides");

    private static Optional<Layer.Spaced> spaced(Layer layer) {
        return layer.framing().flatMap(Layer.Framing::spaced);
    }

    private static final JsonForm<Condensation.Balance> MONTH = JsonForm.<Condensation.Balance>of("MonthData")
            .with("month", TEXT, month -> Phrases.month(month.month()))
            .with("indoorVapourPressure_Pa", NUMBER, Condensation.Balance::indoorPressure)
            .with("outdoorVapourPressure_Pa", NUMBER, Condensation.Balance::outdoorPressure)
            .with("gain_kg_per_m2", NUMBER, Condensation.Balance::gain)
            .with("amount_kg_per_m2", NUMBER, Condensation.Balance::amount);

    private static final JsonForm<AssemblyRow> WATER = JsonForm.<AssemblyRow>of("CondensationData")
            .with("checked", FLAG, row -> row.year().isPresent())
            .maybe(
                    "why",
                    TEXT,
                    row -> Optional.of(row.moisture().unchecked())
                            .filter(why -> row.year().isEmpty()))
            .says("left out where it was checked")
            .maybe("verdict", WORD, row -> row.year().map(Condensation::verdict))
            .says("stays-dry, dries-out or accumulates")
            .maybe("most_kg_per_m2", NUMBER, row -> row.year().map(Condensation::most))
            .says("the greatest amount in all planes together, at the end of a month")
            .maybe(
                    "wettestMonth",
                    TEXT,
                    row -> row.wet().map(year -> Phrases.month(year.wettest().month())))
            .says("of the greatest amount; left out where nothing condenses")
            .maybe("wettestPlane", TEXT, row -> row.wet().map(Condensation::wettestPlane))
            .says("between which layers most is held then")
            .maybe("left_kg_per_m2", NUMBER, row -> row.year().map(Condensation::left))
            .says("after twelve months")
            .with(
                    "months",
                    MONTH.list(),
                    row -> row.year().map(Condensation::months).orElse(Lists.immutable.empty()))
            .says("from the first month that condenses");

    static final JsonForm<AssemblyRow> ASSEMBLY = JsonForm.<AssemblyRow>of("AssemblyData")
            .with("name", TEXT, row -> row.assembly().name())
            .with("transmittance_W_per_m2K", NUMBER, AssemblyRow::transmittance)
            .with("area_m2", NUMBER, AssemblyRow::area)
            .with("heatFlow", WORD, row -> row.build().direction())
            .says("of the heat, from indoors: horizontal, upwards or downwards")
            .with("layers", LAYER.list(), row -> row.assembly().layers())
            .says("inside to outside")
            .with("condensation", WATER, row -> row);

    private AssemblyForm() {}
}
