package coldseam.junctions.hand;

import coldseam.envelope.JunctionKind;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Positional;
import coldseam.files.Refers;
import coldseam.files.Size;
import coldseam.files.Words;
import coldseam.files.quantity.Format;
import coldseam.junctions.detail.FileConnections;
import coldseam.junctions.detail.Rank;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A section file as it is written; numbers are without units: coordinates in {@code lengths}, all else SI.
 *
 * @param place of the file's mapping
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

    /** m²·K/W: four times what still air resists; a coefficient in its place is more (judgement). */
    static final String MOST_RESISTANCE = "1";

    static final String USUAL_RESISTANCE =
            "0.04 outdoors, 0.10 to 0.25 indoors; of a coefficient, 25 or 4 W/(m²·K), it is one over that";

    /** W/(m·K), as of a house's own materials: no metal conducts more. */
    static final String MOST_CONDUCTIVITY = "500";

    /** Units of coordinates. */
    enum Lengths {
        MM(0.001),
        CM(0.01),
        M(1),
        IN(0.0254);

        /** m; a wall whose metres are taken for millimetres is thinner (judgement). */
        private static final double SMALLEST = 0.005;

        /** m; a metre whose millimetres are taken for metres is longer, the ground under a house shorter (judgement). */
        private static final int LARGEST = 300;

        private final double metres;

        Lengths(double metres) {
            this.metres = metres;
        }

        double metres() {
            return metres;
        }

        /**
         * Adds a fault where what is drawn is as large as no part of a house with the ground round it, or as small as no layer.
         *
         * @param size m, its largest
         */
        void check(double size, Position place, Faults faults) {
            if (!(size >= SMALLEST && size <= LARGEST)) {
                faults.add(
                        place,
                        "a drawing is as large as parts of houses are",
                        Format.of(
                                "%s m from one side to the other, lengths: %s",
                                new BigDecimal(size)
                                        .round(new MathContext(3))
                                        .stripTrailingZeros()
                                        .toPlainString(),
                                Words.word(this)),
                        SMALLEST + " m to " + LARGEST + " m",
                        "correct the key lengths, or the coordinates");
            }
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
            @Bounds(above = "0", atMost = MOST_CONDUCTIVITY) double conductivity,
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
            double temperature,

            @Bounds(atLeast = "0", atMost = MOST_RESISTANCE, usual = USUAL_RESISTANCE)
            double surfaceResistance) {}

    /** A boundary; its own surface resistance in m²·K/W. */
    record FileBoundary(
            Position place,
            @Refers("environment") String environment,
            @Size(min = 2, max = 1000) ImmutableList<FilePlace> path,

            @Bounds(atLeast = "0", atMost = MOST_RESISTANCE, usual = USUAL_RESISTANCE)
            OptionalDouble surfaceResistance) {}

    record FileProbe(Position place, String name, FilePlace at) {}

    /**
     * What makes a section a detail.
     *
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
