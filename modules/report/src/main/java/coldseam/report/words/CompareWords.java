package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.conduction.Interval;
import coldseam.envelope.Alternatives.About;
import coldseam.envelope.Alternatives.Option;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Changes;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Answer;
import coldseam.options.Comparison.Asked;
import coldseam.options.Standing;
import coldseam.options.Yearly;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/**
 * What is said of a comparison.
 *
 * @param units to print in
 */
public record CompareWords(UnitSystem units) {

    private Phrases phrases() {
        return new Phrases(units);
    }

    /** "1.23…1.24 W/K less", "… more", or that the intervals cannot tell. */
    public String heat(Interval more) {
        return switch (Standing.of(more)) {
            case BETTER -> phrases().say(more.times(-1), Dimension.HEAT_LOSS_COEFFICIENT) + " less";
            case WORSE -> phrases().say(more, Dimension.HEAT_LOSS_COEFFICIENT) + " more";
            case AS_GOOD ->
                more.width() == 0
                        ? "the same"
                        : phrases().say(more, Dimension.HEAT_LOSS_COEFFICIENT) + " more, which may be less";
        };
    }

    /** "better", "as good" or "worse". */
    public static String standing(Standing standing) {
        return standing.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** How much of the house a decision is about: "24.00 m", "4 points". */
    public String size(Alternative alternative) {
        return alternative
                .built()
                .map(built -> alternative
                        .decision()
                        .about()
                        .match(
                                junctions -> phrases().say(built.size(), Dimension.LENGTH),
                                assembly -> phrases().say(built.size(), Dimension.AREA),
                                openings -> phrases().say(built.size(), Dimension.AREA),
                                points -> String.format(Locale.ROOT, "%.0f pieces", built.size())))
                .orElse("");
    }

    /** What is decided, in words: "parapet", "build-up brick wall". */
    public static String about(About about) {
        return about.match(
                junctions -> "junctions", assembly -> "build-up", openings -> "windows and doors", points -> "points");
    }

    /** The worst of the seams or points that are decided, with the numbers a builder compares; empty of build-ups. */
    public Optional<String> worst(Alternative.Built built) {
        return worstSheet(built).map(sheet -> {
            MutableList<String> parts = Lists.mutable.empty();
            int others = built.rows()
                            .flatCollect(row -> Lists.immutable.withAll(
                                    row.sheet().stream().map(BridgeSheet::id).toList()))
                            .distinct()
                            .size()
                    - 1;
            parts.add((sheet.dimension() == Dimension.POINT_TRANSMITTANCE ? "chi " : "psi ")
                    + phrases().say(sheet.external(), sheet.dimension())
                    + (others > 0 ? " (the worst of " + (others + 1) + ")" : ""));
            parts.add(String.format(Locale.ROOT, "fRsi %.2f", sheet.temperatureFactor()));
            parts.add(
                    sheet.mouldHumidity() >= 1
                            ? "no mould at any indoor humidity"
                            : String.format(Locale.ROOT, "mould from %.0f %% indoors", 100 * sheet.mouldHumidity()));
            sheet.junction().ifPresent(junction -> {
                parts.add(
                        junction.penLine().unbroken()
                                ? "neck " + units.format(junction.penLine().neck(), Dimension.THICKNESS)
                                : "insulation broken");
                parts.add(String.format(
                        Locale.ROOT,
                        "weakest path %.0f %%",
                        100 * junction.weakestPath().ratio()));
            });
            return parts.makeString(", ");
        });
    }

    /** The sheet of the greatest psi or chi among what is decided. */
    public static Optional<BridgeSheet<?>> worstSheet(Alternative.Built built) {
        return built.rows()
                .select(row -> row.sheet().isPresent())
                .maxByOptional(row -> row.transmittance().upper())
                .flatMap(BridgeRow::sheet);
    }

    /** Energy, money, cost and years, as far as they are known. */
    public String money(Alternative alternative) {
        Alternative.Built built = alternative.built().orElseThrow();
        String currency = built.audit().house().prices().currency();
        MutableList<String> parts = Lists.mutable.empty();
        built.saves().ifPresent(saved -> parts.add(saves(saved, Dimension.ENERGY, "")));
        built.savesMoney().ifPresent(saved -> parts.add(amount(saved, currency)));
        built.cost().ifPresent(cost -> parts.add(extra(cost, currency) + source(alternative.option())));
        built.payback().ifPresent(years -> parts.add("paid back in " + years(years) + " years"));
        if (built.cost().isEmpty()) {
            parts.add("no cost given");
        }
        return parts.makeString("; ");
    }

    /** Whole years, rounded outwards. */
    public static String years(Interval years) {
        return String.format(Locale.ROOT, "%.0f…%.0f", Math.floor(years.lower()), Math.ceil(years.upper()));
    }

    private static String source(Option option) {
        return option.cost().map(price -> " (" + price.source() + ")").orElse("");
    }

    private String saves(Interval saved, Dimension dimension, String of) {
        boolean more = saved.middle() < 0;
        Interval shown = more ? saved.times(-1) : saved;
        return units.format(shown.middle(), dimension) + of + " a year " + (more ? "more" : "less");
    }

    private static String amount(Interval saved, String currency) {
        return String.format(Locale.ROOT, "%.0f %s a year ", Math.abs(saved.middle()), currency)
                + (saved.middle() < 0 ? "lost" : "saved");
    }

    /** "costs 240 EUR more", or less, or the same. */
    public static String extra(double cost, String currency) {
        if (cost == 0) {
            return "costs the same";
        }
        return String.format(Locale.ROOT, "costs %.0f %s %s", Math.abs(cost), currency, cost > 0 ? "more" : "less");
    }

    /** What it does to the build-up, in mm and inches whatever the units; empty where it does nothing. */
    public static Optional<String> thickness(Alternative.Built built) {
        if (built.thicker() == 0) {
            return Optional.empty();
        }
        double by = Math.abs(built.thicker());
        return Optional.of("the build-up is "
                + UnitSystem.SI.format(by, Dimension.THICKNESS) + " ("
                + UnitSystem.US.format(by, Dimension.THICKNESS) + ") "
                + (built.thicker() > 0 ? "thicker" : "thinner")
                + "; every edge that it meets moves by as much");
    }

    /** Findings that appear and that vanish, in one sentence; empty where nothing changes. */
    public Optional<String> changes(Changes changes) {
        MutableList<String> parts = Lists.mutable.empty();
        if (changes.appear().notEmpty()) {
            parts.add("appears: " + titles(changes.appear()));
        }
        if (changes.vanish().notEmpty()) {
            parts.add("vanishes: " + titles(changes.vanish()));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.makeString("; "));
    }

    private String titles(ImmutableList<Finding> findings) {
        FindingWords words = new FindingWords(units);
        return findings.collect(words::title).distinct().makeString(", ");
    }

    /** What was asked, with its limit: "the least loss for 5000 EUR more". */
    public String question(Answer answer, Audit described) {
        String currency = described.house().prices().currency();
        double limit = answer.limit().orElse(0);
        return switch (answer.asked()) {
            case BUDGET -> String.format(Locale.ROOT, "least loss within %.0f %s", limit, currency);
            case HEAT_LOSS -> "least cost for H_T up to " + units.format(limit, Dimension.HEAT_LOSS_COEFFICIENT);
            case ENERGY -> "least cost for a loss of up to " + units.format(limit, Dimension.ENERGY) + " a year";
            case TRANSMITTANCE -> "least cost with every psi and chi within its limit";
            case SURFACE -> "least cost with every inner surface warm enough, corners aside";
            case NO_FINDING -> "least cost with nothing found, corners aside";
            case LEAST_COST ->
                String.format(
                        Locale.ROOT, "least cost of building and of heat over %.0f years, at today's price", limit);
            case LEAST_LOSS -> "least loss of all";
        };
    }

    /** Why there is no answer. */
    public static String noAnswer(Asked asked) {
        return asked == Asked.BUDGET ? "nothing costs so little" : "no set is proven to do it";
    }

    /** The set's options by their decisions, or that nothing is changed. */
    public static String set(Comparison comparison, ImmutableIntList set) {
        ImmutableList<Alternative> options = comparison.options(set);
        return options.isEmpty()
                ? "all as described"
                : options.collect(each ->
                                each.decision().name() + ": " + each.option().name())
                        .makeString("; ");
    }

    /** Loss of the year of a whole house, by degree days; empty without them. */
    public Optional<String> year(Audit audit) {
        OptionalDouble annual = audit.heatLoss().annualLoss();
        return annual.isPresent()
                ? Optional.of(units.format(annual.getAsDouble(), Dimension.ENERGY) + " a year")
                : Optional.empty();
    }

    /** A step of the front to the next: "0.81…0.82 W/K less for 140 EUR more". */
    public String step(Interval more, double cost, Audit described) {
        String money = Yearly.money(more.times(-1), described.house())
                .map(saved -> String.format(
                        Locale.ROOT,
                        ", %.0f %s a year %s",
                        Math.abs(saved.middle()),
                        described.house().prices().currency(),
                        saved.middle() < 0 ? "more to heat" : "saved"))
                .orElse("");
        return heat(more) + money + ", "
                + extra(cost, described.house().prices().currency());
    }

    /** Why nothing is lost by what is left out. */
    public static ImmutableList<String> argument(Comparison comparison) {
        ImmutableList<String> common = Lists.immutable.of(
                "A change of a build-up or of a window moves psi of every seam it touches, so all "
                        + comparison.combinations()
                        + " combinations of these that can be built are computed in full. Within each, a junction's loss is its"
                        + " own: the losses and costs of junctions and points add up, exactly, as whole numbers.",
                "Of two half-decided sets with the same things still open, one is left out where the other costs no more and its"
                        + " upper bound of the loss is no higher than this one's lower bound. Whatever is decided for the rest adds"
                        + " the same cost and the same true loss to both, so the one left out can never lead to a set that costs"
                        + " less or loses less. Nothing that could be best is lost; sets that the intervals cannot tell apart are"
                        + " kept.");
        return comparison.front().allKept()
                ? common
                : common.newWith(
                        "Here more sets than can be kept could not be told apart. Of these one is left out, too, where"
                                + " another costs no more and neither of its bounds is higher: least proven and least possible loss for"
                                + " every cost are exact still.");
    }

    /** What the numbers are not. */
    public static ImmutableList<String> cautions() {
        return Lists.immutable.of(
                "Costs are those of the house file, from the sources it names; savings are by degree days at today's price of"
                        + " heat, without gains, interest or a rise of prices. They are no promise.",
                "A set that is best here is a proposal: structure, fire, moisture and whether it can be built in order are for"
                        + " local codes and licensed people.");
    }
}
