package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.HeldByMemory;
import coldseam.audit.Sheet;
import coldseam.audit.engine.InputUncertainty;
import coldseam.audit.engine.Unknown;
import coldseam.envelope.Limits;
import coldseam.envelope.Site;
import coldseam.envelope.SurfaceLimits;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** What stands beside the verdict so that nobody takes it for more than it is: what it rests on, and what it was held to. */
public record HonestWords(Audit audit, UnitSystem units) {

    /** What stands before what was taken on somebody's word. */
    public static final String ASSUMED = "Of it assumed:";

    private static final Pattern MEASURE =
            Pattern.compile("\\d+(\\.\\d+)? (m|ft)²?(?![²\\w])|(all )?\\d+( of \\d+)? (?=conductivit)");

    /** What was taken on somebody's word, a sentence; empty where nothing was. */
    public Optional<String> assumed() {
        return sentence(ASSUMED + " ", assumptions());
    }

    /** What was taken on somebody's word and was not in another house, a sentence; empty where nothing was. */
    public Optional<String> assumedBeside(Audit other) {
        ImmutableList<String> there =
                new HonestWords(other, units).assumptions().collect(HonestWords::unmeasured);
        return sentence("Of it assumed besides: ", assumptions().reject(part -> there.contains(unmeasured(part))));
    }

    /** Without its lengths and areas, which another thickness moves, and without how many materials there are. */
    private static String unmeasured(String part) {
        return MEASURE.matcher(part).replaceAll("");
    }

    private static Optional<String> sentence(String first, ImmutableList<String> parts) {
        return parts.isEmpty() ? Optional.empty() : Optional.of(first + parts.makeString("; ") + ".");
    }

    /** What was taken on somebody's word, one by one, to stand under {@link #ASSUMED}. */
    public ImmutableList<String> assumptions() {
        return AssumedWords.of(audit, new Phrases(units));
    }

    /** What the verdict was measured by: a sentence or two. */
    public String measuredBy() {
        Limits limits = audit.house().limits();
        SurfaceLimits most = limits.surfaces();
        return "Measured by: every layer able by its material, and in each seam's drawing without a break; neck and"
                + " weakest path from " + say(limits.neckShare(), Dimension.SHARE) + " and "
                + say(limits.pathShare(), Dimension.SHARE)
                + ", psi up to " + say(limits.psi(), Dimension.LINEAR_TRANSMITTANCE) + ", "
                + units.number(limits.geometryPsi(), Dimension.LINEAR_TRANSMITTANCE)
                + " where geometry makes it larger, at openings "
                + units.number(limits.openingPsi(), Dimension.LINEAR_TRANSMITTANCE) + ", chi up to "
                + say(limits.chi(), Dimension.POINT_TRANSMITTANCE) + ", fRsi from "
                + say(limits.temperatureFactor(), Dimension.RATIO) + "; U up to "
                + Lists.immutable
                        .of(
                                u(most.wall().transmittance()) + " (walls)",
                                u(most.roof().transmittance()) + " (roofs)",
                                u(most.floor().transmittance()) + " (floors)",
                                u(most.ground().transmittance()) + " (ground)",
                                u(most.window().transmittance()) + " (windows)",
                                u(most.door().transmittance()) + " (doors)")
                        .makeString(", ")
                + " " + units.label(Dimension.TRANSMITTANCE) + byDays() + byMonths() + "."
                + held().map(held -> " " + held).orElse("");
    }

    /** What more memory would make known better, a sentence; empty where nothing would. */
    public Optional<String> held() {
        HeldByMemory held = HeldByMemory.of(audit);
        if (held.sheets().isEmpty()) {
            return Optional.empty();
        }
        String all = "Held back by the memory or by --unknowns, "
                + Phrases.count(held.sheets().size(), "sheet is", "sheets are")
                + " solved less narrowly than asked (" + ids(held.sheets()) + ")";
        return Optional.of(
                held.undecided().isEmpty()
                        ? all + "; no limit lies within what that leaves open."
                        : all + "; whether " + Phrases.count(held.undecided().size(), "of them keeps", "of them keep")
                                + " a limit is open (" + ids(held.undecided()) + ").");
    }

    private static String ids(ImmutableList<Sheet> sheets) {
        return sheets.collect(Sheet::id).makeString(", ");
    }

    /** Whose limits of U these are, where no degree days say so. */
    private String byDays() {
        Site site = audit.house().site();
        return site.heatingDegreeDays().isPresent()
                        || !audit.house().limits().surfaces().leavesOneOpen()
                ? ""
                : ", by some " + say(site.daysOfLimits(), Dimension.DEGREE_DAYS)
                        + (site.climate().isPresent() ? " of the months" : " that the house file does not give");
    }

