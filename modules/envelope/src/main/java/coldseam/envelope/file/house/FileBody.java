package coldseam.envelope.file.house;

import coldseam.envelope.Body;
import coldseam.envelope.Point3;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Marked;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.SelfChecking;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.Whole;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;

@Noun("a body")
@Doc("The shape of the house.")
sealed interface FileBody {

    /** Where it stands in the file. */
    Position place();

    /** Whether a roof of its own has a cold loft under it. */
    default boolean hasColdLoft() {
        return false;
    }

    @Marked("storeys")
    @Noun("a body by storeys")
    @Doc("Storeys stacked on one another.")
    record FileStoreys(
            @Doc("To which line of the walls the footprints are measured.")
            Body.FootprintLine footprintLine,

            @Doc("From the lowest to the top one.") @Size(min = 1, max = 20)
            ImmutableList<FileStorey> storeys,

            @Doc("What lies under the lowest storey.") FileBase base,
            @Doc("What lies over the top storey.") FileRoof roof,

            @Doc(
                    "What lies under parts of the house instead of the base, each with its area; the first that holds a place counts.")
            @Default("")
            @Size(max = 20)
            ImmutableList<FileBase> otherBases,

            @Doc(
                    "Heights of the ground beside the lowest storey's corners, in their order (of a rectangle from its south-west corner to"
                            + " the south-east one and on), where it is not level at 0 m; even from"
                            + " corner to corner. Those in its courts may follow; without them it lies there as beside the"
                            + " nearest side.")
            @Default("")
            @Size(max = 100)
            ImmutableList<FileHeight> ground,

            @Doc(
                    "Wings by name: storeys on a base of their own under a roof of their own, beside the others at another height or"
                            + " reaching into them; what lies between two of them is indoors.")
            @Default("")
            @Size(max = 20)
            ImmutableList<Named<FileWing>> wings,

            Position place)
            implements FileBody, FileStack {
        @Override
        public boolean hasColdLoft() {
            return roofs().anySatisfy(FileRoof::hasColdLoft);
        }

        private ImmutableList<FileRoof> roofs() {
            return wings.collect(each -> each.value().roof()).newWith(roof);
        }

        @Override
        public void check(Faults faults) {
            FileStack.super.check(faults);
            MutableSet<String> dormers = Sets.mutable.empty();
            roofs().flatCollect(FileRoof::dormers)
                    .forEach(each -> each.value()
                            .names(each.name())
                            .reject(dormers::add)
                            .forEach(name -> faults.add(
                                    each.place(),
                                    "each dormer of a house has a name of its own",
                                    '"' + name + "\", there twice",
                                    "name one of them otherwise; those of a row are numbered")));
        }
    }

    /** The main stack of storeys, or a wing. */
    interface FileStack extends SelfChecking {
        ImmutableList<FileStorey> storeys();

        FileBase base();

        FileRoof roof();

        ImmutableList<FileBase> otherBases();

        ImmutableList<FileHeight> ground();

        Position place();

        @Override
        default void check(Faults faults) {
            new StoreyChecks(storeys(), roof(), faults).check();
            base().checkMain(faults);
            if (ground().isEmpty()) {
                base().checkDepth(faults);
            }
            StoreyOutlines lowest = storeys().getFirst().outlines();
            int corners = lowest.footprint().size();
            int heights = ground().size();
            if (heights > 0 && heights != corners && heights != lowest.count()) {
                faults.add(
                        place(),
                        "ground needs one height for each corner of the lowest storey",
                        heights + " heights",
                        lowest.courts().isEmpty()
                                ? String.valueOf(corners)
                                : corners + ", or " + lowest.count() + " with those of its courts",
                        "add or remove heights; they follow the footprint's corners");
            }
            roof().check(storeys().getLast().outlines(), faults);
            roof().checkParapet(storeys().anySatisfy(each -> each.lowerRoof().isPresent()), faults);
            otherBases().forEach(each -> each.checkOther(faults));
        }
    }

