package coldseam.report.data;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Mould;
import coldseam.audit.Sheet;
import coldseam.audit.VertexSheet;
import coldseam.files.JsonForm;
import coldseam.report.words.Phrases;
import java.util.Optional;

/** Where mould may grow. */
final class MouldForm {

    private static final JsonForm<MonthlyTemperatureFactor.Need> NEED = JsonForm.<MonthlyTemperatureFactor.Need>of(
                    "NeedData")
            .with("month", TEXT, need -> Phrases.month(need.month()))
            .with("indoorVapourPressure_Pa", NUMBER, MonthlyTemperatureFactor.Need::indoorPressure)
            .with("leastTemperature_degC", NUMBER, MonthlyTemperatureFactor.Need::leastTemperature)
            .with("need", NUMBER, MonthlyTemperatureFactor.Need::temperatureFactor);

    private static final JsonForm<MonthlyTemperatureFactor> MONTHLY = JsonForm.<MonthlyTemperatureFactor>of(
                    "MonthlyData")
            .with(
                    "criticalMonth",
                    TEXT,
                    factor -> Phrases.month(factor.critical().month()))
            .says("that asks for most, in English")
            .with("need", NUMBER, factor -> factor.critical().temperatureFactor())
            .says("fRsi that it asks for")
            .with("indoorHumidity", NUMBER, factor -> factor.critical().indoorHumidity())
            .says("relative indoor humidity then")
            .with("months", NEED.list(), MonthlyTemperatureFactor::months)
            .says("heated months alone");

    /** A surface among all. */
    private record In(Mould mould, Mould.Surface surface) {

        Optional<String> id(Class<? extends Sheet> of) {
            return Optional.of(surface.sheet()).filter(of::isInstance).map(Sheet::id);
        }
    }

    private static final JsonForm<In> SURFACE = JsonForm.<In>of("SurfaceData")
            .maybe("junctionSheet", TEXT, in -> in.id(BridgeSheet.class))
            .says("left out for a corner")
            .maybe("vertexSheet", TEXT, in -> in.id(VertexSheet.class))
            .says("left out for a junction")
            .with("temperatureFactor", NUMBER, in -> in.surface().temperatureFactor())
            .with("humidityAtDesign", NUMBER, in -> in.surface().humidityAtDesign())
            .says("relative indoor humidity from which mould may grow at the design temperatures")
            .maybeNumber("humidityInCriticalMonth", in -> in.surface().humidityInCriticalMonth())
            .says("the same in the critical month")
            .with("wetAtDesign", FLAG, in -> in.mould().wetAtDesign().contains(in.surface()))
            .says("whether the site's indoor humidity is enough for it at the design temperatures")
            .with("wetByMonth", FLAG, in -> in.mould().wetByMonth().contains(in.surface()))
            .says("whether the months' humidity is enough for it");

    static final JsonForm<Mould> MOULD = JsonForm.<Mould>of("MouldData")
            .with("limit", NUMBER, Mould::limit)
            .says("least fRsi by the house's limits")
            .with("designNeed", NUMBER, Mould::designNeed)
            .says("fRsi that the design temperatures ask for at the site's indoor humidity")
            .maybe("monthly", MONTHLY, Mould::monthly)
            .says("left out without a monthly climate")
            .with("surfaces", SURFACE.list(), mould -> mould.surfaces().collect(each -> new In(mould, each)))
            .says("the coldest first");

    private MouldForm() {}
}
