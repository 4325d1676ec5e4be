package coldseam.audit.engine;

import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.IndoorAir;
import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.assemblies.moisture.VapourStack;
import coldseam.audit.MoistureCheck;
import coldseam.audit.Mould;
import coldseam.audit.Sheet;
import coldseam.envelope.Assembly;
import coldseam.envelope.Climate;
import coldseam.envelope.House;
import coldseam.envelope.Site;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** Mould on inner surfaces and water inside assemblies (ISO 13788:2012, from memory). */
record Moisture(House house) {

    /** What the coldest surfaces of junctions, pairs of them and corners bear, junctions first. */
    Mould mould(ImmutableList<Sheet> sheets) {
        double designNeed = SurfaceHumidity.temperatureFactorNeeded(
                house.site().indoorTemperature(),
                house.site().outdoorTemperature(),
                house.site().indoorHumidity(),
                SurfaceHumidity.MOULD_LIMIT);
        Optional<MonthlyTemperatureFactor> monthly = house.site().climate().flatMap(this::monthly);
        ImmutableList<Mould.Surface> surfaces = sheets.toSortedListBy(Sheet::temperatureFactor)
                .collect(sheet -> surface(sheet, monthly))
                .toImmutable();
        return new Mould(
                house.limits().temperatureFactor(), designNeed, monthly, Mould.Humid.of(house.site()), surfaces);
    }

    /** What a surface of a temperature factor bears at a site's design temperatures. */
    static SurfaceHumidity atDesign(Site site, double factor) {
        return SurfaceHumidity.of(Math.min(1, factor), site.indoorTemperature(), site.outdoorTemperature());
    }

    /** At the wetter of the climate's rooms and the site's own humidity, so that neither is forgotten. */
    private Optional<MonthlyTemperatureFactor> monthly(Climate climate) {
        IndoorAir rooms = IndoorAir.of(climate.indoors(), house.site().indoorHumidity());
        return MonthlyTemperatureFactor.ofHeated(
                climate,
                rooms.or(IndoorAir.constant(house.site().indoorHumidity())),
                house.site().indoorTemperature());
    }

    private Mould.Surface surface(Sheet sheet, Optional<MonthlyTemperatureFactor> monthly) {
        double factor = sheet.temperatureFactor();
        OptionalDouble inMonth = OptionalDouble.empty();
        if (monthly.isPresent()) {
            int critical = monthly.get().critical().month().ordinal();
            double outdoors =
                    house.site().climate().orElseThrow().months().get(critical).temperature();
            inMonth = OptionalDouble.of(
                    SurfaceHumidity.of(Math.min(1, factor), house.site().indoorTemperature(), outdoors)
                            .humidityAtMouldLimit());
        }
        return new Mould.Surface(sheet, factor, sheet.mouldHumidity(), inMonth);
    }

    /** A year of an assembly towards outdoors. */
    MoistureCheck check(Transmittance build) {
        Assembly assembly = house.assemblies().get(build.assembly());
        if (build.outerSurface() == OuterSurface.GROUND) {
            return MoistureCheck.none("it meets the ground, for which the method does not hold");
        }
        if (build.outerSurface() == OuterSurface.INDOORS) {
            return MoistureCheck.none("it faces a space whose air is not known month by month");
        }
        if (house.site().climate().isEmpty()) {
            return MoistureCheck.none("the house file gives no monthly climate");
        }
        ImmutableList<String> missing = VapourStack.missing(assembly);
        if (missing.notEmpty()) {
            return MoistureCheck.none(missing.makeString("; "));
        }
        Climate climate = house.site().climate().get();
        return MoistureCheck.of(Condensation.of(
                VapourStack.of(assembly, build.direction(), build.outerSurface(), build.interiorSurfaceResistance())
                        .subdivided(),
                climate,
                IndoorAir.of(climate.indoors(), house.site().indoorHumidity()),
                house.site().indoorTemperature()));
    }
}
