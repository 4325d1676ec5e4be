package coldseam.junctions.atlas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionMeasures;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Measuring;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.store.KeptFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sweeps of one kind, coarsely. */
@Tag("slow")
class AtlasTest {

    private static final Accuracy COARSE = new Accuracy(3e-3, 60_000);

    private static final ImmutableList<Double> METRIC = Sweep.thicknesses(UnitSystem.SI);

    private static ImmutableList<Detail> usual(JunctionKind kind) {
        return CatalogueFile.builtIn().options(kind).select(TypicalSetups::usual);
    }

    private static ImmutableList<Sweep> sweeps(JunctionKind kind) {
        return Sweep.of(TypicalBuild.MASONRY.setup(kind), "");
    }

    @Test
    void bothSurfacesChangeTogetherWhereTheyAreOneBuildUp() {
        assertEquals(
                Lists.immutable.of(Sweep.Which.BOTH),
                sweeps(JunctionKind.OUTSIDE_CORNER).collect(Sweep::which));
        assertEquals(
                Lists.immutable.of(Sweep.Which.FIRST, Sweep.Which.SECOND),
                sweeps(JunctionKind.SLAB_EDGE).collect(Sweep::which));
        // An old slab has boards on top, which may be made thicker as the wall's may.
        assertEquals(
                Lists.immutable.of(Sweep.Which.FIRST, Sweep.Which.SECOND),
                sweeps(JunctionKind.of("existing slab edge")).collect(Sweep::which));
    }

    @Test
    void everyThicknessIsComputedOrSaysWhyNot(@TempDir Path folder) throws Exception {
        Catalogue catalogue = CatalogueFile.builtIn();
        Measuring measuring = BridgeComputers.measuring(COARSE, KeptFolder.in(folder));
        MutableList<String> heard = Lists.mutable.empty();
        ImmutableList<AtlasCurve> curves = Atlas.compute(
                sweeps(JunctionKind.INTERMEDIATE_FLOOR),
                METRIC,
                setup -> usual(setup.kind()),
                measuring,
                (done, of) -> heard.add(done + "/" + of));
        assertEquals(usual(JunctionKind.INTERMEDIATE_FLOOR), curves.collect(AtlasCurve::detail));
        int points = curves.size() * METRIC.size();
        assertEquals("0/" + points, heard.getFirst());
        assertEquals(points + "/" + points, heard.getLast());
        for (AtlasCurve curve : curves) {
            assertEquals(METRIC, curve.points().collect(AtlasCurve.AtlasPoint::thickness));
            for (AtlasCurve.AtlasPoint point : curve.points()) {
                assertEquals(
                        point.measures().isEmpty(),
                        point.reasons().notEmpty(),
                        curve.detail().id());
            }
            assertTrue(
                    curve.points().count(point -> point.measures().isPresent()) >= 4,
                    curve.detail().id());
        }
        // A slab run out to the face is longer, and so loses less, in a thicker wall.
        AtlasCurve worst = curves.getFirst();
        assertTrue(psi(worst, 6) < psi(worst, 1), psi(worst, 1) + " then " + psi(worst, 6));

        // Asked again, everything is read back: not one new file, and the same table.
        long before = files(folder);
        ImmutableList<AtlasCurve> again = Atlas.compute(
                sweeps(JunctionKind.INTERMEDIATE_FLOOR),
                METRIC,
                setup -> usual(setup.kind()),
                BridgeComputers.measuring(COARSE, KeptFolder.in(folder)),
                (done, of) -> {});
        assertEquals(AtlasCsv.write(curves, UnitSystem.SI), AtlasCsv.write(again, UnitSystem.SI));
        assertTrue(before > 0);
        assertEquals(before, files(folder));
        assertEquals(points + 2, AtlasCsv.write(curves, UnitSystem.SI).split("\r\n", -1).length);
    }

    /** What is left out of measuring changes none of it; the whole result is worked out beside it. */
    @Test
    void measuresAreThoseOfTheWholeResult() {
        Detail detail = usual(JunctionKind.OUTSIDE_CORNER).getFirst();
        JunctionSetup setup = TypicalBuild.MASONRY.setup(detail);
        JunctionResult whole = BridgeComputers.computer(COARSE).compute(detail, setup);
        JunctionMeasures measures = BridgeComputers.measuring(COARSE, Conduction::solve, WeakestPaths::of)
                .measure(detail, setup);
        assertEquals(
                new JunctionMeasures(
                        detail.id(),
                        whole.psiExternal(),
                        whole.psiInternal(),
                        whole.temperatureFactor(),
                        whole.penLine(),
                        whole.weakestPath(),
                        whole.solution().outcome()),
                measures);
    }

