package coldseam.envelope.file.house;

import coldseam.files.Faults;
import org.locationtech.jts.geom.Polygon;

/** Checks each storey against the one below it. */
final class StoreyChecks {

    /** m, side of the smallest square on which a storey can stand. */
    private static final double NARROWEST = 0.5;

    private final FileBody.FileStoreys body;
    private final Faults faults;

    StoreyChecks(FileBody.FileStoreys body, Faults faults) {
        this.body = body;
        this.faults = faults;
    }

    void check() {
        FileStorey lowest = body.storeys().getFirst();
        if (lowest.floorThickness().isPresent()) {
            faults.add(
                    lowest.place(),
                    "the lowest storey has no floor-thickness: its floor is the base's assembly",
                    lowest.name(),
                    "",
                    "remove the key");
        }
        for (int i = 1; i < body.storeys().size(); i++) {
            between(body.storeys().get(i - 1), body.storeys().get(i));
        }
    }

    private void between(FileStorey below, FileStorey above) {
        if (above.floorThickness().isEmpty()) {
            faults.add(
                    above.place(),
                    "a storey above another needs the key floor-thickness",
                    above.name(),
                    "",
                    "add it: floor-thickness: 250 mm");
        }
        Polygon lower = Outline.polygon(below.footprint().corners());
        Polygon upper = Outline.polygon(above.footprint().corners());
        if (lower.intersection(upper).getArea() < NARROWEST * NARROWEST) {
            faults.add(
                    above.place(),
                    "a storey must stand on the one below",
                    above.name() + ", which lies beside " + below.name(),
                    "",
                    "check the corners of both footprints");
        }
    }
}
