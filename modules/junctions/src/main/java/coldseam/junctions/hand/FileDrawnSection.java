package coldseam.junctions.hand;

import coldseam.envelope.JunctionKind;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Positional;
import coldseam.files.Refers;
import coldseam.files.Size;
import coldseam.junctions.detail.FileConnections;
import coldseam.junctions.detail.Rank;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A section file as it is written; numbers are without units: coordinates in {@code lengths}, all else SI.
 *
 * @param place of the file's mapping
 * @param section its name
 * @param lengths unit of the coordinates
 * @param axisymmetric whether x is the radius
 * @param regions in painting order
 * @param environments by name
 * @param boundaries what faces them
 * @param probes where a temperature is asked for
 * @param junction what makes it a detail of a house
 */
@Noun("a section")
record FileDrawnSection(
        Position place,
        String section,
        Lengths lengths,
        @Default("false") boolean axisymmetric,
        @Size(min = 1, max = 500) ImmutableList<FileRegion> regions,
        @Size(min = 1, max = 100) @Defines("environment") ImmutableList<Named<FileEnvironment>> environments,
        @Size(min = 1, max = 500) ImmutableList<FileBoundary> boundaries,
        @Size(max = 500) @Default("") ImmutableList<FileProbe> probes,
        Optional<FileJunction> junction) {

    /** Units of coordinates. */
    enum Lengths {
        MM(0.001),
        CM(0.01),
        M(1),
        IN(0.0254);

        private final double metres;

        Lengths(double metres) {
            this.metres = metres;
        }

        double metres() {
            return metres;
        }
    }

    /** A point. */
    @Positional
    record FilePlace(double x, double y) {}

    /** Two opposite corners. */
    @Positional
    record FileRectangle(double x0, double y0, double x1, double y1) {}

    /** A painted region; a rectangle or a polygon. */
    @Noun("a region")
    record FileRegion(
            Position place,
            String material,
            @Bounds(above = "0") double conductivity,
            Optional<FileRectangle> rectangle,
            @Size(min = 3, max = 1000) Optional<ImmutableList<FilePlace>> polygon) {

        FileRegion {
            if (rectangle.isPresent() == polygon.isPresent()) {
                throw new BadValueException(
                        "material",
                        "a region has one outline",
                        rectangle.isPresent() ? "a rectangle and a polygon" : "none",
                        "rectangle: [x0, y0, x1, y1], or polygon: [[x, y], …]",
                        "write one of them");
            }
        }
    }

    /** An environment: °C, m²·K/W. */
    record FileEnvironment(
            double temperature, @Bounds(atLeast = "0") double surfaceResistance) {}

    /** A boundary; its own surface resistance in m²·K/W. */
    record FileBoundary(
            Position place,
            @Refers("environment") String environment,
            @Size(min = 2, max = 1000) ImmutableList<FilePlace> path,
            @Bounds(atLeast = "0") OptionalDouble surfaceResistance) {}

    /** A probe. */
    record FileProbe(Position place, String name, FilePlace at) {}

    /**
     * What makes a section a detail.
     *
     * @param kind of junction
     * @param looksLike what one sees
     * @param rank among its kind's options
     * @param legs plane parts, in the kind's order
     * @param connections of air, water and vapour control
     */
    @Noun("a junction")
    record FileJunction(
            JunctionKind kind,
            @Default("middle") Rank rank,
            @Default("As drawn by hand.") String looksLike,
            @Size(min = 2, max = 2) ImmutableList<FileLeg> legs,
            Optional<FileConnections> connections) {}

    /**
     * A plane part.
     *
     * @param place of its mapping
     * @param transmittance U, W/(m²·K)
     * @param external length, in the file's unit
     * @param internal length, in the file's unit
     * @param insulation thickness, in the file's unit
     * @param cut the line across it where the drawing ends: two points
     * @param factor temperature factor b of what it faces
     */
    @Noun("a leg")
    record FileLeg(
            Position place,
            String name,
            @Bounds(above = "0") double transmittance,
            @Bounds(atLeast = "0") double external,
            @Bounds(atLeast = "0") double internal,
            @Bounds(atLeast = "0") double insulation,
            @Size(min = 2, max = 2) ImmutableList<FilePlace> cut,

            @Default("1") @Bounds(atLeast = "0", atMost = "1")
            double factor) {}
}
