package coldseam.report.section;

import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A drawing scale people have a ruler for.
 *
 * @param label as written beside the drawing
 * @param denominator metres in a metre of paper
 */
record Scale(String label, double denominator) {

    private static final ImmutableList<Scale> SI =
            Lists.immutable.of(1, 2, 5, 10, 15, 20, 25, 50, 100, 200).collect(d -> new Scale("1:" + d, d));

    private static final ImmutableList<Scale> US = Lists.immutable.of(
            new Scale("full size", 1),
            new Scale("6 in = 1 ft (1:2)", 2),
            new Scale("3 in = 1 ft (1:4)", 4),
            new Scale("1 1/2 in = 1 ft (1:8)", 8),
            new Scale("1 in = 1 ft (1:12)", 12),
            new Scale("3/4 in = 1 ft (1:16)", 16),
            new Scale("1/2 in = 1 ft (1:24)", 24),
            new Scale("1/4 in = 1 ft (1:48)", 48),
            new Scale("1/8 in = 1 ft (1:96)", 96),
            new Scale("1/16 in = 1 ft (1:192)", 192));

    /** Points on paper for a metre of the section. */
    double pointsPerMetre() {
        return 72 / 0.0254 / denominator;
    }

    /** The largest scale at which so many metres fit so many points; the smallest there is where none does. */
    static Scale fitting(UnitSystem system, double metresX, double metresY, double pointsX, double pointsY) {
        ImmutableList<Scale> all = system == UnitSystem.SI ? SI : US;
        return all.detectIfNone(
                s -> metresX * s.pointsPerMetre() <= pointsX && metresY * s.pointsPerMetre() <= pointsY, all::getLast);
    }
}
