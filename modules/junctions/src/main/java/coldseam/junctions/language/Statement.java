package coldseam.junctions.language;

import coldseam.envelope.Control;
import coldseam.envelope.Role;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;

/** One statement of a drawing; a later one covers an earlier one. */
public sealed interface Statement {

    /**
     * A band's layers.
     *
     * @param name of the band
     * @param first whether it is the first band
     * @param to where every layer ends unless {@code ends} says otherwise; empty where each goes on to the outer (in an
     *     inside corner: inner) face of the like layer of the other band
     * @param from where every layer begins; empty at the cut
     * @param ends where these layers end; what names one layer goes before what names all of its role
     * @param roles those painted
     */
    record PaintBand(
            String name,
            boolean first,
            Optional<LineRange.End> to,
            Optional<LineRange.End> from,
            ImmutableMap<Which, LineRange.End> ends,
            ImmutableSet<Role> roles)
            implements Statement {}

    /**
     * Which of a band's layers are meant.
     *
     * @param role they have
     * @param nth of that role's layers, counted from the inside from 1 on; 0 for all of them, -1 for the outermost
     */
    record Which(Role role, int nth) {

        public static final int ALL = 0;
        public static final int OUTERMOST = -1;

        public static Which all(Role role) {
            return new Which(role, ALL);
        }
    }

    /**
     * Something between lines.
     *
     * @param what it is, for drawings
     * @param across range across the first band
     * @param along range across the second band, or along
     * @param role the part it plays; by its material where empty
     * @param drawnOnly whether it stays out of the conduction
     */
    record PaintBlock(
            String what,
            LineRange across,
            LineRange along,
            MaterialChoice material,
            Optional<Role> role,
            boolean drawnOnly)
            implements Statement {}

    /**
     * Something of any outline.
     *
     * @param corners each an end across the first band and one across the second, or along
     */
    record PaintShape(
            String what, ImmutableList<Corner> corners, MaterialChoice material, Optional<Role> role, boolean drawnOnly)
            implements Statement {}

    /**
     * A sheet that carries control layers from one surface to the other: drawn, and without resistance.
     *
     * @param carries air, water, vapour: what it is joined up to control
     * @param corners of its way, two or more
     */
    record PaintStrip(
            String what, ImmutableSet<Control> carries, ImmutableList<Corner> corners, MaterialChoice.Named material)
            implements Statement {}

    /**
     * Takes away what lies between lines: outdoor or indoor air takes its place.
     *
     * @param across range across the first band
     * @param along range across the second band, or along
     */
    record Clear(LineRange across, LineRange along) implements Statement {}

    /**
     * The ground beside and under the house.
     *
     * @param level line of the first band at which it lies outdoors
     */
    record Ground(Expression level) implements Statement {}

    /**
     * Where something that is not drawn divides two spaces outside the rooms, such as a roof a cold loft from outdoors.
     *
     * @param across end across the first band
     * @param along end across the second band, or along
     */
    record Divide(Expression across, Expression along) implements Statement {}

    /**
     * The window or door frame.
     *
     * @param outside line of its outer face where the house gives no set-back; in the middle of the insulation where empty
     * @param sill line of the first band on which a door stands; the floor behind it where empty
     */
    record Frame(Optional<Expression> outside, Optional<Expression> sill) implements Statement {}

    /**
     * A statement that is carried out only on one kind of build.
     *
     * @param first whether the first band decides
     */
    record Where(boolean first, Build build, Statement statement) implements Statement {}

    /** How a band is built. */
    enum Build {
        /** Its structure is framed. */
        FRAMED("framed"),
        SOLID("solid"),
        /** Framed, or of solid timber. */
        WOODEN("wooden"),
        /** Of anything else. */
        MASONRY("masonry"),
        /** Of masonry, and the storey floors that bear in it are slabs of concrete. */
        BEARS_SLABS("bearing slabs"),
        /** Of masonry, and the storey floor that bears in it is of joists. */
        BEARS_JOISTS("bearing joists"),
        /** All its insulation lies inside its structure. */
        INSULATED_INSIDE("insulated inside"),
        INSULATED_OUTSIDE("insulated outside"),
        /** Water is kept out behind its boards, on what carries. */
        SEALED_BEHIND("sealed behind its boards"),
        /** What carries it is all that insulates it, as blocks or logs do. */
        MONOLITHIC("monolithic"),
        /** Framed, and what lies between its studs, joists or rafters is all that insulates it. */
        IN_ITS_FRAME("insulated in its frame alone");

        private final String words;

        Build(String words) {
            this.words = words;
        }

        /** As details write it. */
        public String words() {
            return words;
        }

        /** All there are, as details write them. */
        public static String choice() {
            return Lists.immutable.of(values()).collect(Build::words).makeString(", ");
        }
    }

    /**
     * A corner of a shape.
     *
     * @param across end across the first band
     * @param along end across the second band, or along
     */
    record Corner(LineRange.End across, LineRange.End along) {}

    /** What fills a block. */
    sealed interface MaterialChoice {

        record Named(String name) implements MaterialChoice {}

        /**
         * The thickest layer of a role in a band.
         *
         * @param inSplash the material in its place, where no source says that the layer's stands where rain splashes up
         */
        record SameAs(boolean first, String band, Role role, Optional<String> inSplash) implements MaterialChoice {}

        /** The ground of the site. */
        record TheGround() implements MaterialChoice {}

        /** What carries the masonry over the opening. */
        record TheLintel() implements MaterialChoice {}
    }
}
