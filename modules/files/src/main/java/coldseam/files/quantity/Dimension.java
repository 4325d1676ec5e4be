package coldseam.files.quantity;

import static coldseam.files.quantity.Display.si;
import static coldseam.files.quantity.Display.us;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The kinds of quantity a file may hold and a report may print.
 *
 * <p>Each has an inside unit, in which every {@code double} of the project is kept, and a unit of display in each
 * {@link UnitSystem}. The inside unit is the SI unit except where its documentation names another.
 *
 * <p>US factors are exact: Btu = 1055.05585262 J (International Table), ft = 0.3048 m, lb = 0.45359237 kg, lbf =
 * 4.4482216152605 N, 1 °F of difference = 5/9 K.
 */
public enum Dimension {
    /** m; for runs, heights and positions. */
    LENGTH("a length", "m", si("m", 1, 2), us("ft", "ft", 1), "2.9 m", "9 ft 2 in"),
    /** m; for layers and what is shown in millimetres or inches. */
    THICKNESS("a thickness", "m", si("mm", 1e-3, 0), us("in", "in", 2), "200 mm", "8 in", "5/8 in"),
    AREA("an area", "m2", si("m²", 1, 1), us("ft²", "ft2", 0), "12 m²", "130 ft²"),
    VOLUME("a volume", "m3", si("m³", 1, 1), us("ft³", "ft3", 0), "250 m³", "8800 ft³"),
    TEMPERATURE("a temperature", "K", si("°C", 1, 1), us("°F", "F", 1), "20 °C", "72 °F"),
    TEMPERATURE_DIFFERENCE("a temperature difference", "K", si("K", 1, 1), us("°F", "F", 1), "10 K", "18 °F"),
    CONDUCTIVITY(
            "a thermal conductivity",
            "W/(m·K)",
            si("W/(m·K)", 1, 3),
            us("Btu·in/(h·ft²·°F)", "Btu·in/(h·ft2·F)", 3),
            "0.035 W/(m·K)",
            "0.24 Btu·in/(h·ft²·°F)",
            "R-4 per in"),
    RESISTANCE(
            "a thermal resistance",
            "m2·K/W",
            si("m²·K/W", 1, 2),
            us("h·ft²·°F/Btu", "h·ft2·F/Btu", 1),
            "5.3 m²·K/W",
            "R-30"),
    TRANSMITTANCE(
            "a thermal transmittance",
            "W/(m2·K)",
            si("W/(m²·K)", 1, 3),
            // A fourth digit, since 0.018 for R-57 would say only two of them.
            us("Btu/(h·ft²·°F)", "Btu/(h·ft2·F)", 4),
            "0.9 W/(m²·K)",
            "0.16 Btu/(h·ft²·°F)"),
    /** W/(m·K), psi. */
    LINEAR_TRANSMITTANCE(
            "a linear thermal transmittance",
            "W/(m·K)",
            si("W/(m·K)", 1, 3),
            us("Btu/(h·ft·°F)", "Btu/(h·ft·F)", 4),
            "0.03 W/(m·K)",
            "0.017 Btu/(h·ft·°F)"),
    /** W/K, chi. */
    POINT_TRANSMITTANCE(
            "a point thermal transmittance",
            "W/K",
            si("W/K", 1, 4),
            us("Btu/(h·°F)", "Btu/(h·F)", 4),
            "0.002 W/K",
            "0.004 Btu/(h·°F)"),
    /** W/K, of a house or a part of it. */
    HEAT_LOSS_COEFFICIENT(
            "a heat-loss coefficient",
            "W/K",
            si("W/K", 1, 2),
            us("Btu/(h·°F)", "Btu/(h·F)", 1),
            "40 W/K",
            "76 Btu/(h·°F)"),
    POWER("a power", "W", si("W", 1, 0), us("Btu/h", "Btu/h", 0), "3500 W", "12000 Btu/h"),
    HEAT_FLUX("a heat flow per area", "W/m2", si("W/m²", 1, 2), us("Btu/(h·ft²)", "Btu/(h·ft2)", 2), "10 W/m²"),
    HEAT_FLOW_PER_LENGTH("a heat flow per length", "W/m", si("W/m", 1, 2), us("Btu/(h·ft)", "Btu/(h·ft)", 2), "5 W/m"),
    /** kWh inside. */
    ENERGY("an energy", "kWh", si("kWh", 1, 0), us("kBtu", "kBtu", 0), "5000 kWh", "17000 kBtu"),
    DENSITY("a density", "kg/m3", si("kg/m³", 1, 0), us("lb/ft³", "lb/ft3", 1), "30 kg/m³", "2 lb/ft³"),
    MASS_PER_AREA("a mass per area", "kg/m2", si("kg/m²", 1, 3), us("lb/ft²", "lb/ft2", 3), "0.5 kg/m²"),
    /** Pa; of pressures and strengths. Written lbf/in², never psi: psi is the linear thermal transmittance. */
    PRESSURE("a pressure or strength", "Pa", si("kPa", 1000, 1), us("lbf/in²", "lbf/in2", 2), "300 kPa", "25 lbf/in²"),
    /** K·d inside. */
    DEGREE_DAYS("a number of degree days", "K·d", si("K·d", 1, 0), us("°F·d", "F·d", 0), "3600 K·d", "6500 °F·d"),
    /** 0 to 1 inside; shown in percent. */
    SHARE("a share", "", si("%", 0.01, 0), us("%", "%", 0), "15 %", "0.15"),
    /** A plain number such as fRsi; shown with two digits. */
    RATIO("a number", "", si("", 1, 2), si("", 1, 2), "0.7"),
    /** Degrees inside. */
    ANGLE("an angle", "°", si("°", 1, 1), us("°", "°", 1), "35 °", "8:12"),
    SPEED("a speed", "m/s", si("m/s", 1, 1), us("mi/h", "mi/h", 1), "4 m/s", "9 mi/h"),
    /** mm/d inside. */
    PRECIPITATION("a precipitation", "mm/d", si("mm/d", 1, 1), us("in/d", "in/d", 2), "3 mm/d", "0.12 in/d"),
    /** W·d/(m²·K·mm) inside; the factor f·x of ISO 6946 for rain on inverted roofs. */
    RAIN_FACTOR(
            "a rain factor",
            "W·d/(m2·K·mm)",
            si("W·d/(m²·K·mm)", 1, 3),
            us("Btu·d/(h·ft²·°F·in)", "Btu·d/(h·ft2·F·in)", 3),
            "0.04 W·d/(m²·K·mm)"),
    PER_AREA("a number per area", "1/m2", si("1/m²", 1, 1), us("1/ft²", "1/ft2", 2), "6 per m²", "0.5 per ft²"),
    OPENING_PER_LENGTH(
            "an opening per length", "m2/m", si("m²/m", 1, 4), us("in²/ft", "in2/ft", 2), "0.0015 m²/m", "1 in²/ft"),
    /** mm²/m inside; the openings of an air layer (ISO 6946). */
    AIR_LAYER_OPENING(
            "an air layer's opening per length", "mm2/m", si("mm²/m", 1, 0), us("in²/ft", "in2/ft", 2), "800 mm²/m");

