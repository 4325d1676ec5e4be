package coldseam.junctions.hand;

import coldseam.conduction.solid.BoxSide;
import coldseam.envelope.DimensionSystem;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Located;
import coldseam.files.Marked;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Positional;
import coldseam.files.Refers;
import coldseam.files.Short;
import coldseam.files.Size;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A section file in three dimensions as it is written; numbers are without units: coordinates in {@code lengths}, all else
 * SI.
 *
 * @param place of the file's mapping
 * @param lengths unit of the coordinates
 * @param body nothing is solid outside
 * @param multiplicity how many times what is drawn is there
 * @param cutPlanes faces of the body where the drawing is cut
 * @param painted in painting order
 * @param environments by name
 * @param patches pieces of surface whose mean temperature is asked for
 * @param probes where a temperature is asked for
 * @param chi what is taken from the coupling
 */
@Noun("a body")
record FileDrawnBody(
        Position place,
        String section,
        FileDrawnSection.Lengths lengths,
        FileBox body,

        @Default("1") @Bounds(atLeast = "1") double multiplicity,

        @Default("") ImmutableList<BoxSide> cutPlanes,
        @Size(min = 1) ImmutableList<Located<FilePainted>> painted,
        @Size(min = 1) @Defines("environment") ImmutableList<Named<FileAir>> environments,
        @Default("") ImmutableList<Located<FilePatch>> patches,
        @Default("") ImmutableList<Located<FileBodyProbe>> probes,
        Optional<Located<FileChi>> chi) {

    /** A point. */
    @Positional
    record FileSpot(double x, double y, double z) {}

    /** Two opposite corners. */
    @Positional
    record FileBox(double x0, double y0, double z0, double x1, double y1, double z1) {}

    @Noun("a painted box")
    sealed interface FilePainted {

        FileBox box();

        /** Of a material; W/(m·K). */
        @Marked("material")
        @Noun("a box of material")
        record FileSolid(
                String material,

                @Bounds(above = "0", atMost = FileDrawnSection.MOST_CONDUCTIVITY)
                double conductivity,

                FileBox box)
                implements FilePainted {}

        @Marked("environment")
        @Noun("a box of air")
        record FileAirBox(@Refers("environment") String environment, FileBox box) implements FilePainted {}

        /** Of nothing that takes or gives heat; {@code adiabatic: true} marks it. */
        @Marked("adiabatic")
        @Noun("an adiabatic box")
        record FileAdiabatic(boolean adiabatic, FileBox box) implements FilePainted {}
    }

    /** An environment: °C, m²·K/W. */
    @Noun("an environment")
    record FileAir(double temperature, FileResistance surfaceResistance) {}

    /** A surface resistance, m²·K/W. */
    @Noun("a surface resistance")
    sealed interface FileResistance {

        /** One for all surfaces. */
        @Short
        record Same(
                @Bounds(
                        atLeast = "0",
                        atMost = FileDrawnSection.MOST_RESISTANCE,
                        usual = FileDrawnSection.USUAL_RESISTANCE)
                double surfaceResistance)
                implements FileResistance {}

        /** By the way the heat flows. */
        @Marked("horizontal")
        @Noun("a surface resistance by the way of the heat")
        record ByWay(
                @Bounds(atLeast = "0") double up,
                @Bounds(atLeast = "0") double horizontal,
                @Bounds(atLeast = "0") double down)
                implements FileResistance {}
    }

    @Noun("a patch")
    record FilePatch(String name, @Refers("environment") String environment, FileBox box) {}

    @Noun("a probe")
    record FileBodyProbe(String name, FileSpot at) {}

    /**
     * What is taken from the coupling, so that what the corner or the point adds is left. {@code repeated} says that what is drawn
     * stands as near to its like as the cuts say; else they lie where nothing is bent by it.
     */
    @Noun("what chi is counted from")
    sealed interface FileChi {

        /** Of a corner where three edges meet: its inner or outer vertex, and which of them it is. */
        @Marked("corner")
        @Noun("the corner chi is counted from")
        record Corner(FileSpot corner, DimensionSystem dimensions) implements FileChi {}

        /** Of a point on a plane: the two cut planes whose common line is the undisturbed stack of layers. */
        @Marked("surface")
        @Noun("the surface chi is counted from")
        record Surface(
                @Size(min = 2, max = 2) ImmutableList<BoxSide> surface,
                @Default("false") boolean repeated) implements FileChi {}

        /** Of a point on an edge: the cut plane that is the undisturbed section. */
        @Marked("edge")
        @Noun("the edge chi is counted from")
        record Edge(BoxSide edge, @Default("false") boolean repeated) implements FileChi {}
    }
}
