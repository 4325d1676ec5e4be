package coldseam.envelope.file.house;

import coldseam.files.Faults;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import org.eclipse.collections.api.list.ImmutableList;
import org.locationtech.jts.geom.Geometry;

/** Checks each storey against the one below it and the roof over it. */
record StoreyChecks(ImmutableList<FileStorey> storeys, FileRoof roof, Faults faults) {

    /** m, side of the smallest square on which a storey can stand. */
    private static final double NARROWEST = 0.5;

    /** m, height of a storey's walls in which one stands; lower ones are those of an attic that rises into its roof (judgement). */
    private static final double LOWEST = 1;

    void check() {
        FileStorey lowest = storeys.getFirst();
        if (lowest.floorThickness().isPresent()) {
            faults.add(
                    lowest.place(),
                    "the lowest storey has no floor-thickness: its floor is the base's assembly",
                    lowest.name(),
                    "remove the key");
        }
        lowest.floor()
                .ifPresent(floor -> faults.add(
                        lowest.place(),
                        "the lowest storey has no floor that bears in its walls: its floor is the base's assembly",
                        lowest.name() + ", floor: " + Words.word(floor),
                        "remove the key"));
        for (int i = 1; i < storeys.size(); i++) {
            between(storeys.get(i - 1), storeys.get(i));
        }
        (roof.roomUnderSlopes() ? storeys.take(storeys.size() - 1) : storeys)
                .select(each -> each.height() < LOWEST)
                .forEach(each -> faults.add(
                        each.place(),
                        "walls as low are only for the top storey, under a pitched roof insulated at its slopes",
                        Phrase.of(each.name() + ", ").and(each.height(), Dimension.LENGTH),
                        Phrase.of(LOWEST, Dimension.LENGTH).and(" and more"),
                        "correct the height, or insulate the roof over it at its slopes"));
    }

    private void between(FileStorey below, FileStorey above) {
        if (above.floorThickness().isEmpty()) {
            faults.add(
                    above.place(),
                    "a storey above another needs the key floor-thickness",
                    above.name(),
                    "add it: floor-thickness: 250 mm");
        }
        Geometry lower = below.outlines().polygon();
        Geometry upper = above.outlines().polygon();
        if (lower.intersection(upper).getArea() < NARROWEST * NARROWEST) {
            faults.add(
                    above.place(),
                    "a storey must stand on the one below",
                    above.name() + ", which lies beside " + below.name(),
                    "check the corners of both footprints");
        }
    }
}
