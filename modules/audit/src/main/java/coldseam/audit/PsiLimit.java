package coldseam.audit;

import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Limits;
import coldseam.junctions.JunctionResult;

/** The largest psi a junction may have, W/(m·K). */
public final class PsiLimit {

    private PsiLimit() {}

    /**
     * In a system of dimensions: where geometry alone makes its psi the larger of the two (external at more than 180° measured
     * indoors, internal at less) it has a limit of its own, if that is larger.
     */
    public static double of(JunctionResult junction, Limits limits, DimensionSystem system) {
        double toInternal =
                junction.psiInternal().middle() - junction.psiExternal().middle();
        boolean larger = system == DimensionSystem.EXTERNAL ? toInternal < 0 : toInternal > 0;
        return larger ? Math.max(of(junction, limits), limits.geometryPsi()) : of(junction, limits);
    }

    /**
     * Where geometry does not make it the larger one: the limit of seams, or of openings. Where psi holds a wall that no surface
     * counts, such as a skylight's shaft, as much more as that wall would lose at the largest U a wall may have (judgement).
     */
    public static double of(JunctionResult junction, Limits limits) {
        double seam = junction.setup().kind().form().framed() ? limits.openingPsi() : limits.psi();
        double height = junction.setup()
                .kind()
                .wallInPsi()
                .map(name -> junction.detail()
                        .parameters()
                        .select(each -> each.name().equals(name))
                        .sumOfDouble(each -> each.value()))
                .orElse(0.0);
        return seam + height * limits.surfaces().wall().transmittance();
    }
}
