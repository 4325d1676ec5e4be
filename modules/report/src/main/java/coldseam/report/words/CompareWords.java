package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.engine.Unknown;
import coldseam.audit.rules.DetailNotChosenRule;
import coldseam.conduction.Interval;
import coldseam.envelope.Alternatives.About;
import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.House;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Changes;
import coldseam.options.Standing;
import coldseam.options.Worst;
import coldseam.options.Yearly;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * What is said of a comparison.
 *
 * @param units to print in
 */
public record CompareWords(UnitSystem units) {

    /** m²; what rounding does to the rooms' floor is less. */
    private static final double LEAST_FLOOR = 0.05;

    /** Years; what pays back later than a building part lasts is not told to the year. */
    private static final double LONGEST_PAYBACK = 100;

    private static final String DESCRIBED = "what is described";

    /** W/K or Btu/(h·°F): the last digit that is printed of what one seam loses. */
    private static final double LEAST_READ = 0.01;

    private Print print() {
        return new Print(units);
    }

    /**
     * What one option does, line by line; empty where it cannot be built.
     *
     * @param asGood options of the same decision whose loss cannot be told from its own
     */
    public ImmutableList<String> lines(Alternative each, ImmutableList<Alternative> asGood) {
        return each.described()
                ? Lists.immutable.of(DESCRIBED)
                : each.built().map(built -> lines(each, built, asGood)).orElse(Lists.immutable.empty());
    }

    /** An option by what is built: where the house file gives it no name, its detail's, with the lengths that are its own here. */
    public String name(Alternative each) {
        String given = each.option().name();
        return units.told(each.detail()
                .filter(detail -> given.equals(detail.id()) || given.startsWith(detail.id() + ", "))
                .map(detail -> detail.name() + given.substring(detail.id().length()))
                .orElse(given));
    }

    /**
     * An option in a sentence, for who has to decide: what it is, what it loses and costs beside what is described, and why it is
     * out where it is.
     */
    public String brief(Alternative each) {
        if (each.described()) {
            return each.decision().name() + ": " + name(each) + ": " + DESCRIBED;
        }
        return each.decision().name() + ": "
                + name(each)
                + ": "
                + each.built()
                        .map(built -> heat(built.more()) + cost(built) + judged(built.changes()))
                        .orElse("out: does not fit, "
                                + each.misfits()
                                        .getFirstOptional()
                                        .map(reason -> reason.in(units))
                                        .orElse("the house cannot be built so"));
    }

    private static String cost(Alternative.Built built) {
        return built.cost().isPresent()
                ? ", "
                        + extra(
                                built.cost().getAsDouble(),
                                built.audit().house().prices().currency())
                : "";
    }

    /** Why nobody should build it, or what it mends; empty where nothing is found that was not, nor mended. */
    private String judged(Changes changes) {
        if (changes.appear().notEmpty()) {
            return (changes.breaksNothing() ? "; a weak spot: " : "; out, it opens a gap: ") + titles(changes.appear());
        }
        return changes.vanish().isEmpty() ? "" : "; it mends: " + titles(changes.vanish());
    }

    private ImmutableList<String> lines(Alternative each, Alternative.Built built, ImmutableList<Alternative> asGood) {
        MutableList<String> lines = Lists.mutable.empty();
        lines.add("the house loses " + heat(built.more()) + against(built) + ": " + standing(built.standing())
                + (asGood.isEmpty()
                        ? ""
                        : ", and as good as " + asGood.collect(this::name).makeString(", ")));
        ImmutableList<Alternative> alike = asGood.select(
                other -> each.detail().isPresent() && each.detail().equals(other.detail()));
        if (alike.notEmpty()) {
            lines.add("built the same as " + alike.collect(this::name).makeString(", "));
        }
        built.worst().map(worst -> worst(each.decision().about(), worst)).ifPresent(lines::add);
        lines.add(money(each));
        thickness(built).ifPresent(lines::add);
        lines.add("to be built: " + size(each));
        down(each, built).ifPresent(lines::add);
        if (each.order().notEmpty()) {
            lines.add("order: "
                    + each.order()
                            .collectWithIndex((step, i) -> (i + 1) + ". " + units.told(Phrases.bare(step)))
                            .makeString("; "));
        }
        lines.add("upkeep: " + units.told(UpkeepWords.of(built.upkeep())));
        changes(built.changes()).ifPresent(changes -> lines.add("findings: " + changes));
        if (!each.option().remark().isEmpty()) {
            lines.add("remark: " + each.option().remark());
        }
        if (!each.onFront()) {
            lines.add("no set of the front has it");
        }
        return lines.toImmutable();
    }

