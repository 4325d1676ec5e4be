package coldseam.report.data;

import coldseam.conduction.Interval;

/** A value known to lie between two bounds; not rounded. */
record BoundsData(double lower, double upper) {
    static BoundsData of(Interval interval) {
        return new BoundsData(interval.lower(), interval.upper());
    }
}
