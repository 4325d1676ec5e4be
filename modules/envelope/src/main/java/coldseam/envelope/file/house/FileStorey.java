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

        @Doc("Assembly of the roof where this storey is open above and not walked on.") @Refers("assembly")
        Optional<String> lowerRoof,

        @Doc("Assembly of the floor where this storey projects over the one below.") @Refers("assembly")
        Optional<String> overhang,

        @Doc("Thickness of the internal floor on which it stands; not for the lowest storey.")
        @Unit(Dimension.THICKNESS)
        @Bounds(above = "0 mm", atMost = "2 m")
        OptionalDouble floorThickness,

        Position place)
        implements SelfChecking {

    FileStorey {
        if (terrace.isPresent() && lowerRoof.isPresent()) {
            throw new BadValueException(
                    "lowerRoof",
                    "what is open above a storey is a terrace or a lower roof",
                    "both",
                    "terrace or lower-roof",
                    "remove one of the two keys");
        }
    }

    @Override
    public void check(Faults faults) {
        walls.check(footprint, faults);
    }
}
