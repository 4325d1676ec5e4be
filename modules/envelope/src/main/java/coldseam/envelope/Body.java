package coldseam.envelope;

import coldseam.files.AlsoCalled;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Refers;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** The shape of a house: by storeys, or by explicit surfaces. */
public sealed interface Body {

    /**
     * How high the parapet around a roof stands above its outer face, m; zero without.
     *
     * @param surface the roof's name
     * @param storey the name of the storey under it
     */
    double parapetHeight(String surface, String storey);

    /**
     * What the internal floor is of on which a storey or level stands; empty where nothing says.
     *
     * @param storey name of the storey, or of the level
     */
    Optional<InternalFloor> internalFloor(String storey);

    /** What an internal floor is of where it bears in masonry; in a frame it is of joists. */
    enum InternalFloor {
        SLAB,
        JOISTS
    }

    /**
     * Storeys stacked on one another, and wings beside them: the house is all of them together.
     *
     * @param line to which line the footprints are measured
     * @param main stack
     * @param wings stacks of their own, each beside another or reaching into it
     */
    record Storeys(FootprintLine line, Stack main, ImmutableList<Stack> wings) implements Body {

        /** The main stack, then the wings. */
        public ImmutableList<Stack> stacks() {
            return Lists.immutable.of(main).newWithAll(wings);
        }

        @Override
        public double parapetHeight(String surface, String storey) {
            return stackOf(storey).roof().parapetHeight();
        }

        @Override
        public Optional<InternalFloor> internalFloor(String storey) {
            return stacks().flatCollect(Stack::storeys)
                    .detectOptional(each -> each.name().equals(storey))
                    .flatMap(Storey::floor);
        }

        /** The stack a storey belongs to, by the storey's name. */
        public Stack stackOf(String storey) {
            return stacks().detectOptional(stack ->
                            stack.storeys().anySatisfy(each -> each.name().equals(storey)))
                    .orElse(main);
        }
    }

    /**
     * Storeys on one base under one roof.
     *
     * @param name of a wing; empty for the main stack
     * @param storeys bottom → top, at least one
     * @param base what lies under the lowest storey
     * @param roof what lies over the top storey
     * @param otherBases what lies under parts of it instead, the first whose area holds a place
     * @param ground m, z of the ground beside each corner of its lowest storey, even from corner to corner; empty where it is zero
     *     all round
     */
    record Stack(
            String name,
            ImmutableList<Storey> storeys,
            Base base,
            Roof roof,
            ImmutableList<AreaBase> otherBases,
            ImmutableList<Double> ground) {}

    /**
     * What lies under a part of the house.
     *
     * @param area in plan, counterclockwise, as far as the house has nothing heated below it there
     * @param base of that part
     */
    record AreaBase(ImmutableList<Point2> area, Base base) {}

    /** The line a footprint was measured to. */
    enum FootprintLine {
        /** The inner face of the finished wall. */
        INNER_FACE,
        /** The outer face of the outermost structure layer: what a builder measures before insulating. */
        STRUCTURE,
        /** The outer face of the finished envelope. */
        OUTER_FACE
    }

    /**
     * One storey.
     *
     * @param name such as "ground floor"
     * @param footprint a simple polygon, counterclockwise, at least three corners
     * @param courts simple polygons within it, clockwise, apart from it and from one another: closed on all sides, open above
     * @param height m, floor to floor (in the top storey to the top of the ceiling's structure, or of the rafters over the inner face
     *     of the eaves' wall)
     * @param walls one for each side of the footprint, side i from corner i to corner i + 1, then those of each court
     * @param terrace assembly of what lies open above this storey where the next is smaller; needed wherever walls of different
     *     thickness do not explain it
     * @param terraceIsWalkedOn whether those parts are terraces (true) or lower roofs (false)
     * @param overhang assembly of the floor where this storey projects over the one below; needed as the terrace is
     * @param floorThickness m, of the internal floor on which this storey stands; zero for the lowest
     * @param floor what that floor is of; empty where nothing says
     * @param lowerRoof roof over the part of what lies open, or over all of it
     * @param base what lies under this storey where it projects over the one below, instead of an overhang in the open; for the
     *     lowest the body says it
     */
    record Storey(
            String name,
            ImmutableList<Point2> footprint,
            ImmutableList<ImmutableList<Point2>> courts,
            double height,
            ImmutableList<Wall> walls,
            Optional<String> terrace,
            boolean terraceIsWalkedOn,
            Optional<String> overhang,
            double floorThickness,
            Optional<InternalFloor> floor,
            Optional<LowerRoof> lowerRoof,
            Optional<Base> base) {

        /** The footprint, then the courts. */
        public ImmutableList<ImmutableList<Point2>> outlines() {
            return Lists.immutable.of(footprint).newWithAll(courts);
        }
    }

