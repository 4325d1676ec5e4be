package coldseam.report.data;

import coldseam.conduction.Interval;

/** A value known to lie between two bounds; not rounded. */
record Bounds(double lower, double upper) {
    static Bounds of(Interval interval) {
        return new Bounds(interval.lower(), interval.upper());
    }
}
