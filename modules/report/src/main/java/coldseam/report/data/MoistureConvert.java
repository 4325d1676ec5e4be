package coldseam.report.data;

import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.BridgeSheet;
import coldseam.audit.MoistureCheck;
import coldseam.audit.Mould;
import coldseam.audit.Sheet;
import coldseam.audit.VertexSheet;
import coldseam.report.words.Phrases;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;

/** From the audit's moisture to its data. */
final class MoistureConvert {

    private MoistureConvert() {}

    static MouldData mould(Mould mould) {
        return new MouldData(
                mould.limit(),
                mould.designNeed(),
                mould.monthly().map(MoistureConvert::monthly),
                mould.surfaces()
                        .collect(surface -> new MouldData.SurfaceData(
                                id(surface, BridgeSheet.class),
                                id(surface, VertexSheet.class),
                                surface.temperatureFactor(),
                                surface.humidityAtDesign(),
                                surface.humidityInCriticalMonth(),
                                mould.wetAtDesign().contains(surface),
                                mould.wetByMonth().contains(surface))));
    }

    private static Optional<String> id(Mould.Surface surface, Class<? extends Sheet> of) {
        return Optional.of(surface.sheet()).filter(of::isInstance).map(Sheet::id);
    }

    private static MouldData.MonthlyData monthly(MonthlyTemperatureFactor factor) {
        return new MouldData.MonthlyData(
                Phrases.month(factor.critical().month()),
                factor.critical().temperatureFactor(),
                factor.critical().indoorHumidity(),
                factor.months()
                        .collect(need -> new MouldData.NeedData(
                                Phrases.month(need.month()),
                                need.indoorPressure(),
                                need.leastTemperature(),
                                need.temperatureFactor())));
    }

    static CondensationData condensation(MoistureCheck check) {
        return check.year()
                .map(MoistureConvert::year)
                .orElse(new CondensationData(
                        false,
                        Optional.of(check.unchecked()),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Lists.immutable.empty()));
    }

    private static CondensationData year(Condensation year) {
        boolean wet = year.verdict() != Condensation.Verdict.STAYS_DRY;
        return new CondensationData(
                true,
                Optional.empty(),
                Optional.of(Convert.word(year.verdict())),
                OptionalDouble.of(year.most()),
                wet ? Optional.of(Phrases.month(year.wettest().month())) : Optional.empty(),
                wet ? Optional.of(year.wettestPlane()) : Optional.empty(),
                OptionalDouble.of(year.left()),
                year.months()
                        .collect(month -> new CondensationData.MonthData(
                                Phrases.month(month.month()),
                                month.indoorPressure(),
                                month.outdoorPressure(),
                                month.gain(),
                                month.amount())));
    }
}
