package coldseam.envelope.shell.mesh;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A surface in the making: its outline on the lattice and what its neighbours must know of it.
 *
 * @param name unique
 * @param whole what the file may call it by: all pieces of one surface bear one
 * @param partOf name of the roof or wall it is a part of; its own where of none
 * @param assembly empty where none is given or the facet is a step
 * @param outline counterclockwise seen from outdoors
 * @param inset m, from its outer plane inwards to its inner plane
 * @param traits where it stands
 */
public record Facet(
        String name,
        String whole,
        String partOf,
        Body.Use use,
        Optional<Assembly> assembly,
        Exposure exposure,
        ImmutableList<Vertex> outline,
        double inset,
        Traits traits) {

    /** What sets a facet apart from others of its use. */
    public enum Mark {
        /** A strip where the outer planes of two walls differ, or a jog between two levels. */
        STEP,
        /** A wall that a gable or verge stands on. */
        UNDER_GABLE,
        /** A dormer's front or cheek. */
        DORMER,
        /** A flat roof with a parapet. */
        PARAPET,
        /** A cellar's floor or walls. */
        CELLAR,
        NONE
    }

    /**
     * Where a facet stands.
     *
     * @param storey in words
     * @param level index of its storey, −1 where the body has none
     * @param floor m, z of its storey's floor; NaN where only the facet's inner outline tells
     * @param mark what sets it apart
     */
    public record Traits(String storey, int level, double floor, Mark mark) {}

    /** One that is no piece of anything, as thick as its assembly. */
    public Facet(
            String name,
            Body.Use use,
            Optional<Assembly> assembly,
            Exposure exposure,
            ImmutableList<Vertex> outline,
            Traits traits) {
        this(
                name,
                name,
                name,
                use,
                assembly,
                exposure,
                outline,
                assembly.map(Assembly::thickness).orElse(0.0),
                traits);
    }

    /** Whether a name is a wall's, or that of the gable over it. */
    public static boolean isOrIsUnder(String wall, String name) {
        return name.equals(wall) || name.equals(Body.Wall.gableOver(wall));
    }

    public boolean step() {
        return traits.mark() == Mark.STEP;
    }

    /** Whether it is left out: it still bounds its neighbours' inner faces, but leaves the shell open. */
    public boolean missing() {
        return assembly.isEmpty() && !step();
    }

    /** Whether one of two walls stands on the other's storey. */
    public boolean stacked(Facet other) {
        return use == Body.Use.WALL
                && other.use == Body.Use.WALL
                && Math.abs(traits.level() - other.traits.level()) == 1;
    }

    /** Whether both are of one build-up, whatever the file calls it on either side; one left out is like no other that is there. */
    boolean builtAs(Facet other) {
        return assembly.map(built -> built.named("")).equals(other.assembly.map(built -> built.named("")));
    }

    /** Whether both are of one build-up and face the same. */
    boolean isAs(Facet other) {
        return builtAs(other) && exposure.equals(other.exposure);
    }

    public boolean faces(Exposure.Kind kind) {
        return exposure.kind() == kind;
    }

    boolean marked(Mark mark) {
        return traits.mark() == mark;
    }

    public Facet withOutline(ImmutableList<Vertex> corners) {
        return new Facet(name, whole, partOf, use, assembly, exposure, corners, inset, traits);
    }

    public Facet withName(String other) {
        return new Facet(other, other, other, use, assembly, exposure, outline, inset, traits);
    }

    /** A part of what it was, which a file calls by another name; what is built new may bear the old one. */
    public Facet partNamed(String other) {
        return new Facet(other, other, partOf, use, assembly, exposure, outline, inset, traits);
    }

    /** A piece of what it was: told apart by its name, and called by the old one as well. */
    public Facet pieceNamed(String other) {
        return new Facet(other, whole, partOf, use, assembly, exposure, outline, inset, traits);
    }

    public Facet withTraits(Traits other) {
        return new Facet(name, whole, partOf, use, assembly, exposure, outline, inset, other);
    }

    /** Twice the area vector, lattice units squared, exact. */
    public Vertex doubleArea() {
        return Ring.doubleArea(outline);
    }

    /** Outward unit normal. */
    public Point3 normal() {
        Vertex area = doubleArea();
        return Vectors.unit(new Point3(area.x(), area.y(), area.z()));
    }
}
