package coldseam.report.house;

/**
 * A direction from which a house is seen, without perspective: parallel lines stay parallel.
 *
 * @param name as written under the view
 * @param azimuth degrees, of the eye: 0 from the north, 90 from the east
 * @param elevation degrees above the horizon, of the eye
 */
record Viewpoint(String name, double azimuth, double elevation) {}
