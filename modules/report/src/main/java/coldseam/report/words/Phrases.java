package coldseam.report.words;

import coldseam.audit.BridgeSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Layer;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The parts that sentences are made of.
 *
 * @param units in which values are given
 */
public record Phrases(UnitSystem units) {

    /** A value with its unit. */
    public String say(double value, Dimension dimension) {
        return new Print(units).of(value, dimension);
    }

    /** "16 % softwood", and what the share follows from: "(45 mm every 600 mm, and 8 % besides: plates, openings, blocking)". */
    public String framing(Layer.Framing framing) {
        return say(framing.share(), Dimension.SHARE) + " " + framing.material().name()
                + framing.spaced()
                        .map(each -> Format.of(
                                " (%s every %s, and %s besides: plates, openings, blocking)",
                                say(each.width(), Dimension.THICKNESS),
                                say(each.spacing(), Dimension.THICKNESS),
                                say(each.besides(), Dimension.SHARE)))
                        .orElse("");
    }

    /** Words with values among them. */
    String phrase(Phrase phrase) {
        return phrase.in(units);
    }

    /** What a rule or a trade names, in the units that it names it in beside what that is here. */
    String rule(double value, Dimension dimension, UnitSystem own) {
        return units.rule(value, dimension, own);
    }

    /** A proven interval as people read it, with its unit. */
    public String say(Interval value, Dimension dimension) {
        return new Print(units).of(value, dimension);
    }

    /** A temperature factor, to three digits, so that it is told from its limit. */
    String factor(double factor) {
        return Format.of("%.3f", factor);
    }

    /** A month's name. */
    public static String month(Month month) {
        return capital(month.name().toLowerCase(Locale.ROOT));
    }

    /** With its first letter as a capital. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Without the full stop at its end. */
    static String bare(String sentence) {
        return sentence.replaceFirst("\\.$", "");
    }

    /** A count with its noun. */
    public static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    /** How often each is there, in their order, with what is said of it. */
    static <E extends Enum<E>> ImmutableList<String> counted(
            ImmutableList<Optional<E>> some, Function<E, String> words) {
        ImmutableList<E> all = some.flatCollect(each -> each.stream().toList());
        return all.distinct().toImmutableSortedList().collect(each -> all.count(each::equals) + words.apply(each));
    }

    /** One word or the other: what is said of junctions differs from what is said of points. */
    static String either(BridgeSheet<?> sheet, String ofJunction, String ofPoint) {
        return sheet.junction().isPresent() ? ofJunction : ofPoint;
    }

    /** The bridge with its article: "the parapet", "a steel post, 4 of them". */
    static String bridge(BridgeSheet<?> sheet) {
        return either(
                sheet,
                "the " + sheet.kind(),
                "a " + sheet.kind() + (sheet.size() == 1 ? "" : ", " + (int) sheet.size() + " of them"));
    }

    /** "psi 0.010 W/(m·K)", or chi. */
    String transmittance(BridgeSheet<?> sheet, Interval value) {
        return either(sheet, "psi ", "chi ") + say(value, sheet.dimension());
    }

    /** What the catalogue would do instead, as a next step. */
    String better(BridgeSheet<?> sheet) {
        return (sheet.best().isPresent() ? "the catalogue's best here is " : "") + best(sheet);
    }

    /** The same, but for what it begins with. */
    String best(BridgeSheet<?> sheet) {
        return sheet.best()
                        .map(best -> Format.of(
                                        "\"%s\" (%s)%s, %s%s",
                                        best.detail().name(),
                                        best.detail().id(),
                                        given(best.detail()),
                                        transmittance(sheet, best.psiOrChi(DimensionSystem.EXTERNAL)),
                                        best.detail()
                                                .cost()
                                                .map(cost -> ", " + cost.sourced(units))
                                                .orElse(""))
                                + dearer(sheet, best)
                                + elsewhere(sheet, best))
                        .orElseGet(() ->
                                "the catalogue has nothing better for these layers" + lengths(sheet) + oneSide(sheet))
                + withheld(sheet);
    }

