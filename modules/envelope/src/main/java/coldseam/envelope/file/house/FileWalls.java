package coldseam.envelope.file.house;

import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Short;
import coldseam.files.Size;
import coldseam.files.Whole;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

@Noun("the walls")
@Doc("The walls of a storey: one assembly for all, a list with one for each side, or a mapping from sides.")
sealed interface FileWalls {

    /** Adds a fault for each way the walls do not fit the footprint. */
    void check(StoreyOutlines outlines, Faults faults);

    /** One for each side, side i from corner i to the next, in the file's order, those of courts after the others. */
    ImmutableList<FileWall> bySide(StoreyOutlines outlines);

    @Short
    @Noun("the walls")
    @Doc("One assembly for all walls.")
    record FileSameWalls(
            @Doc("Its name.") @Refers(value = "assembly", or = HouseFile.NONE)
            String assembly,

            Position place) implements FileWalls {
        @Override
        public void check(StoreyOutlines outlines, Faults faults) {}

        @Override
        public ImmutableList<FileWall> bySide(StoreyOutlines outlines) {
            FileWall wall = new FileWall(assembly, "outdoors", Optional.empty(), place);
            return Lists.immutable.fromStream(
                    IntStream.range(0, outlines.count()).mapToObj(side -> wall));
        }
    }

    @Whole
    @Noun("the walls")
    @Doc(
            "One wall for each side of the footprint, the first from the first corner to the second; then those of its courts.")
    record FileListedWalls(
            @Doc("In the footprint's order.")
            @Size(
                    min = 3,
                    max = 100,
                    fewer = "write one for each side, or one assembly for all without brackets: walls: NAME")
            ImmutableList<FileWall> walls,

            Position place)
            implements FileWalls {
        @Override
        public void check(StoreyOutlines outlines, Faults faults) {
            int sides = outlines.count();
            if (walls.size() != sides) {
                faults.add(
                        place,
                        "a storey needs one wall for each side of its footprint",
                        walls.size() + " walls",
                        sides + ", as the footprint" + (outlines.courts().isEmpty() ? " has " : " and its courts have ")
                                + sides + " corners",
                        "add or remove walls, or write them as a mapping with all, north, east and so on");
            }
        }

        @Override
        public ImmutableList<FileWall> bySide(StoreyOutlines outlines) {
            return walls;
        }
    }

    @Whole
    @Noun("the walls")
    @Doc("Walls by side: all, the compass word of the way they face, or side 1 for that from the first corner.")
    record FileSidedWalls(
            @Doc(
                    "all, north, north-east, east and so on, or side 1, side 2 and so on; a court by its name, or its name before the word; the narrower one wins.")
            ImmutableList<Named<FileWall>> walls,

            Position place)
            implements FileWalls {

        @Override
        public void check(StoreyOutlines outlines, Faults faults) {
            for (Named<FileWall> wall : walls) {
                if (outlines.of(wall.name()).isEmpty()) {
                    faults.add(outlines.none(wall.name(), wall.place()));
                }
            }
            // A word misread leaves a side without wall; that would only say the same again.
            boolean allRead = walls.allSatisfy(each -> outlines.of(each.name()).notEmpty());
            ImmutableMap<Integer, FileWall> bySide = outlines.narrowest(walls);
            for (int side = 0; allRead && side < outlines.count(); side++) {
                if (!bySide.containsKey(side)) {
                    faults.add(
                            place,
                            "each side of a storey needs a wall",
                            "none for " + outlines.numbered(side) + ", which faces "
                                    + outlines.facing(side).word(),
                            "add " + outlines.word(side) + " or all");
                }
            }
        }

        @Override
        public ImmutableList<FileWall> bySide(StoreyOutlines outlines) {
            ImmutableMap<Integer, FileWall> bySide = outlines.narrowest(walls);
            return Lists.immutable.fromStream(
                    IntStream.range(0, outlines.count()).mapToObj(bySide::get));
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
}