    /**
     * A roof of one slope or none over what lies open above a storey.
     *
     * @param area in plan, counterclockwise, as far as it lies open; empty for all of it
     * @param pitch degrees; zero for a flat one
     * @param lowSide index of the storey's side along which its eaves run; ignored where flat
     * @param eaves m, from the storey's floor to the top of the rafters over the inner face of the low side's wall; ignored
     *     where flat
     * @param wall assembly of walls that only its own height leaves upright, name; that of the low side's wall where empty
     * @param exposure what it faces: an unheated space makes it a ceiling
     */
    record LowerRoof(
            Optional<ImmutableList<Point2>> area,
            String assembly,
            double pitch,
            int lowSide,
            double eaves,
            Optional<String> wall,
            Exposure exposure) {}

    /**
     * One side of a storey.
     *
     * @param name such as "south wall, ground floor"
     * @param assembly name; empty for a side left out, which leaves the shell open
     */
    record Wall(String name, Optional<String> assembly, Exposure exposure) {

        private static final String GABLE_OVER = "gable over ";

        /** The name of the gable over a wall of that name. */
        public static String gableOver(String wall) {
            return GABLE_OVER + wall;
        }

        /** Whether a surface's name is a gable's. */
        static boolean isGable(String surface) {
            return surface.startsWith(GABLE_OVER);
        }
    }

    /**
     * Under the lowest storey.
     *
     * @param kind of floor
     * @param assembly name; empty where left out
     * @param edge insulation beside or under the slab's rim
     * @param depth m, cellar floor below ground level; zero on ground
     * @param level m, z of the upper face of a floor on the ground or over an unheated space
     * @param crawlSpace its height, vents and wall; only for suspended floors
     */
    record Base(
            Kind kind,
            Optional<String> assembly,
            Optional<EdgeInsulation> edge,
            double depth,
            double level,
            Optional<CrawlSpace> crawlSpace,
            Exposure exposure) {

        /** Whether it is a floor whose underside lies in or over the ground. */
        public boolean onGround() {
            return kind != Kind.OVER_UNHEATED;
        }

        /** Kinds of lowest floor. */
        public enum Kind {
            SLAB_ON_GROUND,

            @AlsoCalled({"crawl space", "crawlspace", "vented crawl space", "pier and beam", "piers"})
            SUSPENDED,

            @AlsoCalled({
                "basement",
                "cellar",
                "heated basement",
                "conditioned basement",
                "walk out basement",
                "walkout basement"
            })
            HEATED_CELLAR,

            @AlsoCalled({"unheated cellar", "cold cellar", "unheated basement", "unconditioned basement", "garage"})
            OVER_UNHEATED
        }
    }

    /**
     * Slab edge insulation (ISO 13370).
     *
     * @param vertical true where it goes down, false where it lies flat
     * @param extent m, its depth or width
     * @param thickness m
     * @param material of the board
     */
    record EdgeInsulation(boolean vertical, double extent, double thickness, Material material) {}

    /**
     * The space under a suspended floor (ISO 13370).
     *
     * @param height m, floor above ground level
     * @param wallTransmittance W/(m²·K), of its walls above ground
     * @param vents m² of opening per m of perimeter
     * @param windSpeed m/s, mean at 10 m
     * @param windShielding 0.02 sheltered, 0.05 average, 0.10 exposed
     * @param groundResistance m²·K/W, of insulation on its ground
     */
    record CrawlSpace(
            double height,
            double wallTransmittance,
            double vents,
            double windSpeed,
            double windShielding,
            double groundResistance) {}

    /**
     * Over the top storey.
     *
     * @param insulatedAtCeiling true where the insulation lies on the top ceiling and the loft is cold
     * @param assembly name; empty where left out
     * @param gableAssembly of gable triangles, name; the wall's below where empty
     * @param pitch degrees; zero for level roofs
     * @param lowSide index of the footprint side on which a mono-pitch is lowest, or along which the eaves of a gable run
     * @param parapetHeight m above the roof's outer face; zero without parapet
     * @param loftFactor temperature factor of a cold loft
     * @param sides of a gable or hip roof that rise otherwise than form and pitch say, by the footprint side's index
     * @param collar level ceiling that ends the slopes of a gable or hip roof below its ridge
     * @param dormers on slopes of a gable or hip roof
     */
    record Roof(
            Form form,
            boolean insulatedAtCeiling,
            Optional<String> assembly,
            Optional<String> gableAssembly,
            double pitch,
            int lowSide,
            double parapetHeight,
            OptionalDouble loftFactor,
            ImmutableMap<Integer, RoofSide> sides,
            Optional<Collar> collar,
            ImmutableList<Dormer> dormers) {

        /** Whether nothing slopes that is insulated. */
        public boolean flatTop() {
            return insulatedAtCeiling || form.isLevel();
        }

        /** Roof forms. */
        public enum Form {
            FLAT,
            /** Level, and walked out on. */
            TERRACE,
            MONO_PITCH,
            GABLE,
            HIP;

            public boolean isLevel() {
                return this == FLAT || this == TERRACE;
            }
        }
    }