    /** m. */
    private static final double MILLIMETRE = 1e-3;

    private final String noun;
    private final Measure inside;
    private final Display siDisplay;
    private final Display usDisplay;
    private final ImmutableList<String> examples;

    Dimension(String noun, String insideUnit, Display.Form siForm, Display.Form usForm, String... examples) {
        this.noun = noun;
        this.inside = insideUnit.isEmpty() ? Measure.ONE : UnitExpression.parse(insideUnit);
        this.siDisplay = siForm.in(inside);
        this.usDisplay = usForm.in(inside);
        this.examples = Lists.immutable.of(examples);
    }

    /** With its article, such as "a thermal conductivity". */
    public String noun() {
        return noun;
    }

    /** The inside unit as a measure. */
    Measure inside() {
        return inside;
    }

    Display display(UnitSystem system) {
        return system == UnitSystem.SI ? siDisplay : usDisplay;
    }

    /** Whether a number with this unit is a whole one in files, or has a digit or two after its point: thousandths of it are nothing. */
    boolean isWhole(Measure unit) {
        return switch (this) {
            case LENGTH, THICKNESS -> !(unit.factor() > MILLIMETRE);
            case POWER, ENERGY, DENSITY, DEGREE_DAYS, AIR_LAYER_OPENING -> true;
            default -> false;
        };
    }

    /** Whether this needs no unit: a share or a plain number. */
    public boolean allowsBareNumber() {
        return this == SHARE || this == RATIO;
    }

    /** As people write it, for messages and schemas. */
    public ImmutableList<String> examples() {
        return examples;
    }

    /** What is allowed, for messages: "a number with a unit, such as 200 mm or 8 in". */
    public String allowed() {
        String start = allowsBareNumber() ? "a number" : "a number with its unit";
        return start + ", such as " + examples.makeString(" or ");
    }
}
