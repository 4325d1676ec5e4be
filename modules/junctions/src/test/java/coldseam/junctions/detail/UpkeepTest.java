package coldseam.junctions.detail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Point3;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Side;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.catalogue.CatalogueFile;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.tuple.Pair;
import org.junit.jupiter.api.Test;

/** What asks to be looked after, and what lies covered; common practice, no source. */
class UpkeepTest {

    private static final ImmutableList<Detail> ALL = CatalogueFile.builtIn()
            .junctions()
            .newWithAll(CatalogueFile.builtIn().points());

    private static ImmutableList<String> asked(String id, String kind) {
        Detail detail =
                ALL.detect(each -> each.id().equals(id) && each.kind().label().equals(kind));
        return Upkeep.of(detail).collect(Upkeep::look);
    }

    private static ImmutableList<String> asked(String id) {
        return Upkeep.of(ALL.detect(each -> each.id().equals(id))).collect(Upkeep::look);
    }

    private static final ImmutableList<Material> MATERIALS = MaterialLibrary.materials();

    /** Of one layer; what lies inside of it does not matter. */
    private static Assembly outermost(String name) {
        return assembly(layer(name, Role.CLADDING));
    }

    private static Assembly assembly(Layer... layers) {
        return new Assembly(
                "wall", Lists.immutable.of(layers), Optional.empty(), Assembly.AirGaps.NONE, Optional.empty());
    }

    private static Layer layer(String name, Role role) {
        Material material = MATERIALS
                .detectOptional(each -> each.name().equals(name))
                .orElseGet(() -> Material.conducting(name, 1, false, "invented"));
        return new Layer(
                material, 0.1, role, Optional.empty(), Optional.empty(), Optional.empty(), Sets.immutable.empty());
    }

    private static Surface surface(Assembly assembly, Body.Use use, Exposure exposure) {
        return new Surface(
                "north",
                "north",
                Side.NORTH,
                use,
                Optional.of(assembly),
                exposure,
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                new Point3(0, 1, 0),
                1,
                1,
                0,
                Lists.immutable.empty(),
                "");
    }

    private static ImmutableList<String> asked(Assembly assembly, Exposure exposure) {
        return Upkeep.of(surface(assembly, Body.Use.WALL, exposure)).collect(Upkeep::look);
    }

    private static final Exposure OUTDOORS = Exposure.outdoors();
    private static final Exposure LOFT = new Exposure(Exposure.Kind.UNHEATED, "loft", 0.9);

    @Test
    void everyRuleAndEachOfItsWordsAsksSomething() {
        ImmutableList<Assembly> faces = MATERIALS.collect(each -> outermost(each.name()));
        assertEquals(
                Lists.immutable.empty(),
                Upkeep.all()
                        .reject(rule ->
                                ALL.anySatisfy(detail -> Upkeep.of(detail).contains(rule))
                                        || faces.anySatisfy(face -> Upkeep.of(surface(face, Body.Use.WALL, OUTDOORS))
                                                .contains(rule))));
        ImmutableList<String> pieces =
                ALL.flatCollect(detail -> detail.drawing().pieces());
        assertEquals(
                Lists.immutable.empty(),
                Upkeep.FILE
                        .flatCollect(Upkeep.FileRule::drawn)
                        .reject(word -> pieces.anySatisfy(piece -> piece.matches(word + "s?\\b.*"))));
        assertEquals(
                Lists.immutable.empty(),
                Upkeep.FILE
                        .flatCollect(Upkeep.FileRule::outermost)
                        .reject(word -> MATERIALS.anySatisfy(each -> each.name().matches("(.*\\b)?" + word + "s?"))));
    }

    /** A list that comes back to spring is read half. */
    @Test
    void whatIsDoneAtOneTimeStandsTogether() {
        ImmutableList<String> times = Upkeep.all().collect(Upkeep::often);
        assertEquals(
                times.distinct(),
                times.zipWithIndex()
                        .select(each -> each.getTwo() == 0
                                || !times.get(each.getTwo() - 1).equals(each.getOne()))
                        .collect(Pair::getOne));
    }

    @Test
    void whatIsDrawnInSightAsks() {
        assertTrue(asked("terrace-threshold-on-block")
                .contains("Lift the grating before the door and clear the channel under it."));
        assertTrue(asked("sill-in-frame-on-pan").contains(PAN));
        assertTrue(asked("roof-drain-insulated").getOnly().startsWith("Clear the drain"));
        assertTrue(asked("abutment-inner-boards-meet").getLast().startsWith("Paint boards indoors"));
        ImmutableList<String> loft = asked("eaves-cold-loft-raised-heel");
        assertTrue(loft.anySatisfy(look -> look.startsWith("Keep the loft's vents open")));
        assertTrue(loft.getLast().startsWith("See that the mesh"));
        assertTrue(asked("ledger-bolted-to-rim").getFirst().startsWith("Look at posts, beams"));
    }

    private static final String PAN = "See that pans under windows and doors drain at their front edge.";

    /**
     * A pane or a panel is no pan, a sheet that ends under one is not it, a skirt in the crawl space is no wall's foot, and what seals
     * a timber to the blocks indoors is no joint in the rain.
     */
    @Test
    void whatLiesCoveredAsksNothing() {
        assertEquals(Lists.immutable.empty(), asked("intermediate-floor-board-passes"));
        assertEquals(Lists.immutable.empty(), asked("outside-corner-unbroken"));
        assertEquals(Lists.immutable.empty(), asked("knee-wall-foot-bays-blocked"));
        assertFalse(asked("terrace-threshold-timber-on-kerb").contains(PAN));
        assertFalse(asked("overhang-threshold-on-block").anySatisfy(each -> each.startsWith("Keep soil")));
        assertFalse(asked("eaves-inner-boards-up-between-the-rafters", "high eaves of a mono-pitch")
                .anySatisfy(each -> each.startsWith("Clear gutters")));
    }

    @Test
    void layersInSightAsk() {
        assertTrue(asked(outermost("softwood"), OUTDOORS).getOnly().startsWith("Look over timber"));
        assertTrue(asked(outermost("clay roof tile"), OUTDOORS).getOnly().startsWith("Look from the ground"));
        assertTrue(asked(outermost("concrete paving"), OUTDOORS).getOnly().startsWith("Pull seedlings"));
        assertTrue(asked(outermost("boards of larch"), OUTDOORS).getOnly().startsWith("Ask the maker"));
        assertEquals(Lists.immutable.empty(), asked(outermost("softwood"), LOFT));
    }

    @Test
    void boardsInsideAskWhateverTheWallFacesAndNotUnderAFloor() {
        Assembly inside = assembly(
                layer("gypsum plaster", Role.FINISH),
                layer("mineral foam board", Role.INSULATION),
                layer("old solid brick", Role.STRUCTURE));
        assertTrue(asked(inside, LOFT).getOnly().startsWith("Paint boards indoors"));
        assertTrue(asked(inside, OUTDOORS).getFirst().startsWith("Look for open joints"));
        assertEquals(2, asked(inside, OUTDOORS).size());
        assertEquals(Lists.immutable.empty(), Upkeep.of(surface(inside, Body.Use.FLOOR, Exposure.ground())));
    }
}
