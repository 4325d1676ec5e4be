package coldseam.envelope.file.house;

import coldseam.envelope.Point2;
import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Marked;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Positional;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.Whole;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("a footprint")
@Doc("An outline in plan; x points east, y north.")
sealed interface FileFootprint {

    /** Corners in the file's order, m. */
    ImmutableList<Point2> corners();

    @Marked("rectangle")
    @Noun("a rectangular footprint")
    @Doc("A rectangle along the axes.")
    record FileRectangle(
            @Doc("Its size east and north.") FileSize rectangle,

            @Doc("Its south-west corner; [0 m, 0 m] where it is missing.")
            Optional<FilePoint2> at)
            implements FileFootprint {
        @Override
        public ImmutableList<Point2> corners() {
            double x = at.map(FilePoint2::x).orElse(0.0);
            double y = at.map(FilePoint2::y).orElse(0.0);
            return Lists.immutable.with(
                    new Point2(x, y),
                    new Point2(x + rectangle.east, y),
                    new Point2(x + rectangle.east, y + rectangle.north),
                    new Point2(x, y + rectangle.north));
        }
    }

    @Whole
    @Noun("a footprint")
    @Doc("Its corners, one after the other around the outline.")
    record FilePolygon(
            @Doc("Corners.")
            @Size(
                    min = 3,
                    max = 100,
                    fewer =
                            "write a rectangle's size as {rectangle: [10 m, 8 m]}, or all corners as [[0 m, 0 m], [10 m, 0 m], ...]")
            ImmutableList<FilePoint2> points)
            implements FileFootprint {
        public FilePolygon {
            Outline.check(points);
        }

        @Override
        public ImmutableList<Point2> corners() {
            return points.collect(each -> new Point2(each.x, each.y));
        }
    }

    @Positional
    @Noun("a size in plan")
    @Doc("A size in plan.")
    record FileSize(
            @Doc("From west to east.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "0.5 m", atMost = "500 m")
            double east,

            @Doc("From south to north.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "0.5 m", atMost = "500 m")
            double north) {}

    @Positional
    @Noun("a point in plan")
    @Doc("A point in plan.")
    record FilePoint2(
            @Doc("East.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "-1000 m", atMost = "1000 m")
            double x,

            @Doc("North.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "-1000 m", atMost = "1000 m")
            double y,

            Position place) {}
}
