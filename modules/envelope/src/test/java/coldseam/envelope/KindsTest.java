package coldseam.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.file.house.BuildUps;
import coldseam.files.Binder;
import coldseam.files.Fault;
import coldseam.files.Faults;
import coldseam.files.SameNames;
import coldseam.files.SourceDocument;
import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Each kind's file says something of everything that is decided by kind, and what it names is there. */
class KindsTest {

    @Test
    void everyTypicalBuildUpIsThere() {
        ImmutableList<String> named = JunctionKind.all()
                .flatCollect(kind -> Lists.immutable
                        .of(kind.typical().first())
                        .newWithAll(kind.typical().second().stream().toList()))
                .newWithAll(PointKind.all().collect(PointKind::typical))
                .newWithAll(Lists.immutable.with(BridgeKind.Facing.values()).collect(BuildUps::insulatedInside))
                .newWithAll(JunctionKind.all()
                        .flatCollect(kind -> Lists.immutable
                                .fromStream(
                                        IntStream.range(0, kind.faces().size()).boxed())
                                .collect(which -> BuildUps.inItsFrame(kind, which))))
                .newWithAll(Lists.immutable.of(BridgeKind.Facing.values()).collect(BuildUps::frameInsulatedInside))
                .newWith(BuildUps.monolithic());
        SameNames.check(
                named,
                BuildUps.all().keysView(),
                "the kinds' files name uses of kinds/build-ups.yaml: add what is missing, remove what no kind names");
    }

    @Test
    void namesAndPlacesAreTold() {
        ImmutableList<String> labels = BridgeKind.every().collect(BridgeKind::label);
        assertEquals(labels.distinct(), labels);
        assertEquals("slab edge", JunctionKind.all().getFirst().label());
        assertEquals("duct", PointKind.all().getLast().label());
        assertSame(JunctionKind.JAMB, JunctionKind.of("jamb"));
        IllegalArgumentException unknown = assertThrows(IllegalArgumentException.class, () -> JunctionKind.of("jam"));
        assertTrue(unknown.getMessage().startsWith("no kind of junction is called \"jam\"; there are: slab edge, "));
    }

    /** Their sections show the seam under the door, so that the two are no seams that touch. */
    @Test
    void doorThresholdsAreThresholds() {
        assertEquals(
                Lists.immutable.empty(),
                JunctionKind.all()
                        .select(kind -> kind.label().contains("door threshold"))
                        .reject(JunctionKind::threshold));
    }

    /** A mast may come in through a wall, and a ventilated soffit hangs on brackets as a cladding does; a drain lies on top. */
    @Test
    void pointsFaceWhereTheyAreBuilt() {
        assertEquals(faced("roof drain"), Lists.immutable.of(BridgeKind.Facing.UP));
        assertTrue(faced("service mast").contains(BridgeKind.Facing.SIDE));
        assertTrue(faced("cladding bracket").contains(BridgeKind.Facing.DOWN));
    }

    private static ImmutableList<BridgeKind.Facing> faced(String label) {
        return PointKind.of(label).mayFace();
    }

    @Test
    void bandsFollowTheForm() {
        assertEquals(Lists.immutable.of("roof", "wall"), JunctionKind.PARAPET.bands());
        assertEquals(Lists.immutable.of("floor", "wall"), JunctionKind.SLAB_THRESHOLD.bands());
        assertEquals(Lists.immutable.of("wall"), JunctionKind.JAMB.bands());
        assertEquals(Lists.immutable.of("wall", "frame"), JunctionKind.JAMB.axes());
        assertEquals(Lists.immutable.of("across", "along"), JunctionKind.RIDGE.axes());
    }

    @Test
    void saysWhatAFileLacks() {
        String file = "junction: new\nplace: 5\nfirst: wall\nsecond: other wall\nfaces: [side]\n"
                + "form: {page: first down}\nwhere: meeting\ntypical: {first: wall, angle: 90 °}\nhold-points: []\n";
        Faults faults = new Faults();
        SourceDocument.read("new.yaml", file.getBytes(StandardCharsets.UTF_8), faults)
                .flatMap(tree -> Binder.bind(tree, KindFile.OfJunction.class, faults));
        assertEquals(
                Lists.immutable.of("hold-points has too few items"),
                faults.sorted().collect(Fault::asked));
        Faults more = new Faults();
        SourceDocument.read("new.yaml", file.replace("[]", "[Wall insulation]").getBytes(StandardCharsets.UTF_8), more)
                .flatMap(tree -> Binder.bind(tree, KindFile.OfJunction.class, more));
        assertEquals(
                Lists.immutable.of("each build-up faces one way"), more.sorted().collect(Fault::asked));
    }
}
