package coldseam.envelope.file.house;

import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.SelfChecking;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

@Noun("a storey")
@Doc("One storey.")
record FileStorey(
        @Doc("Such as ground floor.") @Defines("storey") String name,

        @Doc("Its outline in plan: corners, or a rectangle.")
        FileFootprint footprint,

        @Doc("Floor to floor; in the top storey to the top of the ceiling's structure.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "1 m", atMost = "20 m")
        double height,

        @Doc("Its walls: one assembly for all, a list with one for each side, or a mapping from sides.")
        FileWalls walls,

        @Doc("Assembly of the deck where this storey is open above and walked on.") @Refers("assembly")
        Optional<String> terrace,

        @Doc(
                "Roof where this storey is open above and not walked on: an assembly, or a lean-to; with a terrace beside it, its area.")
        Optional<FileLowerRoof> lowerRoof,

        @Doc("Assembly of the floor where this storey projects over the one below.") @Refers("assembly")
        Optional<String> overhang,

        @Doc("Thickness of the internal floor on which it stands; not for the lowest storey.")
        @Unit(Dimension.THICKNESS)
        @Bounds(above = "0 mm", atMost = "2 m")
        OptionalDouble floorThickness,

        Position place)
        implements SelfChecking {

    FileStorey {
        if (terrace.isPresent()
                && lowerRoof.isPresent()
                && lowerRoof.get().area().isEmpty()) {
            throw new BadValueException(
                    "lowerRoof",
                    "beside a terrace a lower roof needs the key area",
                    "a terrace and a lower roof",
                    "terrace or lower-roof, or both where the roof has an area",
                    "add it: {assembly: " + lowerRoof.get().assembly()
                            + ", area: {rectangle: [3 m, 2 m], at: [0 m, 0 m]}}, or remove one of the two keys");
        }
    }

    @Override
    public void check(Faults faults) {
        walls.check(footprint, faults);
        lowerRoof.ifPresent(roof -> roof.check(footprint, faults));
    }
}
