package coldseam.junctions.point;

import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;

/**
 * A point's section, solved.
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
        Point coldest) {}
