package coldseam.report.pages;

import coldseam.assemblies.moisture.SaturationPressure;
import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.envelope.Site;
import coldseam.report.section.SectionPicture;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The temperatures whose isotherms are marked: below them the indoor air's moisture shows. */
public final class MarkedTemperatures {

    private MarkedTemperatures() {}

    /** Those of a house's site; none without a house. */
    public static ImmutableList<SectionPicture.Limit> of(Optional<Site> site) {
        return site.map(MarkedTemperatures::of).orElse(Lists.immutable.empty());
    }

    /** Dew point and mould limit of the indoor air at its design state. */
    public static ImmutableList<SectionPicture.Limit> of(Site site) {
        double dewPoint = SurfaceHumidity.dewPoint(site.indoorTemperature(), site.indoorHumidity());
        double pressure = SurfaceHumidity.vapourPressure(site.indoorTemperature(), site.indoorHumidity());
        return Lists.immutable.of(
                new SectionPicture.Limit("dew point", dewPoint),
                new SectionPicture.Limit(
                        "mould limit", SaturationPressure.dewPoint(pressure / SurfaceHumidity.MOULD_LIMIT)));
    }
}