    /** A level ceiling between slopes, under a cold loft; its height in m. */
    @Noun("a collar ceiling")
    @Doc("A level ceiling that ends the slopes below the ridge.")
    record Collar(
            @Doc("Height of its inner face over the top storey's floor.")
            @Unit(Dimension.LENGTH)
            @Bounds(atLeast = "1 m", atMost = "20 m")
            double height,

            @Doc("Its assembly.") @Refers("assembly") String assembly,

            @Doc("Temperature factor of the loft over it: 1 as cold as outdoors.")
            @Default("1")
            @Unit(Dimension.RATIO)
            @Bounds(atLeast = "0.5", atMost = "1", usual = "0.7 to 1")
            double loftFactor) {}

    /**
     * A dormer on a slope, measured to its outer faces.
     *
     * @param name unique
     * @param side index of the footprint side whose slope it stands on
     * @param gabled true under a roof of two slopes, false under one slope (a shed)
     * @param left m, from the side's left end, seen from outdoors, to its left cheek; empty where it stands in the middle
     * @param offMiddle m, how far to the right of that middle it stands; where {@code left} is given it counts alone
     * @param width m
     * @param setBack m, from the outer face of the wall below to its front; zero where both are one face
     * @param height m, of its front over the slope there, to its own eaves
     * @param pitch degrees, of its own roof
     * @param wall assembly of its front and cheeks, name
     * @param roof assembly of its roof, name
     */
    record Dormer(
            String name,
            int side,
            boolean gabled,
            OptionalDouble left,
            double offMiddle,
            double width,
            double setBack,
            double height,
            double pitch,
            String wall,
            String roof) {}

    /**
     * How a roof rises over one side of the storey under it.
     *
     * @param pitch degrees, of its slope
     * @param gable m over the eaves, up to which its wall stands before the slope begins: zero for eaves, infinite for a
     *     gable, between for a half-hip
     */
    record RoofSide(double pitch, double gable) {}

    /**
     * Explicit surfaces on named points of the outer shell.
     *
     * @param points by name
     * @param surfaces in the file's order
     * @param groundLevel m, z of the ground beside the house where it is level
     * @param ground names of points in turn round the house, on the ground: even from one to the next; empty where it is level
     * @param levels bottom → top, at least one: every floor one walks on
     */
    record Explicit(
            ImmutableMap<String, Point3> points,
            ImmutableList<ExplicitSurface> surfaces,
            double groundLevel,
            ImmutableList<String> ground,
            ImmutableList<Level> levels)
            implements Body {

        @Override
        public double parapetHeight(String surface, String storey) {
            return surfaces.detectOptional(each -> each.name().equals(surface))
                    .map(ExplicitSurface::parapetHeight)
                    .orElse(0.0);
        }

        @Override
        public Optional<InternalFloor> internalFloor(String storey) {
            return levels.detectOptional(each -> each.name().equals(storey)).flatMap(Level::floor);
        }
    }

    /**
     * A floor of a body of explicit surfaces: walls that pass it are two storeys' walls.
     *
     * @param name of the storey on it
     * @param height m, z of its upper face
     * @param floorThickness m, of the internal floor; zero for the lowest
     * @param floor what that floor is of; empty where nothing says
     */
    record Level(String name, double height, double floorThickness, Optional<InternalFloor> floor) {}

    /**
     * One explicit surface.
     *
     * @param name unique
     * @param points names, counterclockwise seen from outdoors
     * @param assembly name; empty where left out
     * @param parapetHeight m above a flat roof's outer face; zero without parapet
     * @param gable whether a wall goes on up as the gable of a cold loft
     */
    record ExplicitSurface(
            String name,
            ImmutableList<String> points,
            Optional<String> assembly,
            Exposure exposure,
            Use use,
            double parapetHeight,
            boolean gable) {}

    /** What a surface is to the house. */
    enum Use {
        FLOOR,
        WALL,
        ROOF,
        CEILING,
        TERRACE,
        OVERHANG
    }
}