    /** What of an old house comes down for it; empty of a house without one, and of anything but a detail. */
    private static Optional<String> down(Alternative each, Alternative.Built built) {
        return each.detail()
                .filter(detail -> built.audit().house().retrofit().isPresent())
                .map(detail -> detail.suits().takesDown())
                .map(parts -> parts.isEmpty()
                        ? "nothing of the old house comes down for it"
                        : "comes down for it: " + parts.makeString(", "));
    }

    /** What nobody would build is no measure of what is saved. */
    private static String against(Alternative.Built built) {
        return built.changes()
                        .vanish()
                        .flatCollect(Finding::breaches)
                        .anySatisfy(breach -> breach.evidence() instanceof DetailNotChosenRule.Found)
                ? " than with the worst option, which stands in while nobody has chosen"
                : "";
    }

    /**
     * "1.2 W/K less", "… more", or between what the intervals leave open. What is proven stands in the data; what is too little
     * to be read is told from nothing.
     */
    public String heat(Interval more) {
        return switch (Standing.of(more)) {
            case BETTER -> amount(more.times(-1)) + " less";
            case WORSE -> amount(more) + " more";
            case AS_GOOD ->
                more.width() == 0
                        ? "the same"
                        : "between " + amount(Interval.of(-more.lower())) + " less and "
                                + amount(Interval.of(more.upper())) + " more";
        };
    }

    private String amount(Interval heat) {
        return units.value(heat.upper(), Dimension.HEAT_LOSS_COEFFICIENT) < LEAST_READ
                ? "under " + LEAST_READ + " " + units.label(Dimension.HEAT_LOSS_COEFFICIENT)
                : print().of(heat, Dimension.HEAT_LOSS_COEFFICIENT);
    }

    /** H of a house that is counted without its corners, or that it is not known. */
    public String loss(Audit audit) {
        return new HonestWords(audit, units).total();
    }

    /** What the corners of a house lose where edges meet, and seams that touch beyond what each loses alone. */
    public String corners(Audit audit) {
        return print().of(audit.heatLoss().vertices().plus(audit.heatLoss().pairs()), Dimension.HEAT_LOSS_COEFFICIENT);
    }

    /** ", 12 % of the whole": how much of the change a stage makes; empty where that cannot be said. */
    public static String share(OptionalDouble share) {
        if (share.isEmpty()) {
            return "";
        }
        double percent = 100 * share.getAsDouble();
        return ", " + (percent > 0 && percent < 0.5 ? "under 1" : Format.of("%.0f", percent)) + " % of the whole";
    }

    /** "72 EUR a year saved", "… more to heat"; empty without degree days or a price, and of nothing. */
    public static Optional<String> yearly(Interval more, House house) {
        return more.equals(Interval.of(0))
                ? Optional.empty()
                : Yearly.money(more.times(-1), house).map(saved -> {
                    double amount = Math.abs(saved.middle());
                    return (amount < 1
                                    ? "less than 1 " + house.prices().currency()
                                    : Format.of(
                                            "%.0f %s", amount, house.prices().currency()))
                            + " a year " + (saved.middle() < 0 ? "more to heat" : "saved");
                });
    }

    /** "better", "as good" or "worse". */
    public static String standing(Standing standing) {
        return Words.word(standing);
    }

    /** How much of the house a decision is about: "24.00 m", "4 points". */
    public String size(Alternative alternative) {
        return alternative
                .built()
                .map(built -> alternative
                        .decision()
                        .about()
                        .match(
                                junctions -> print().of(built.size(), Dimension.LENGTH),
                                assembly -> print().of(built.size(), Dimension.AREA),
                                openings -> print().of(built.size(), Dimension.AREA),
                                points -> Format.of("%.0f pieces", built.size())))
                .orElse("");
    }

    /** What is decided, in words: "parapet", "build-up brick wall". */
    public static String about(About about) {
        return about.match(
                junctions -> "junctions", assembly -> "build-up", openings -> "windows and doors", points -> "points");
    }

