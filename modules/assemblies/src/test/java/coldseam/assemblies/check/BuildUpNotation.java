package coldseam.assemblies.check;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/** The short notation of build-ups in the files of published values; their headers explain it. */
final class BuildUpNotation {

    private static final String VALUE = "(?:(?<%1$smm>[\\d.]+) mm (?<%1$sk>[\\d.]+)|R (?<%1$sr>[\\d.]+))";
    private static final Pattern LAYER = Pattern.compile("(?<mark>[*~]?)(?<name>[\\w .-]*?\\w) "
            + String.format(Locale.ROOT, VALUE, "a")
            + "(?: \\+ (?<share>[\\d.]+) % (?<member>[\\w .-]*?\\w) (?:R (?<br>[\\d.]+)|(?<bk>[\\d.]+)))?");
    private static final Pattern FASTENERS =
            Pattern.compile("fasteners (?<k>[\\d.]+) (?<mm>[\\d.]+) mm (?<number>[\\d.]+)");
    private static final Pattern RAIN = Pattern.compile("rain (?<p>[\\d.]+) (?<fx>[\\d.]+)");

    private BuildUpNotation() {}

    static HeatFlow direction(String word) {
        return HeatFlow.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /**
     * An assembly.
     *
     * @param place file and line, for messages
     * @param name of the case
     * @param buildUp layers between bars
     * @param corrections none, gaps, fasteners or rain
     */
    static Assembly assembly(String place, String name, String buildUp, String corrections) {
        ImmutableList<Layer> layers =
                Lists.immutable.with(buildUp.split("\\|")).collect(layer -> layer(place, layer.strip()));
        Matcher fasteners = FASTENERS.matcher(corrections);
        Matcher rain = RAIN.matcher(corrections);
        boolean fastened = fasteners.matches();
        boolean rained = rain.matches();
        if (!fastened && !rained && !corrections.equals("none") && !corrections.equals("gaps bridging")) {
            throw new IllegalArgumentException(place + ": corrections are \"" + corrections
                    + "\"; allowed are none, gaps bridging, fasteners ..., rain ...");
        }
        return new Assembly(
                name,
                layers,
                fastened
                        ? Optional.of(new Assembly.Fasteners(
                                material("fastener", number(fasteners, "k")),
                                number(fasteners, "mm") / 1000,
                                number(fasteners, "number"),
                                0))
                        : Optional.empty(),
                corrections.equals("gaps bridging") ? Assembly.AirGaps.BRIDGING : Assembly.AirGaps.NONE,
                rained ? Optional.of(new Assembly.Rain(number(rain, "p"), number(rain, "fx"))) : Optional.empty());
    }

    private static Layer layer(String place, String text) {
        Matcher m = LAYER.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException(
                    place + ": the layer \"" + text + "\" is not in the notation the file's header explains");
        }
        // A layer given by its resistance is drawn one metre thick; only the quotient counts.
        double thickness = m.group("ar") == null ? number(m, "amm") / 1000 : 1;
        double conductivity = m.group("ar") == null ? number(m, "ak") : 1 / number(m, "ar");
        Optional<Layer.Framing> framing = Optional.empty();
        if (m.group("share") != null) {
            double member = m.group("br") == null ? number(m, "bk") : thickness / number(m, "br");
            framing = Optional.of(new Layer.Framing(material(m.group("member"), member), number(m, "share") / 100));
        }
        Role role = switch (m.group("mark")) {
            case "*" -> Role.INSULATION;
            case "~" -> Role.MEMBRANE;
            default -> Role.STRUCTURE;
        };
        return new Layer(
                material(m.group("name"), conductivity),
                thickness,
                role,
                framing,
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
    }

    private static double number(Matcher m, String group) {
        return Double.parseDouble(m.group(group));
    }

    static Material material(String name, double conductivity) {
        return new Material(
                name,
                conductivity,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                conductivity <= Material.INSULATES_UP_TO,
                new Provenance("the published case", Provenance.Sureness.DECLARED));
    }
}
