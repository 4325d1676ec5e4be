package coldseam.envelope.file.house;

import coldseam.envelope.Point2;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.Fault;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Nearest;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Short;
import coldseam.files.Size;
import coldseam.files.Whole;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

@Noun("the walls")
@Doc("The walls of a storey: one assembly for all, a list with one for each side, or a mapping from sides.")
sealed interface FileWalls {

    /** Adds a fault for each way the walls do not fit the footprint. */
    void check(FileFootprint footprint, Faults faults);

    /** One for each side, side i from corner i to the next, in the footprint's order in the file. */
    ImmutableList<FileWall> bySide(FileFootprint footprint);

    @Short
    @Noun("the walls")
    @Doc("One assembly for all walls.")
    record FileSameWalls(
            @Doc("Its name.") @Refers(value = "assembly", or = HouseFile.NONE)
            String assembly,

            Position place) implements FileWalls {
        @Override
        public void check(FileFootprint footprint, Faults faults) {}

        @Override
        public ImmutableList<FileWall> bySide(FileFootprint footprint) {
            return footprint.corners().collect(each -> new FileWall(assembly, "outdoors", Optional.empty(), place));
        }
    }

    @Whole
    @Noun("the walls")
    @Doc("One wall for each side of the footprint: the first from the first corner to the second.")
    record FileListedWalls(
            @Doc("In the footprint's order.") @Size(min = 3, max = 100)
            ImmutableList<FileWall> walls,

            Position place) implements FileWalls {
        @Override
        public void check(FileFootprint footprint, Faults faults) {
            int sides = footprint.corners().size();
            if (walls.size() != sides) {
                faults.add(
                        place,
                        "a storey needs one wall for each side of its footprint",
                        walls.size() + " walls",
                        sides + ", as the footprint has " + sides + " corners",
                        "add or remove walls, or write them as a mapping with all, north, east and so on");
            }
        }

        @Override
        public ImmutableList<FileWall> bySide(FileFootprint footprint) {
            return walls;
        }
    }

    @Whole
    @Noun("the walls")
    @Doc("Walls by side: all, the compass word of the way they face, or side 1 for that from the first corner.")
    record FileSidedWalls(
            @Doc("all, north, north-east, east and so on, or side 1, side 2 and so on; the narrower one wins.")
            ImmutableList<Named<FileWall>> walls,

            Position place)
            implements FileWalls {

        @Override
        public void check(FileFootprint footprint, Faults faults) {
            ImmutableList<Point2> corners = footprint.corners();
            for (Named<FileWall> wall : walls) {
                if (Sides.of(wall.name(), corners).isEmpty()) {
                    faults.add(Sides.none(wall.name(), corners, wall.place()));
                }
            }
            // A word misread leaves a side without wall; that would only say the same again.
            boolean allRead =
                    walls.allSatisfy(each -> Sides.of(each.name(), corners).notEmpty());
            ImmutableMap<Integer, FileWall> bySide = Sides.narrowest(walls, corners);
            for (int side = 0; allRead && side < corners.size(); side++) {
                if (!bySide.containsKey(side)) {
                    faults.add(
                            place,
                            "each side of a storey needs a wall",
                            "none for side " + (side + 1) + ", which faces "
                                    + Outline.facing(corners, side).word(),
                            "",
                            "add " + Outline.facing(corners, side).word() + " or all");
                }
            }
        }

        @Override
        public ImmutableList<FileWall> bySide(FileFootprint footprint) {
            ImmutableMap<Integer, FileWall> bySide = Sides.narrowest(walls, footprint.corners());
            return footprint.corners().collectWithIndex((corner, side) -> bySide.get(side));
        }
    }

    @Short
    @Noun("a wall")
    @Doc("A wall: its assembly, and what it faces.")
    record FileWall(
            @Doc("Name of its assembly; none leaves a hole.") @Refers(value = "assembly", or = HouseFile.NONE)
            String assembly,

            @Doc("What it faces: outdoors, ground, crawl space or a neighbour's name.")
            @Default("outdoors")
            @Refers("neighbour")
            String faces,

            @Doc("Its name, where \"ground floor south wall\" is not wanted.") @Defines("surface")
            Optional<String> name,

            Position place) {}

    /** Words for sides. */
    final class Sides {
        private Sides() {}

        /** The sides meant; none where the word means nothing for this footprint. */
        static ImmutableList<Integer> of(String word, ImmutableList<Point2> corners) {
            MutableList<Integer> all = Lists.mutable.empty();
            for (int side = 0; side < corners.size(); side++) {
                all.add(side);
            }
            if (word.equals("all")) {
                return all.toImmutable();
            }
            return word.matches("side [1-9]\\d?")
                    ? all.select(side -> word.equals("side " + (side + 1))).toImmutable()
                    : all.select(side -> Outline.facing(corners, side).word().equals(word))
                            .toImmutable();
        }

        /** What is said of each side by the narrowest word that means it: a single side, then a compass word, then all. */
        static <T> ImmutableMap<Integer, T> narrowest(ImmutableList<Named<T>> said, ImmutableList<Point2> corners) {
            MutableMap<Integer, T> bySide = Maps.mutable.empty();
            said.toSortedListBy(each ->
                            each.name().startsWith("side ") ? 2 : each.name().equals("all") ? 0 : 1)
                    .forEach(each -> of(each.name(), corners).forEach(side -> bySide.put(side, each.value())));
            return bySide.toImmutable();
        }

        /** The fault of a word that means no side. */
        static Fault none(String word, ImmutableList<Point2> corners, Position place) {
            MutableList<String> words = Lists.mutable.with("all");
            corners.forEachWithIndex(
                    (corner, side) -> words.add(Outline.facing(corners, side).word()));
            words.add("side 1 to side " + corners.size());
            MutableList<String> known = words.distinct();
            return new Fault(
                    place,
                    "no side of this footprint is meant by this",
                    '"' + word + '"',
                    known.makeString(", "),
                    Nearest.to(word, known)
                            .map(each -> "did you mean \"" + each + "\"?")
                            .orElse("write one of them"));
        }
    }
}
