package coldseam.report.house;

import coldseam.envelope.Point3;

/**
 * A direction from which a house is seen, without perspective: parallel lines stay parallel.
 *
 * @param name as written under the view
 * @param azimuth degrees from east towards north, of the eye
 * @param elevation degrees above the horizon, of the eye
 */
record Viewpoint(String name, double azimuth, double elevation) {

    /** To the right in the picture. */
    double x(Point3 p) {
        double a = Math.toRadians(azimuth);
        return -Math.sin(a) * p.x() + Math.cos(a) * p.y();
    }

    /** Upwards in the picture. */
    double y(Point3 p) {
        double a = Math.toRadians(azimuth);
        double e = Math.toRadians(elevation);
        return -Math.sin(e) * (Math.cos(a) * p.x() + Math.sin(a) * p.y()) + Math.cos(e) * p.z();
    }

    /** Towards the eye. */
    double depth(Point3 p) {
        double a = Math.toRadians(azimuth);
        double e = Math.toRadians(elevation);
        return Math.cos(e) * (Math.cos(a) * p.x() + Math.sin(a) * p.y()) + Math.sin(e) * p.z();
    }
}
