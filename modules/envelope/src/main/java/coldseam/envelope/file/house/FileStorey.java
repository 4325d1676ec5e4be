package coldseam.envelope.file.house;

import coldseam.envelope.Body;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.SelfChecking;
import coldseam.files.Short;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("a storey")
@Doc("One storey.")
record FileStorey(
        @Doc("Such as ground floor.") @Defines("storey") String name,

        @Doc("Its outline in plan: corners, or a rectangle.")
        FileFootprint footprint,

        @Doc("Courts by name: outlines within the footprint, closed on all sides and open above.")
        @Default("")
        @Size(max = 20)
        ImmutableList<Named<FileFootprint>> courts,

        @Doc(
                "Floor to floor; in the top storey to the top of the ceiling's structure, and under slopes to the top of the rafters over"
                        + " the inner face of the eaves' wall, which is more than that wall stands high. Less than 1 m only for the"
                        + " walls of the top storey under a pitched roof insulated at its slopes.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0.3 m", atMost = "8 m", usual = "2.4 to 3.5 m")
        double height,

        @Doc("Its walls: one assembly for all, a list with one for each side, or a mapping from sides.")
        FileWalls walls,

        @Doc("Assembly of the deck where this storey is open above and walked on.") @Refers("assembly")
        Optional<String> terrace,

        @Doc(
                "Roof where this storey is open above and not walked on: an assembly, or a lean-to; with a terrace beside it, its area.")
        Optional<FileLowerRoof> lowerRoof,

        @Doc(
                "Floor where this storey projects over the one below: its assembly, and what it faces if not the open air.")
        Optional<FileOverhang> overhang,

        @Doc(
                "What this storey stands on where it reaches beyond the one below, such as a slab beside a cellar; for the lowest"
                        + " storey the body says it.")
        Optional<FileBase> base,

        @Doc("Thickness of the internal floor on which it stands; not for the lowest storey.")
        @Unit(Dimension.THICKNESS)
        @Bounds(atLeast = "50 mm", atMost = "2 m", usual = "200 to 400 mm")
        OptionalDouble floorThickness,

        @Doc(
                "What that floor is of where it bears in masonry: slab, of reinforced concrete, as where the key is left out; or"
                        + " joists, whose ends are points of their own, of the kind joist end. Not for the lowest.")
        Optional<Body.InternalFloor> floor,

        Position place)
        implements SelfChecking {

    @Short
    @Noun("an overhang")
    @Doc("The floor of a storey over the open air, a porch or a garage.")
    record FileOverhang(
            @Doc("Its assembly.") @Refers("assembly") String assembly,

            @Doc("What it faces: outdoors, or a neighbour's name.") @Default("outdoors") @Refers("neighbour")
            String faces) {}

    FileStorey {
        if (overhang.isPresent() && base.isPresent()) {
            throw new BadValueException(
                    "base",
                    "a storey stands on a base or hangs over",
                    "both keys",
                    "overhang or base",
                    "remove one of them; other-bases of the body gives parts a base by their area");
        }
        if (base.isPresent() && base.get().kind() == Body.Base.Kind.HEATED_CELLAR) {
            throw new BadValueException(
                    "base",
                    "a heated cellar is a storey of its own, the lowest",
                    "heated cellar",
                    "slab on ground, suspended, or over unheated",
                    "add a storey for the cellar and give the body its base");
        }
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

    /** Its outline and those of its courts. */
    StoreyOutlines outlines() {
        return new StoreyOutlines(
                footprint.corners(),
                courts.collect(each -> new Named<>(each.name(), each.value().corners(), each.place())));
    }

    @Override
    public void check(Faults faults) {
        outlines().check(faults);
        walls.check(outlines(), faults);
        lowerRoof.ifPresent(roof -> roof.check(outlines(), faults));
    }
}
