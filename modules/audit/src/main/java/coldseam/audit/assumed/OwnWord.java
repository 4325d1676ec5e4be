package coldseam.audit.assumed;

import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.engine.LeastPsi;
import coldseam.conduction.Region;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.Limits;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.hand.HandDrawing;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What the house file decides for itself: limits, values and drawings of its own. */
public final class OwnWord {

    private static final Pattern DEMAND =
            Pattern.compile("\\b(passive|(low|zero|plus)[ -]energy)\\b", Pattern.CASE_INSENSITIVE);

    /** Limits that are laxer than the defaults. */
    public static final Assumption<Limit> RELAXED = audit -> {
        Limits usual = Limits.defaults(audit.house().site());
        return Lists.immutable
                .with(Limit.values())
                .select(limit -> limit.isLaxer(audit.house().limits(), usual));
    };

    /** Edges whose psi is the house file's own. */
    public static final Assumption<JunctionRow> PSI =
            audit -> audit.junctions().select(row -> row.source() instanceof BridgeSource.Own);

    /** Edges whose section is drawn by hand: that it carries, and controls air, water and vapour, its file alone says. */
    public static final Assumption<JunctionRow> DRAWN_BY_HAND = audit -> audit.junctions()
            .select(row -> row.sheet().filter(sheet -> isByHand(detail(sheet))).isPresent());

    /**
     * What insulates in such a section, is no layer of its legs, has no name of the built-in list, and conducts less than the house's
     * material of its name, if there is one: the drawing alone says what it conducts.
     */
    public static final Assumption<Region> DRAWN_OF_ITS_OWN = audit -> audit.junctions()
            .flatCollect(row -> row.sheet().stream().toList())
            .collect(sheet -> detail(sheet).drawing())
            .distinct()
            .selectInstancesOf(HandDrawing.class)
            .flatCollect(drawing -> drawing.ofItsOwn(Materials.used(audit)))
            .distinctBy(region -> region.material() + " " + region.conductivity());

    /** What is built by details' files of the house's own: how that is built and holds, those files alone say. */
    public static final Assumption<Details> DETAILS = audit -> Lists.immutable
            .of(new Details(
                    audit.junctions()
                            .select(row -> row.sheet()
                                    .map(OwnWord::detail)
                                    .filter(detail -> !isByHand(detail) && detail.own())
                                    .isPresent())
                            .sumOfDouble(JunctionRow::length),
                    (int) audit.points()
                            .select(row -> row.sheet()
                                    .filter(sheet -> detail(sheet).own())
                                    .isPresent())
                            .sumOfInt(PointRow::number),
                    (int) audit.vertexSheets()
                            .select(sheet -> sheet.result()
                                    .corner()
                                    .filter(corner -> corner.detail().own())
                                    .isPresent())
                            .sumOfInt(sheet -> sheet.places().size())))
            .select(own -> own.length() > 0 || own.points() > 0 || own.corners() > 0);

    /**
     * Edges where such a detail, or a section drawn by hand, takes off more than the surfaces beside it lose there: it insulates
     * them better than their own layers do.
     */
    public static final Assumption<JunctionRow> BEYOND_ITS_SEAM = audit -> {
        ImmutableList<JunctionRow> own = audit.junctions()
                .select(row -> row.sheet().filter(OwnWord::isOwn).isPresent());
        LeastPsi least = new LeastPsi(audit.house(), audit.shell());
        return own.select(row -> row.psi().upper() < least.weighed(row.edge()));
    };

    /** Texts over the verdict that call the house by what is asked of its heat demand, which no audit of seams judges. */
    public static final Assumption<String> CALLED = audit -> Lists.immutable
            .fromStream(Stream.concat(
                    Stream.of(audit.house().name()),
                    Stream.of(
                                    audit.house().submittal().address(),
                                    audit.house().submittal().client(),
                                    audit.house().submittal().revision())
                            .flatMap(Optional::stream)))
            .select(text -> DEMAND.matcher(text).find());

    /** Choices of a detail for what no seam of the house is: nobody would miss a seam that was left out. */
    public static final Assumption<JunctionChoice> IDLE = audit -> audit.house()
            .choices()
            .select(choice -> audit.shell().edges().noneSatisfy(edge -> edge.isMeantBy(choice.which())));

    private OwnWord() {}

    /**
     * What details' files of the house's own are for.
     *
     * @param length m, of edges
     */
    public record Details(double length, int points, int corners) {}

    /** Limits that a house file may relax. */
    public enum Limit {
        NECK(limits -> -limits.neckShare()),
        PATH(limits -> -limits.pathShare()),
        PSI(Limits::psi, Limits::geometryPsi),
        OPENING_PSI(Limits::openingPsi),
        CHI(Limits::chi),
        TEMPERATURE_FACTOR(limits -> -limits.temperatureFactor()),
        MEAN(limits -> -limits.meanShare()),
        WALLS(limits -> limits.surfaces().wall().transmittance()),
        ROOFS(limits -> limits.surfaces().roof().transmittance()),
        FLOORS(limits -> limits.surfaces().floor().transmittance()),
        GROUND(limits -> limits.surfaces().ground().transmittance()),
        WINDOWS(limits -> limits.surfaces().window().transmittance()),
        DOORS(limits -> limits.surfaces().door().transmittance());

        /** Each is the laxer the larger it is. */
        private final ImmutableList<ToDoubleFunction<Limits>> values;

        Limit(ToDoubleFunction<Limits> value) {
            values = Lists.immutable.of(value);
        }

        Limit(ToDoubleFunction<Limits> value, ToDoubleFunction<Limits> other) {
            values = Lists.immutable.of(value, other);
        }

        private boolean isLaxer(Limits is, Limits usual) {
            return values.anySatisfy(value -> value.applyAsDouble(is) > value.applyAsDouble(usual));
        }
    }

    private static Detail detail(BridgeSheet<?> sheet) {
        return sheet.result().detail();
    }

    static boolean isOwn(BridgeSheet<?> sheet) {
        return detail(sheet).own();
    }

    private static boolean isByHand(Detail detail) {
        return detail.drawing() instanceof HandDrawing;
    }
}
