package coldseam.audit;

import coldseam.envelope.Limits;
import coldseam.junctions.JunctionResult;

/** The largest psi a junction may have, W/(m·K). */
public final class PsiLimit {

    private PsiLimit() {}

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
        return seam + height * limits.surfaces().wall();
    }
}
