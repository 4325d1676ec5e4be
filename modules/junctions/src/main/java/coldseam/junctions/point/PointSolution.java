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

    /** Of the temperature difference: a tenth of what fRsi is printed to. */
    private static final double STEADY = 0.001;

    private static final int MOST_ROUNDS = 3;

    /**
     * Solves a section.
     *
     * @param accuracy of the coupling of the whole disc
     * @throws coldseam.conduction.SectionException where it cannot be drawn
     */
    public static PointSolution of(PointSection section, Accuracy accuracy, SectionSolving solving) {
        Solution solution = solving.solve(section.section(), accuracy);
        Interval coupling = solution.coupling(PointSection.INDOOR, PointSection.OUTDOOR);
        SurfaceTemperature<Point> coldest = coldest(section, accuracy, solving);
        return new PointSolution(
                section,
                solution,
                coupling,
                coupling.plus(-section.transmittance() * section.area()),
                (coldest.lowest() - section.outdoorTemperature())
                        / (section.indoorTemperature() - section.outdoorTemperature()),
                coldest.at());
    }

    /** Narrows until the last refinement changed the temperature by no more than {@link #STEADY}, or three times. */
    private static SurfaceTemperature<Point> coldest(PointSection section, Accuracy accuracy, SectionSolving solving) {
        double width = accuracy.relativeWidth();
        double steady = STEADY * (section.indoorTemperature() - section.outdoorTemperature());
        SurfaceTemperature<Point> coldest;
        int round = 0;
        do {
            coldest = solving.solve(
                            section.withInterior(SURFACE_TEMPERATURE_RSI).section(),
                            new Accuracy(width, accuracy.maximumUnknowns()))
                    .surface(PointSection.INDOOR);
            width /= 10;
            round++;
        } while (round < MOST_ROUNDS && Math.abs(coldest.change()) > steady);
        return coldest;
    }
}
