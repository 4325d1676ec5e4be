package coldseam.audit.assumed;

import coldseam.envelope.Body;
import coldseam.envelope.Climate;
import coldseam.envelope.Exposure;
import coldseam.envelope.Site;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of the air and the ground, and of what insulates the ground. */
public final class AirAndGround {

    /** Of rooms in use, in winter and without a humidifier, hardly any is drier (common practice, no source). */
    private static final double DRY = 0.30;

    /** The same where months are judged by it, summer too: dwellings are damper by every table (common practice, no source). */
    private static final double DRY_ALL_YEAR = 0.40;

    /** °C; rooms that are lived in are warmer (common practice, no source). */
    private static final double COOL = 18;

    /** °C; design temperatures of places that heat are seldom milder (judgement). */
    private static final double WARM = 5;

    /** Of the degree days that a place as cold usually has, or that its months have by a base of 18 °C; where cold spells are rare some have no more than half (judgement). */
    private static final double SHORT = 0.5;

    /** W/(m·K), of clay or silt: the least of the grounds that are named. */
    private static final double CLAY =
            MaterialLibrary.named("clay or silt").orElseThrow().conductivity();

    /** K between the warmest and the coldest month, where anybody heats (judgement). */
    private static final double SEASONS = 5;

    /** Mean of a month that is colder than {@link #COLD}; outside of deserts it is damper (common practice, no source). */
    private static final double DRY_MONTH = 0.40;

    /** °C. */
    private static final double COLD = 10;

    /** m²·K/W, on the ground of a crawl space: 180 mm of good board (common practice, no source). */
    private static final double WARM_GROUND = 5;

    /** W/(m²·K), of its walls: insulated as those of rooms (judgement). */
    private static final double WARM_WALLS = 0.3;

    /** m; boards along a slab's edge are seldom as deep or as wide, or as thick (common practice, no source). */
    private static final double FAR_EDGE = 1.5;

    private static final double THICK_EDGE = 0.25;

    private static final Predicate<Surface> ON_GROUND =
            surface -> surface.faces(Exposure.Kind.GROUND) || surface.faces(Exposure.Kind.CRAWL_SPACE);

    /** The rooms are drier than rooms in use are. */
    public static final Assumption<Site> DRY_ROOMS =
            site(site -> site.indoorHumidity() < (isOfAllYear(site) ? DRY_ALL_YEAR : DRY));

    /** The rooms are kept cooler than people sit in: less is lost, and air as damp holds less water. */
    public static final Assumption<Site> COOL_ROOMS = site(site -> site.indoorTemperature() < COOL);

    /** The coldest days are milder than winters are. */
    public static final Assumption<Site> MILD = site(site -> site.outdoorTemperature() > WARM);

    /** The winter is much shorter than one as cold usually is, or than its months are; or its months are of a mild land. */
    public static final Assumption<Winter> SHORT_WINTER = audit ->
            Lists.immutable.of(winter(audit.house().site())).select(winter -> winter.days() < SHORT * winter.usual());

    /** The ground conducts less than any that is named. */
    public static final Assumption<Site> DRY_GROUND = site(site -> site.groundConductivity() < CLAY);

    /** The months are all alike, so that winter is no colder. */
    public static final Assumption<Climate> EVEN_YEAR = climate(climate -> seasons(climate.months()) < SEASONS);

    /** A cold month's air is as dry as a desert's. */
    public static final Assumption<Climate> DRY_WINTER = climate(climate ->
            climate.months().anySatisfy(month -> month.temperature() < COLD && month.humidity() < DRY_MONTH));

    /** The rooms are aired better than dwellings of which nothing is known. */
    public static final Assumption<Climate> AIRED = climate(climate ->
            climate.indoors() == Climate.Indoors.STORAGE || climate.indoors() == Climate.Indoors.WELL_VENTILATED);

    /** Crawl spaces that are said to be insulated better than those there usually are. */
    public static final Assumption<Body.CrawlSpace> WARM_CRAWL_SPACE = bases(
            Body.Base::crawlSpace,
            space -> space.groundResistance() > WARM_GROUND || space.wallTransmittance() < WARM_WALLS);

    /** Boards along a slab's edge that reach farther, or are thicker, than those there usually are. */
    public static final Assumption<Body.EdgeInsulation> WARM_SLAB_EDGE =
            bases(Body.Base::edge, edge -> edge.extent() > FAR_EDGE || edge.thickness() > THICK_EDGE);

    /**
     * Of which nobody says anything, so that what is usual stands for them: told with the house's values, in their order; the
     * ground only where the house has to do with it.
     */
    public static final Assumption<Left> LEFT_OUT = audit -> Lists.immutable
            .with(Site.Usual.values())
            .select(audit.house().site().usual()::contains)
            .reject(left ->
                    left == Site.Usual.GROUND && audit.shell().surfaces().noneSatisfy(ON_GROUND))
            .collect(left -> new Left(left, audit.house().site()));

    private AirAndGround() {}

    /** What a site leaves out, and the site with what stands for it. */
    public record Left(Site.Usual usual, Site site) {}

    /**
     * How long a winter is said to be.
     *
     * @param coldest °C, of its coldest days
     * @param days K·d, given, or of the months
     * @param usual K·d, of the months or of a place with such days, whichever has more
     */
    public record Winter(double coldest, double days, double usual) {}

    /** Whether the site's humidity of the rooms is that of every month. */
    public static boolean isOfAllYear(Site site) {
        return site.climate()
                .filter(year -> year.indoors() == Climate.Indoors.SITE_HUMIDITY)
                .isPresent();
    }

    private static Winter winter(Site site) {
        return new Winter(
                site.outdoorTemperature(),
                site.heatingDegreeDays().orElse(site.usualDays()),
                Math.max(site.usualDays(), site.daysOfTheCold()));
    }

    private static Assumption<Site> site(Predicate<Site> which) {
        return audit -> Lists.immutable.of(audit.house().site()).select(which);
    }

    private static Assumption<Climate> climate(Predicate<Climate> which) {
        return audit -> Lists.immutable
                .fromStream(audit.house().site().climate().stream())
                .select(which);
    }

    /** K, by which the warmest month is warmer than the coldest. */
    private static double seasons(ImmutableList<Climate.Mean> months) {
        return months.collectDouble(Climate.Mean::temperature).max()
                - months.collectDouble(Climate.Mean::temperature).min();
    }

    private static <E> Assumption<E> bases(Function<Body.Base, Optional<E>> part, Predicate<E> which) {
        return audit -> audit.house().body() instanceof Body.Storeys storeys
                ? storeys.stacks()
                        .flatCollect(stack -> stack.otherBases()
                                .collect(Body.AreaBase::base)
                                .newWith(stack.base())
                                .newWithAll(stack.storeys()
                                        .flatCollect(
                                                storey -> storey.base().stream().toList())))
                        .flatCollect(base -> part.apply(base).stream().toList())
                        .select(which)
                : Lists.immutable.empty();
    }
}