    private String byMonths() {
        if (audit.house().site().climate().isEmpty()) {
            return "; mould by months and condensation not judged, since the house file gives no climate";
        }
        ImmutableList<String> unchecked = audit.assemblies()
                .select(row -> row.moisture().year().isEmpty())
                .collect(row -> "\"" + row.assembly().name() + "\"")
                .distinct();
        return "; mould and condensation (by diffusion alone) judged by months"
                + (unchecked.isEmpty() ? "" : ", condensation inside " + Phrases.listed(unchecked) + " not judged");
    }

    /** Why the heat-loss coefficient is not known; empty where it is. */
    public Optional<String> unknown() {
        Unknown unknown = Unknown.of(audit);
        MutableList<String> parts = Lists.mutable.empty();
        if (unknown.length() > 0) {
            parts.add(say(unknown.length(), Dimension.LENGTH) + " of seams have no value");
        }
        if (unknown.points() > 0) {
            parts.add(Phrases.count(unknown.points(), "point has", "points have") + " no value");
        }
        if (unknown.holes().notEmpty()) {
            parts.add(Phrases.count(unknown.holes().size(), "surface is", "surfaces are") + " missing"
                    + (unknown.area() > 0 ? ", " + say(unknown.area(), Dimension.AREA) : ""));
        }
        if (unknown.touching().notEmpty()) {
            int pairs = (int) unknown.touching().sumOfInt(each -> each.pairs().size());
            parts.add(Phrases.count(pairs, "pair of seams touches", "pairs of seams touch")
                    + ": together they may lose " + say(unknown.together(), Dimension.HEAT_LOSS_COEFFICIENT)
                    + " less than the table has, and how much more is not known");
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.makeString("; "));
    }

    /** What the axis of a picture says that has the loss of some houses, of which something may have no value. */
    public static String axis(ImmutableList<Audit> audits, UnitSystem units) {
        return "heat-loss coefficient H, "
                + (audits.anySatisfy(
                                audit -> new HonestWords(audit, units).unknown().isPresent())
                        ? HeatLossWords.PART + ", "
                        : "")
                + units.label(Dimension.HEAT_LOSS_COEFFICIENT);
    }

    /** What the uncertainty of the inputs does to H_T, a phrase; empty where there are none. */
    public Optional<String> inputs() {
        InputUncertainty inputs = InputUncertainty.of(audit);
        if (inputs.inputs().isEmpty()) {
            return Optional.empty();
        }
        InputUncertainty.Input most = inputs.largestFirst().getFirst();
        boolean usual = inputs.inputs().noneSatisfy(InputUncertainty.Input::given);
        var range = inputs.range(audit.heatLoss().total());
        return Optional.of((Unknown.of(audit).none()
                        ? ""
                        : HeatLossWords.PART + ", the "
                                + new Print(units).of(audit.heatLoss().total(), Dimension.HEAT_LOSS_COEFFICIENT)
                                + " of the table are ")
                + units.number(range.lower(), Dimension.HEAT_LOSS_COEFFICIENT, 1) + " to "
                + units.number(range.upper(), Dimension.HEAT_LOSS_COEFFICIENT, 1) + " "
                + units.label(Dimension.HEAT_LOSS_COEFFICIENT) + " where each input may be off by "
                + say(InputUncertainty.USUAL, Dimension.SHARE)
                + (usual ? "" : ", or as its material says,") + ground(inputs) + " by itself; most of it by \""
                + UncertaintyWords.name(most, inputs, units)
                + "\", "
                + say(inputs.share(most), Dimension.SHARE));
    }

    private String ground(InputUncertainty inputs) {
        return inputs.ofTheGround()
                .map(within -> " (the ground's conductivity by " + say(within, Dimension.SHARE) + ")")
                .orElse("");
    }

    /** H_T, with "at least" where something is missing. */
    public String total() {
        OptionalDouble least = least();
        if (least.isEmpty()) {
            return new Print(units).of(audit.heatLoss().total(), Dimension.HEAT_LOSS_COEFFICIENT);
        }
        return "at least " + units.atLeast(least.getAsDouble(), Dimension.HEAT_LOSS_COEFFICIENT);
    }

    /** What a sum of the house's losses is, where something has no value and the sum is no bound; empty where all have. */
    public Optional<String> partial() {
        return unknown().map(why -> HeatLossWords.PART + "; H_T is " + total() + ": " + why);
    }

    /** W/K that H_T has at least, whatever is built where something has no value; empty where it is known. */
    public OptionalDouble least() {
        Unknown unknown = Unknown.of(audit);
        return unknown.none()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, audit.heatLoss().total().lower() - unknown.below()));
    }

    private String u(double transmittance) {
        return units.number(transmittance, Dimension.TRANSMITTANCE);
    }

    private String say(double value, Dimension dimension) {
        return units.format(value, dimension);
    }
}