    /** The worst of what is decided, or of the seams that a build-up or a window meets, value by value. */
    public String worst(About about, Worst worst) {
        return before(about, worst) + values(worst).makeString(", ");
    }

    private static String before(About about, Worst worst) {
        if (about.movesOthers()) {
            return "the worst of the " + Phrases.count(worst.sheets(), "seam", "different seams") + " that it meets: ";
        }
        return worst.sheets() == 1 ? "" : "the worst of " + worst.sheets() + ": ";
    }

    private ImmutableList<String> values(Worst worst) {
        BridgeSheet<?> leaky = worst.leakiest();
        BridgeSheet<?> cold = worst.coldest();
        MutableList<String> parts = Lists.mutable.empty();
        parts.add((leaky.junction().isPresent() ? "psi " : "chi ")
                + print().of(leaky.external(), leaky.dimension())
                + at(worst, leaky));
        parts.add(Format.of("fRsi %.2f", cold.temperatureFactor()) + at(worst, cold));
        parts.add(
                cold.mouldHumidity() >= 1
                        ? "no mould at any indoor humidity"
                        : Format.of("mould from %.0f %% indoors", 100 * cold.mouldHumidity()));
        worst.neck()
                .ifPresent(neck ->
                        parts.add((neck > 0 ? "neck " + units.format(neck, Dimension.THICKNESS) : "insulation broken")
                                + at(worst, worst.narrowest().orElseThrow())));
        worst.path()
                .ifPresent(path -> parts.add(Format.of("weakest path %.0f %%", 100 * path)
                        + at(worst, worst.shortest().orElseThrow())));
        return parts.toImmutable();
    }

    /** Which one it is, where there are several kinds. */
    private static String at(Worst worst, BridgeSheet<?> sheet) {
        boolean one = worst.sheets() == 1 || worst.leakiest().kind().equals(sheet.kind()) && worst.sheets() == 2;
        return one ? "" : " (" + sheet.kind() + ")";
    }

    /** Energy, money, cost and years, as far as they are known. */
    public String money(Alternative alternative) {
        Alternative.Built built = alternative.built().orElseThrow();
        String currency = built.audit().house().prices().currency();
        MutableList<String> parts = Lists.mutable.empty();
        built.saves().ifPresent(saved -> parts.add(energy(saved)));
        yearly(built.more(), built.audit().house()).ifPresent(parts::add);
        built.cost()
                .ifPresent(cost -> parts.add(extra(cost, currency) + source(alternative) + elsewhere(built, currency)));
        if (built.thicker() > 0 && own(built) < 0) {
            parts.add("thicker for less money: see whether both prices are of the same work");
        }
        built.payback().ifPresent(years -> parts.add("paid back in " + years(years) + " years"));
        if (built.cost().isEmpty()) {
            parts.add("no cost given");
        }
        if (alternative.option().change() instanceof Change.Windows windows
                && !windows.rating().isSourced()) {
            parts.add("its U without a product's source");
        }
        return parts.makeString("; ");
    }

    /** What an option costs more by itself, in the house's currency; zero where it is not known. */
    private static double own(Alternative.Built built) {
        return built.cost().orElse(0) - built.elsewhere().sumOfDouble(Alternative.Built.Elsewhere::cost);
    }

    /** ", of it 14 EUR more for "parapet", whose size changes with it"; empty where none does. */
    private static String elsewhere(Alternative.Built built, String currency) {
        return built.elsewhere().isEmpty()
                ? ""
                : ", of it "
                        + Phrases.listed(built.elsewhere()
                                .collect(other -> Format.of(
                                        "%.0f %s %s for \"%s\"",
                                        Math.abs(other.cost()),
                                        currency,
                                        other.cost() > 0 ? "more" : "less",
                                        other.decision())))
                        + ", whose size changes with it";
    }

    /** Whole years, rounded outwards. */
    public static String years(Interval years) {
        double first = Math.floor(years.lower());
        return first >= LONGEST_PAYBACK
                ? Format.of("over %.0f", LONGEST_PAYBACK)
                : Format.of("%.0f…%.0f", first, Math.ceil(years.upper()));
    }

