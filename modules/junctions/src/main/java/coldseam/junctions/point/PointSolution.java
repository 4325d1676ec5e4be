package coldseam.junctions.point;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.junctions.SectionSolving;

/**
 * A point's section, solved: chi = L3D − U·A over a disc (ISO 10211).
 *
 * @param section what was solved
 * @param solution with its evidence
 * @param coupling L3D over the disc, W/K
 * @param chi L3D − U·A, W/K; U and A are exact
 * @param temperatureFactor of the inner surface with Rsi 0.25 m²·K/W (ISO 13788); an estimate
 * @param coldest where it is lowest: radius and height, m
 */
public record PointSolution(
        PointSection section,
        Solution solution,
        Interval coupling,
        Interval chi,
        double temperatureFactor,
        Point coldest) {

    /** Rsi for surface temperatures, m²·K/W (ISO 13788:2012, from memory). */
    private static final double SURFACE_TEMPERATURE_RSI = 0.25;

    /**
     * Solves a section.
     *
     * @param accuracy of the coupling of the whole disc
     * @throws coldseam.conduction.SectionException where it cannot be drawn
     */
    public static PointSolution of(PointSection section, Accuracy accuracy, SectionSolving solving) {
        Solution solution = solving.solve(section.section(), accuracy);
        Interval coupling = solution.coupling(PointSection.INDOOR, PointSection.OUTDOOR);
        Solution surface = surface(section, accuracy, solving);
        SurfaceTemperature<Point> coldest = surface.surface(PointSection.INDOOR);
        return new PointSolution(
                section,
                solution.with(surface.outcome()),
                coupling,
                coupling.plus(-section.transmittance() * section.area()),
                (coldest.lowest() - section.outdoorTemperature())
                        / (section.indoorTemperature() - section.outdoorTemperature()),
                coldest.at());
    }

    private static Solution surface(PointSection section, Accuracy accuracy, SectionSolving solving) {
        double difference = Math.abs(section.indoorTemperature() - section.outdoorTemperature());
        return solving.solve(
                section.withInterior(SURFACE_TEMPERATURE_RSI).section(),
                SectionSolving.aimed(accuracy, PointSection.INDOOR, difference));
    }
}
