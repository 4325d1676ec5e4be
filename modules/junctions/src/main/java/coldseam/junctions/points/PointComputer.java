package coldseam.junctions.points;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Conduction;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;

/**
 * Computes point thermal transmittances: chi = L3D − U·A over a disc (ISO 10211).
 *
 * <p>chi is a small difference of two larger numbers, so the coupling is solved ten times as narrowly as that of a line
 * junction: 1e-5 of a disc of 1 m² at U 0.2 W/(m²·K) is 0.000002 W/K.
 */
public final class PointComputer {

    /** Rsi for surface temperatures, m²·K/W (ISO 13788:2012, from memory). */
    private static final double SURFACE_TEMPERATURE_RSI = 0.25;

    private final Accuracy accuracy;

    /** @param accuracy of the coupling of the whole disc */
    public PointComputer(Accuracy accuracy) {
        this.accuracy = accuracy;
    }

    /** 1e-5 of the disc's coupling. */
    public static PointComputer standard() {
        return new PointComputer(new Accuracy(1e-5, Accuracy.standard().maximumUnknowns()));
    }

    /**
     * Computes one point.
     *
     * @throws coldseam.conduction.SectionException where it cannot be drawn
     */
    public PointResult compute(PointSection section) {
        Solution solution = Conduction.solve(section.section(), accuracy);
        Interval coupling = solution.coupling(PointSection.INDOOR, PointSection.OUTDOOR);
        Solution surface =
                Conduction.solve(section.withInterior(SURFACE_TEMPERATURE_RSI).section(), accuracy);
        double lowest = surface.surface(PointSection.INDOOR).lowest();
        return new PointResult(
                section,
                solution,
                coupling,
                coupling.plus(-section.transmittance() * section.area()),
                (lowest - PointSection.OUTDOOR_TEMPERATURE)
                        / (PointSection.INDOOR_TEMPERATURE - PointSection.OUTDOOR_TEMPERATURE));
    }
}