    @Noun("a wing")
    @Doc("Storeys on a base of their own under a roof of their own.")
    record FileWing(
            @Doc("From the lowest to the top one; their names are unique in the house.") @Size(min = 1, max = 20)
            ImmutableList<FileStorey> storeys,

            @Doc("What lies under the lowest storey, and at which level.")
            FileBase base,

            @Doc("What lies over the top storey.") FileRoof roof,

            @Doc(
                    "What lies under parts of it instead of the base, each with its area; the first that holds a place counts.")
            @Default("")
            @Size(max = 20)
            ImmutableList<FileBase> otherBases,

            @Doc(
                    "Heights of the ground beside its lowest storey's corners, in their order (of a rectangle from its south-west corner to the south-east one and on), where it is not level at 0 m.")
            @Default("")
            @Size(max = 100)
            ImmutableList<FileHeight> ground,

            Position place)
            implements FileStack {}

    @Whole
    @Noun("a height of the ground")
    @Doc("A height of the ground.")
    record FileHeight(
            @Doc(
                    "Over the zero of the house, from which the floors count, too: a base's level, a crawl space's height, a cellar's depth.")
            @Unit(Dimension.LENGTH)
            @Bounds(atLeast = "-20 m", atMost = "20 m")
            double height) {}

    @Marked("surfaces")
    @Noun("a body by surfaces")
    @Doc("Explicit surfaces on named points of the outer shell; x points east, y north, z up.")
    record FileSurfaces(
            @Doc("Points by name.") @Size(max = 2000) @Defines("point")
            ImmutableList<Named<Point3>> points,

            @Doc("Plane surfaces by name.") @Size(min = 1, max = 500) @Defines("surface")
            ImmutableList<Named<FileSurface>> surfaces,

            @Doc(
                    "The floors one walks on, by the names of the storeys on them, in any order; walls are cut where they pass one.")
            @Size(min = 1, max = 20)
            ImmutableList<Named<FileLevel>> levels,

            @Doc("Height of the ground beside the house.")
            @Default("0 m")
            @Unit(Dimension.LENGTH)
            @Bounds(atLeast = "-100 m", atMost = "100 m")
            double groundLevel,

            @Doc(
                    "Points on the ground in turn round the house, where it is not level; even from one to the next, elsewhere as beside"
                            + " the nearest such line. Walls are parted along it: what stands in it faces the ground.")
            @Default("")
            @Refers("point")
            @Size(max = 200)
            ImmutableList<String> ground,

            Position place)
            implements FileBody, SelfChecking {

        /** m, between points of the ground. */
        private static final double APART = 0.001;

        /** A mapping has no order: levels are sorted by their heights. */
        public FileSurfaces {
            levels = levels.toImmutableSortedListBy(each -> each.value().height());
        }

        @Override
        public void check(Faults faults) {
            levels.forEachWithIndex((level, i) -> level.value().check(level.name(), i == 0, faults));
            levels.zip(levels.drop(1))
                    .forEach(pair ->
                            pair.getTwo().value().checkOver(pair.getTwo().name(), pair.getOne(), faults));
            surfaces.forEach(each -> each.value().check(each.name(), faults));
            checkGround(faults);
        }

        private void checkGround(Faults faults) {
            if (ground.notEmpty() && groundLevel != 0) {
                faults.add(
                        place,
                        "the ground has one level, or heights at points",
                        "both ground-level and ground",
                        "remove one of the two keys");
            }
            ImmutableList<Point3> line = ground.flatCollect(
                    name -> points.select(point -> point.name().equals(name)).collect(Named::value));
            if (ground.notEmpty() && ground.size() < 3) {
                faults.add(
                        place,
                        "ground needs points all round the house",
                        ground.size() == 1 ? "1 point" : ground.size() + " points",
                        "3 and more",
                        "add the others, or give ground-level alone");
            }
            for (int i = 0; i < line.size() && line.size() == ground.size() && ground.size() > 1; i++) {
                int next = (i + 1) % line.size();
                Point3 a = line.get(i);
                Point3 b = line.get(next);
                if (Math.hypot(a.x() - b.x(), a.y() - b.y()) < APART) {
                    faults.add(
                            place,
                            "points of the ground lie apart in plan",
                            Format.of(
                                    "\"%s\" and \"%s\" at [%.3f m, %.3f m]",
                                    ground.get(i), ground.get(next), a.x(), a.y()),
                            "1 mm and more",
                            "leave one of them out; a step in the ground is a short slope");
                }
            }
        }
    }

