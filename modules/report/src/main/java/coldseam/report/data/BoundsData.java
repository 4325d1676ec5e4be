package coldseam.report.data;

import coldseam.conduction.Interval;

/** A value known to lie between two bounds; not rounded. */
public record BoundsData(double lower, double upper) {

    /** Of an interval. */
    public static BoundsData of(Interval interval) {
        return new BoundsData(interval.lower(), interval.upper());
    }
}