    /** Both sweeps of a junction come by the thicknesses that it has: what is equal is measured once. */
    @Test
    void equalQuestionsAreMeasuredOnce() {
        Detail detail = usual(JunctionKind.INTERMEDIATE_FLOOR).getFirst();
        JunctionSetup setup = TypicalBuild.MASONRY.setup(detail);
        AtomicInteger solved = new AtomicInteger();
        Measuring measuring = BridgeComputers.measuring(
                COARSE,
                (section, accuracy) -> {
                    solved.incrementAndGet();
                    return Conduction.solve(section, accuracy);
                },
                WeakestPaths::of);
        assertEquals(
                measuring.measure(detail, setup),
                measuring.measure(detail, setup.between(setup.first(), setup.second())));
        assertEquals(2, solved.get());
    }

    @Test
    void inchesAreWholeAndReachSixteen() {
        ImmutableList<Double> steps = Sweep.thicknesses(UnitSystem.US);
        assertEquals(0, steps.getFirst());
        assertEquals(16, steps.getLast() / 0.0254, 1e-12);
        steps.forEach(step -> assertEquals(Math.rint(step / 0.0254), step / 0.0254, 1e-12));
        assertEquals(0.4, METRIC.getLast());
    }

    @Test
    void theTableIsInTheUnitsOfItsHead() {
        ImmutableList<AtlasCurve> curves = Atlas.compute(
                sweeps(JunctionKind.OUTSIDE_CORNER),
                Sweep.thicknesses(UnitSystem.US),
                setup -> usual(setup.kind()),
                BridgeComputers.measuring(COARSE, Conduction::solve, WeakestPaths::of),
                (done, of) -> {});
        String[] inches = AtlasCsv.write(curves, UnitSystem.US).split("\r\n");
        String[] metric = AtlasCsv.write(curves, UnitSystem.SI).split("\r\n");
        String[] head = inches[0].split(",");
        assertEquals("insulation in", head[9]);
        assertEquals("psi external lower Btu/(h·ft·°F)", head[10]);
        assertEquals("neck in", head[17]);
        // The first option at its thickest: no name in its row holds a comma.
        String[] us = inches[7].split(",", -1);
        String[] si = metric[7].split(",", -1);
        assertEquals(head.length, us.length);
        assertEquals("16", us[9]);
        assertEquals("406", si[9]);
        // 1 W/(m·K) = 0.577789 Btu/(h·ft·°F): Btu = 1055.05585262 J, ft = 0.3048 m, exact by definition.
        assertEquals(0.577789 * Double.parseDouble(si[10]), Double.parseDouble(us[10]), 2e-6);
        assertEquals(Double.parseDouble(si[17]) / 25.4, Double.parseDouble(us[17]), 6e-3);
    }

    /** What is printed holds what is proven. */
    @Test
    void boundsAreRoundedOutwards() {
        ImmutableList<AtlasCurve> curves = Atlas.compute(
                sweeps(JunctionKind.OUTSIDE_CORNER),
                METRIC.take(4),
                setup -> usual(setup.kind()),
                BridgeComputers.measuring(COARSE, Conduction::solve, WeakestPaths::of),
                (done, of) -> {});
        String[] rows = AtlasCsv.write(curves, UnitSystem.SI).split("\r\n");
        int row = 1;
        for (AtlasCurve curve : curves) {
            for (AtlasCurve.AtlasPoint point : curve.points()) {
                String[] cells = rows[row++].split(",", -1);
                point.measures().ifPresent(measures -> {
                    assertHolds(measures.psiExternal(), cells[10], cells[11]);
                    assertHolds(measures.psiInternal(), cells[12], cells[13]);
                });
            }
        }
    }

    private static void assertHolds(Interval proven, String lower, String upper) {
        double below = proven.lower() - Double.parseDouble(lower);
        double above = Double.parseDouble(upper) - proven.upper();
        assertTrue(
                below >= 0 && below <= 1e-6 && above >= 0 && above <= 1e-6,
                () -> proven + " as " + lower + ", " + upper);
    }

    private static double psi(AtlasCurve curve, int thickness) {
        return curve.points()
                .get(thickness)
                .measures()
                .orElseThrow()
                .psiExternal()
                .middle();
    }

    private static long files(Path folder) throws Exception {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).count();
        }
    }
}