    /** Without a cost of what is described, one of nothing is no more than that. */
    private static String source(Alternative of) {
        boolean whole = of.decision().described().isPresent();
        return of.option()
                .cost()
                .map(price -> " (" + price.source()
                        + (whole && price.amount() == 0 ? ", by which it costs nothing" : "") + ")")
                .orElse("");
    }

    private String energy(Interval saved) {
        return units.format(Math.abs(saved.middle()), Dimension.ENERGY) + " a year "
                + (saved.middle() < 0 ? "more" : "less");
    }

    /** "costs 240 EUR more", or less, or the same. */
    public static String extra(double cost, String currency) {
        if (cost == 0) {
            return "costs the same";
        }
        return Format.of("costs %.0f %s %s", Math.abs(cost), currency, cost > 0 ? "more" : "less");
    }

    /** What it does to the build-up, in mm and inches whatever the units, and to the rooms; empty where it does nothing. */
    private Optional<String> thickness(Alternative.Built built) {
        if (built.thicker() == 0) {
            return Optional.empty();
        }
        double by = Math.abs(built.thicker());
        UnitSystem other = units == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI;
        return Optional.of("the build-up is "
                + units.format(by, Dimension.THICKNESS) + " ("
                + other.format(by, Dimension.THICKNESS) + ") "
                + (built.thicker() > 0 ? "thicker" : "thinner")
                + "; every edge that it meets moves by as much" + rooms(built.floor()));
    }

    /** What the rooms' floor comes to; empty where it stays, but for what rounding does. */
    private String rooms(double more) {
        return Math.abs(more) < LEAST_FLOOR
                ? ""
                : "; the rooms " + (more < 0 ? "lose " : "gain ") + units.format(Math.abs(more), Dimension.AREA)
                        + " of floor";
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

    /** Their titles; what nobody chose is said once for all that follow one another. */
    String titles(ImmutableList<Finding> findings) {
        FindingWords words = new FindingWords(units);
        String unchosen = Phrases.capital(RuleWords.UNCHOSEN);
        ImmutableList<String> titles = findings.collect(words::title).distinct();
        return titles.collectWithIndex((title, i) ->
                        i > 0 && title.startsWith(unchosen) && titles.get(i - 1).startsWith(unchosen)
                                ? title.substring(unchosen.length())
                                : title)
                .makeString(", ");
    }

    /** Loss of the year of a whole house, by degree days; empty without them. */
    public Optional<String> year(Audit audit) {
        return HeatLossWords.year(audit, new Print(units))
                .map(year -> year + " a year"
                        + (Unknown.of(audit).none() ? "" : " " + HeatLossWords.PART)
                        + price(audit.house()).map(each -> " at " + each).orElse(""));
    }

    /** Of heat, such as "0.12 EUR/kWh", by which all money here is counted; of the unit in which a year's loss stands beside it. */
    private Optional<String> price(House house) {
        return house.prices().heat().isPresent()
                ? Optional.of(new BigDecimal(house.prices().heat().getAsDouble() / units.value(1, Dimension.ENERGY))
                                .round(new MathContext(3))
                                .stripTrailingZeros()
                                .toPlainString()
                        + " " + house.prices().currency() + "/"
                        + units.label(Dimension.ENERGY))
                : Optional.empty();
    }

    /** What the numbers of options are not. */
    public static ImmutableList<String> cautions() {
        return Lists.immutable.of(
                "Costs are those of the house file, from the sources it names; savings are by degree days at today's price of"
                        + " heat, without gains, interest or a rise of prices. They are no promise.",
                "A set that is best here is a proposal: structure, fire, moisture and whether it can be built in order are for"
                        + " local codes and licensed people.");
    }

    /** What the numbers of two houses are not, and what stages of building ask for. */
    public static ImmutableList<String> stageCautions() {
        return Lists.immutable.of(
                "Savings are by degree days at today's price of heat, without gains or a rise of prices. They are no promise.",
                "Whether mould grows hangs on the humidity indoors: new windows and tighter walls let less damp air out, so"
                        + " ventilation has to come with them, not after them.",
                "Structure, fire, moisture in old walls, combustion air, falls, lead, asbestos and mould that is there already are"
                        + " for local codes and licensed people; whatever is open for a while needs cover from rain and wind.");
    }
}
