package coldseam.assemblies.moisture;

import coldseam.envelope.Climate;
import java.time.Month;
import java.util.stream.IntStream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Condensation inside an assembly over a year, by Glaser's method month by month.
 *
 * <p>The count starts with the first month that condenses, from dry. A plane that dries within a month gives off no more in its
 * rest. Source: ISO 13788:2012 clause 6 (from memory). See the caution of {@link #CAUTION}.
 *
 * @param planes names, inside → outside: the inner surface, every plane between slices, the outer surface
 * @param months from the first that condenses; the calendar year where none does
 * @param most kg/m², the greatest amount in all planes together at the end of a month
 * @param left kg/m², in all planes after the twelve months
 */
public record Condensation(
        ImmutableList<String> planes, ImmutableList<Balance> months, double most, double left, Verdict verdict) {

    /** kg/m², the most that may condense: DIN 4108-3 (from memory). */
    public static final double MOST = 1.0;

    /** What goes wherever a result goes. */
    public static final String CAUTION = "Diffusion in steady state only: driving rain, air leakage, built-in water and"
            + " storage in materials are not in it. Where these matter, have a dynamic study made.";

    /** kg/m² below which a plane counts as dry: a thousandth of what the eye sees, far above round-off. */
    private static final double DRY = 1e-9;

    private static final double SECONDS_OF_A_DAY = 86400;

    /** What the year amounts to. */
    public enum Verdict {
        /** Nothing condenses. */
        STAYS_DRY,
        /** What condenses dries within the year. */
        DRIES_OUT,
        /** Water is left after the year and grows from year to year. */
        ACCUMULATES
    }

    /**
     * A month.
     *
     * @param indoorPressure pi, Pa
     * @param outdoorPressure pe, Pa
     * @param planes inside → outside
     */
    public record Balance(Month month, double indoorPressure, double outdoorPressure, ImmutableList<Plane> planes) {

        /** Gained in all planes, kg/m²; negative where they dry. */
        public double gain() {
            return planes.sumOfDouble(Plane::gain);
        }

        /** Held by all planes at the month's end, kg/m². */
        public double amount() {
            return planes.sumOfDouble(Plane::amount);
        }
    }

    /**
     * A plane in a month.
     *
     * @param temperature °C
     * @param saturation psat, Pa
     * @param pressure Pa, at the month's beginning
     * @param gain kg/m² over the month
     * @param amount kg/m² at its end
     */
    public record Plane(double temperature, double saturation, double pressure, double gain, double amount) {}

    /**
     * The year of a stack.
     *
     * @param stack usually {@link VapourStack#subdivided()}
     * @param climate outdoors
     * @param indoors how humid the rooms are
     * @param indoorTemperature θi, °C
     */
    public static Condensation of(VapourStack stack, Climate climate, IndoorAir indoors, double indoorTemperature) {
        ImmutableList<Balance> best = null;
        for (int first : starts(stack, climate, indoors, indoorTemperature)) {
            ImmutableList<Balance> year = year(stack, climate, indoors, indoorTemperature, first);
            if (best == null || year.getLast().amount() < best.getLast().amount()) {
                best = year;
            }
        }
        if (best == null) {
            best = year(stack, climate, indoors, indoorTemperature, 0);
        }
        double most = best.collectDouble(Balance::amount).max();
        double left = best.getLast().amount();
        Verdict verdict = most <= DRY ? Verdict.STAYS_DRY : left <= DRY ? Verdict.DRIES_OUT : Verdict.ACCUMULATES;
        MutableList<String> names = Lists.mutable.empty();
        for (int i = 0; i < stack.planes(); i++) {
            names.add(stack.plane(i));
        }
        return new Condensation(names.toImmutable(), best, most, left, verdict);
    }

    /** The month at whose end the planes hold most together. */
    public Balance wettest() {
        return months.maxBy(Balance::amount);
    }

    /** The name of the plane that holds most at the end of the wettest month. */
    public String wettestPlane() {
        ImmutableList<Plane> held = wettest().planes();
        return planes.get(held.collectDouble(Plane::amount)
                .toList()
                .indexOf(held.collectDouble(Plane::amount).max()));
    }

    /** Months that condense from dry after one that does not; none where all do or none does. */
    private static int[] starts(VapourStack stack, Climate climate, IndoorAir indoors, double indoorTemperature) {
        boolean[] condenses = new boolean[12];
        for (int i = 0; i < 12; i++) {
            Year year = new Year(stack, indoors, indoorTemperature);
            condenses[i] = year.pass(climate.months().get(i)).amount() > DRY;
        }
        return IntStream.range(0, 12)
                .filter(i -> condenses[i] && !condenses[(i + 11) % 12])
                .toArray();
    }

    private static ImmutableList<Balance> year(
            VapourStack stack, Climate climate, IndoorAir indoors, double indoorTemperature, int first) {
        Year year = new Year(stack, indoors, indoorTemperature);
        MutableList<Balance> months = Lists.mutable.empty();
        for (int i = 0; i < 12; i++) {
            months.add(year.pass(climate.months().get((first + i) % 12)));
        }
        return months.toImmutable();
    }

    /** The water in the planes, carried from month to month. */
    private static final class Year {

        private final VapourStack stack;
        private final IndoorAir indoors;
        private final double indoorTemperature;
        private final double[] amount;

        Year(VapourStack stack, IndoorAir indoors, double indoorTemperature) {
            this.stack = stack;
            this.indoors = indoors;
            this.indoorTemperature = indoorTemperature;
            this.amount = new double[stack.planes()];
        }

        Balance pass(Climate.Mean air) {
            double outdoor = SurfaceHumidity.vapourPressure(air);
            double indoor = indoors.vapourPressure(air, indoorTemperature);
            double[] temperatures = stack.temperatures(indoorTemperature, air.temperature());
            double[] saturation = new double[temperatures.length];
            for (int i = 0; i < saturation.length; i++) {
                saturation[i] = SaturationPressure.at(temperatures[i]);
            }
            double[] before = amount.clone();
            VapourProfile atFirst = spend(air.month().length(false) * SECONDS_OF_A_DAY, saturation, indoor, outdoor);
            MutableList<Plane> planes = Lists.mutable.empty();
            for (int i = 0; i < amount.length; i++) {
                planes.add(new Plane(
                        temperatures[i], saturation[i], atFirst.pressure(i), amount[i] - before[i], amount[i]));
            }
            return new Balance(air.month(), indoor, outdoor, planes.toImmutable());
        }

        /** Lets the time pass in steps, each up to the moment at which the next plane is dry. */
        private VapourProfile spend(double seconds, double[] saturation, double indoor, double outdoor) {
            double[] x = stack.positions();
            VapourProfile first = null;
            double left = seconds;
            // Each step but the last dries a plane, and a plane does not get wet and dry over and over in a steady
            // month.
            for (int step = 0; left > 0; step++) {
                if (step > 4 * amount.length + 4) {
                    throw new IllegalStateException("condensation: a month does not end after " + step
                            + " steps. This is our fault; please report the assembly");
                }
                VapourProfile profile = VapourProfile.of(x, saturation, wet(), indoor, outdoor);
                first = first == null ? profile : first;
                double time = left;
                for (int i = 0; i < amount.length; i++) {
                    if (amount[i] > 0 && profile.gain(i) < 0) {
                        time = Math.min(time, amount[i] / -profile.gain(i));
                    }
                }
                for (int i = 0; i < amount.length; i++) {
                    double after = amount[i] + profile.gain(i) * time;
                    amount[i] = after > DRY * 1e-3 ? after : 0;
                }
                left -= time;
            }
            return first;
        }

        private boolean[] wet() {
            boolean[] wet = new boolean[amount.length];
            for (int i = 0; i < wet.length; i++) {
                wet[i] = amount[i] > 0;
            }
            return wet;
        }
    }
}