    /** Why the best loses more than what was computed, where it does: it is chosen by what is open in it, before heat. */
    public String dearer(BridgeSheet<?> sheet, BridgeResult best) {
        Interval other = best.psiOrChi(DimensionSystem.EXTERNAL);
        boolean readsAsMore = !say(other, sheet.dimension()).equals(say(sheet.external(), sheet.dimension()));
        return readsAsMore && other.lower() > sheet.external().upper()
                ? "; that is more than what was computed here loses, " + transmittance(sheet, sheet.external())
                        + ", but less is broken, left unsaid or past a limit in it, which counts before heat"
                : "";
    }

    /** That no frame is where the best of this side and those of the others draw it. */
    private String elsewhere(BridgeSheet<?> sheet, BridgeResult best) {
        return sheet.framesElsewhere().isEmpty() || best.frameSetBack().isEmpty()
                ? ""
                : Format.of(
                        "; it draws the frame set back %s from the wall's outer face, the other sides %s, and"
                                + " nothing here fits that draws it there: say under openings where it stands (set-back)",
                        say(best.frameSetBack().getAsDouble(), Dimension.THICKNESS),
                        say(sheet.framesElsewhere().getAsDouble(), Dimension.THICKNESS));
    }

    /** Where insulation inside what carries meets insulation outside it, no drawing joins them as well as none of it needs to. */
    private static String oneSide(BridgeSheet<?> sheet) {
        return sheet.result().detail().drawing() instanceof BandDrawing drawing
                        && drawing.only().contrasts().contains(BandDrawing.Contrast.SIDES_CHANGE)
                ? "; insulation that stays on one side of what carries needs no such seam"
                : "";
    }

    /** What asks for old parts to come down. */
    private static String withheld(BridgeSheet<?> sheet) {
        return sheet.withheld().isEmpty()
                ? ""
                : "; once taken down (named under taken-down), these may be built, too: "
                        + listed(sheet.withheld()
                                .toReversed()
                                .collect(each -> "\"" + each.name() + "\" (" + each.id() + ": "
                                        + each.suits().takesDown().makeString(", ") + ")"));
    }

    /** The lengths that are not its file's own: " with wrap 120 mm and lap 40 mm"; nothing where all are. */
    public String given(Detail detail) {
        ImmutableList<DetailParameter> given = detail.parameters().select(DetailParameter::given);
        return given.isEmpty()
                ? ""
                : " with " + listed(given.collect(each -> each.name() + " " + say(each.value(), Dimension.THICKNESS)));
    }

    /** Of which lengths of the chosen detail there may be more, where that may let less heat through. */
    private String lengths(BridgeSheet<?> sheet) {
        return more(sheet.result().detail())
                .filter(more -> sheet.chosen())
                .map(more -> "; more of this one's " + more + " may lessen what it loses")
                .orElse("");
    }

    /** "skirt (now 800 mm, at most 2000 mm) and return (…)": lengths that insulate and are not at their most; empty where none is. */
    Optional<String> more(Detail detail) {
        ImmutableList<DetailParameter> more =
                detail.parameters().select(each -> each.insulates() && each.value() < each.most());
        return more.isEmpty() ? Optional.empty() : Optional.of(listed(more.collect(this::upTo)));
    }

    private String upTo(DetailParameter parameter) {
        return Format.of(
                "%s (now %s, at most %s)",
                parameter.name(),
                say(parameter.value(), Dimension.THICKNESS),
                say(parameter.most(), Dimension.THICKNESS));
    }

    /** Several in a row, the last after "and". */
    public static String listed(ImmutableList<String> words) {
        return words.size() < 2
                ? words.makeString()
                : words.take(words.size() - 1).makeString(", ") + " and " + words.getLast();
    }

    /** Control layers in a phrase: "insulation", "air and vapour control", "insulation, air and water control". */
    static String layers(ImmutableList<Control> controls) {
        ImmutableList<Control> others = controls.reject(control -> control == Control.HEAT);
        ImmutableList<String> insulation =
                controls.contains(Control.HEAT) ? Lists.immutable.of("insulation") : Lists.immutable.empty();
        String listed = listed(insulation.newWithAll(others.collect(Words::word)));
        return others.isEmpty() ? listed : listed + " control";
    }
}