    @Noun("a level")
    @Doc("A floor one walks on.")
    record FileLevel(
            @Doc("Of its upper face, on the points' scale.")
            @Unit(Dimension.LENGTH)
            @Bounds(atLeast = "-100 m", atMost = "100 m")
            double height,

            @Doc("Thickness of the internal floor; not for the lowest.")
            @Unit(Dimension.THICKNESS)
            @Bounds(above = "0 mm", atMost = "2 m")
            OptionalDouble floorThickness,

            @Doc(
                    "What that floor is of where it bears in masonry: slab, of reinforced concrete, as where the key is left out; or"
                            + " joists, whose ends are points of their own, of the kind joist end. Not for the lowest.")
            Optional<Body.InternalFloor> floor,

            Position place) {

        /** m, from floor to floor, as for storeys. */
        private static final double LOWEST_STOREY = 1;

        void check(String name, boolean lowest, Faults faults) {
            if (lowest && floor.isPresent()) {
                faults.add(
                        place,
                        "the lowest level has no floor that bears in its walls: its floor is a surface",
                        name + ", floor: " + Words.word(floor.get()),
                        "remove the key");
            }
            if (lowest && floorThickness.isPresent()) {
                faults.add(
                        place,
                        "the lowest level has no floor-thickness: its floor is a surface",
                        name,
                        "remove the key");
            } else if (!lowest && floorThickness.isEmpty()) {
                faults.add(
                        place,
                        "a level above another needs the key floor-thickness",
                        name,
                        "add it: floor-thickness: 250 mm");
            }
        }

        void checkOver(String name, Named<FileLevel> below, Faults faults) {
            double rise = height - below.value().height();
            if (!(rise >= LOWEST_STOREY)) {
                faults.add(
                        place,
                        "levels lie a storey apart, floor to floor",
                        Format.of("%s, %.3f m over %s", name, rise, below.name()),
                        Format.of("%.0f m and more", LOWEST_STOREY),
                        "correct the heights");
            }
        }
    }

    @Noun("a surface")
    @Doc("A plane surface of the outer shell.")
    record FileSurface(
            @Doc("Names of its corners, counterclockwise seen from outdoors.")
            @Refers("point")
            @Size(min = 3, max = 200)
            ImmutableList<String> points,

            @Doc("Its assembly; none leaves a hole.") @Refers(value = "assembly", or = HouseFile.NONE)
            String assembly,

            @Doc("What it is to the house.") Body.Use use,

            @Doc("What it faces: outdoors, ground, crawl space or a neighbour's name.")
            @Default("outdoors")
            @Refers("neighbour")
            String faces,

            @Doc("Height of the parapet above a flat roof's outer face.")
            @Default("0 mm")
            @Unit(Dimension.LENGTH)
            @Bounds(atLeast = "0 m", atMost = "3 m")
            double parapetHeight,

            @Doc("Whether a wall goes on up, over the ceiling that it meets, as the gable of a cold loft.")
            @Default("false")
            boolean gable,

            Position place) {

        void check(String name, Faults faults) {
            if (parapetHeight > 0 && use != Body.Use.ROOF) {
                faults.add(
                        place,
                        "only a flat roof has a parapet-height",
                        name + ", use " + Words.word(use),
                        "use: roof",
                        "remove the key, or correct the use");
            }
            if (gable && use != Body.Use.WALL) {
                faults.add(
                        place,
                        "only a wall goes on as a gable",
                        name + ", use " + Words.word(use),
                        "use: wall",
                        "remove the key, or correct the use");
            }
        }
    }
}
