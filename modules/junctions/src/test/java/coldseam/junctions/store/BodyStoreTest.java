package coldseam.junctions.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.SolidBody;
import coldseam.junctions.hand.Drawn;
import coldseam.junctions.hand.DrawnBody;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers of bodies kept on disk. */
class BodyStoreTest {

    private static final Accuracy WIDE = new Accuracy(3e-3, 800_000);

    @TempDir
    private Path folder;

    private final AtomicInteger solved = new AtomicInteger();
    private SolidBody body;

    @BeforeEach
    void draw() throws IOException {
        body = ((DrawnBody) Drawn.load(Files.writeString(folder.resolve("body.yaml"), """
                section: Two probes and a patch
                lengths: mm
                body: [0, 0, 0, 400, 400, 300]
                cut-planes: [x0, x1, y0, y1]
                painted:
                - {environment: indoor, box: [0, 0, -10, 400, 400, 0]}
                - {environment: outdoor, box: [0, 0, 300, 400, 400, 310]}
                - {material: concrete, conductivity: 2.3, box: [0, 0, 0, 400, 400, 100]}
                - {material: insulation, conductivity: 0.035, box: [0, 0, 100, 400, 400, 300]}
                - {material: steel, conductivity: 50, box: [0, 0, 100, 10, 10, 300]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                  outdoor: {temperature: -5, surface-resistance: 0.04}
                patches:
                - {name: spot, environment: indoor, box: [0, 0, -10, 50, 50, 0]}
                probes:
                - {name: behind, at: [0, 0, 0]}
                - {name: beside, at: [200, 200, 0]}
                """))).body();
    }

    private BodySolution kept() {
        return new BodyStore(Optional.of(KeptFolder.in(folder.resolve("kept"))), this::counted).solve(body, WIDE);
    }

    private BodySolution counted(SolidBody asked, Accuracy accuracy) {
        solved.incrementAndGet();
        return BodySolver.solve(asked, accuracy);
    }

    @Test
    void aKeptSolutionIsTheSame() {
        BodySolution first = kept();
        BodySolution second = kept();
        assertEquals(1, solved.get());
        assertEquals(first.couplings(), second.couplings());
        assertEquals(first.heatFlows(), second.heatFlows());
        assertEquals(first.surfaces(), second.surfaces());
        assertEquals(first.probes(), second.probes());
        assertEquals(first.patches(), second.patches());
        assertEquals(first.outcome(), second.outcome());
        assertEquals(first.unknowns(), second.unknowns());
        assertEquals(first.seconds(), second.seconds());
        assertEquals(first.notes(), second.notes());
        assertEquals(first.field().faces(), second.field().faces());
        assertEquals(
                first.field().temperatureAt(new Place(0.07, 0.03, 0.21)),
                second.field().temperatureAt(new Place(0.07, 0.03, 0.21)));
    }

    @Test
    void anotherQuestionHasAnotherName() {
        String asked = BodyStore.name(body, WIDE);
        assertNotEquals(asked, BodyStore.name(body, new Accuracy(1e-3, 800_000)));
        assertNotEquals(
                asked,
                BodyStore.name(
                        new SolidBody(
                                body.name(),
                                body.extent(),
                                Math.nextUp(body.multiplicity()),
                                body.cutPlanes(),
                                body.painted(),
                                body.environments(),
                                body.patches(),
                                body.probes()),
                        WIDE));
    }

    /** A body and its mirror image are one answer, in memory and on disk; so the second solves nothing. */
    @Test
    void aBodyAndItsMirrorImageAreSolvedOnce() throws IOException {
        String drawn = """
                section: Bar in a corner
                lengths: mm
                body: [0, 0, 0, 300, 400, 350]
                cut-planes: [x0, y0, z0]
                painted:
                - {environment: outdoor, box: [0, 0, 0, 300, 400, 350]}
                - {material: insulation, conductivity: 0.035, box: [0, 0, 0, 250, 350, 300]}
                - {environment: indoor, box: [0, 0, 0, 100, 100, 100]}
                - {material: steel, conductivity: 50, box: [40, 100, 20, 60, 350, 30]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                  outdoor: {temperature: -5, surface-resistance: 0.04}
                """;
        body = ((DrawnBody) Drawn.load(Files.writeString(folder.resolve("right.yaml"), drawn))).body();
        BodyStore store = new BodyStore(Optional.of(KeptFolder.in(folder.resolve("kept"))), this::counted);
        BodySolution right = store.solve(body, WIDE);
        body = ((DrawnBody) Drawn.load(Files.writeString(
                        folder.resolve("left.yaml"),
                        drawn.replace("[0, 0, 0, 300, 400, 350]", "[0, 0, 0, 400, 300, 350]")
                                .replace("[0, 0, 0, 250, 350, 300]", "[0, 0, 0, 350, 250, 300]")
                                .replace("[40, 100, 20, 60, 350, 30]", "[100, 40, 20, 350, 60, 30]"))))
                .body();
        for (BodySolution left : new BodySolution[] {store.solve(body, WIDE), kept()}) {
            assertEquals(1, solved.get());
            assertEquals(right.coupling("indoor", "outdoor"), left.coupling("indoor", "outdoor"));
            Place here = right.surface("indoor").at();
            assertEquals(
                    new Place(here.y(), here.x(), here.z()),
                    left.surface("indoor").at());
        }
    }
}
