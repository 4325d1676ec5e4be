package coldseam.conduction.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Environment;
import coldseam.conduction.Section;
import coldseam.conduction.Sketch;
import coldseam.conduction.Symmetry;
import coldseam.conduction.elements.AxisymmetricElements;
import coldseam.conduction.elements.Elements;
import coldseam.conduction.elements.PlanarElements;
import coldseam.conduction.field.MeshField;
import coldseam.conduction.mesh.MeshedSection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is left of the equations, beside the gaps that it is to stand for. */
class ResidualsTest {

    /** K, of the drawings' environments. */
    private static final double DIFFERENCE = 25;

    private final Residuals residuals = new Residuals();
    private MeshedSection drawing;
    private Elements elements;
    private Refinement refinement;
    private double[] ambient;
    private double[] temperature;

    private void draw(Section section) {
        drawing = new MeshedSection(section);
        boolean planar = section.symmetry() == Symmetry.PLANAR;
        double step = drawing.lattice.step();
        elements = planar
                ? new PlanarElements(drawing.mesh, step, drawing.conductivity, drawing.environment, drawing.resistance)
                : new AxisymmetricElements(
                        drawing.mesh, step, drawing.conductivity, drawing.environment, drawing.resistance);
        refinement = new Refinement(
                drawing, drawing.topology(), elements, section.environments().size());
        ambient = section.environments().collectDouble(Environment::temperature).toArray();
    }

    /** Σ of the residuals on the mesh as it is, and of the gaps for a difference of 1 K squared. */
    private double solved(Section section) {
        refinement.solve();
        MeshField field = new MeshField(section, drawing, ambient);
        field.set(refinement.u);
        temperature = field.temperature();
        residuals.compute(drawing, elements.form() != 1, temperature, ambient);
        return residuals.sum();
    }

    private double gaps() {
        double sum = 0;
        for (int t = 0; t < drawing.mesh.triangles; t++) {
            sum += refinement.gap[t];
        }
        return sum / elements.form();
    }

    private static Sketch form(boolean turned, Sketch sketch) {
        return turned ? sketch.axisymmetric() : sketch;
    }

    private static Section layers(boolean turned) {
        return form(
                        turned,
                        Sketch.of("layers").rectangle(0.035, 0, 0, 1000, 100).rectangle(2.3, 0, 100, 1000, 300))
                .environment("indoor", 20, 0.25)
                .environment("outdoor", -5, 0.04)
                .boundary("indoor", 0, 0, 1000, 0)
                .boundary("outdoor", 0, 300, 1000, 300)
                .section();
    }

    /** A slab, or a disc, through the board of a wall. */
    private static Section through(boolean turned) {
        return form(
                        turned,
                        Sketch.of("through")
                                .rectangle(0.035, 100, 0, 1000, 100)
                                .rectangle(2.3, 0, 0, 100, 100)
                                .rectangle(0.6, 0, 100, 1000, 300))
                .environment("indoor", 20, 0.25)
                .environment("outdoor", -5, 0.04)
                .boundary("indoor", 0, 300, 1000, 300)
                .boundary("outdoor", 0, 0, 1000, 0)
                .section();
    }

    /** Through layers heat goes straight: nothing is left but rounding, and of a node moved by 1 K much is. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void nothingIsLeftOfAnExactField(boolean turned) {
        Section section = layers(turned);
        draw(section);
        assertEquals(0, solved(section), 1e-20);
        temperature[drawing.mesh.nodes / 2] += 1;
        residuals.compute(drawing, turned, temperature, ambient);
        assertTrue(residuals.sum() > 1e-3, residuals.sum() + "");
    }

    /**
     * While gaps fall by more than two thousand times from the second mesh on, what they have of the residuals grows by no more than a
     * fifth from one mesh to the next, so that what stands for them later is not too little; and in the end it is 0.08, by
     * what a quadratic field on triangles of our shapes has, in a plane and turned alike.
     */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void residualsFallAsGapsDo(boolean turned) {
        Section section = through(turned);
        draw(section);
        solved(section);
        double first = gaps();
        double last = first;
        double before = Double.POSITIVE_INFINITY;
        double share = 0;
        for (int level = 1; level < 7; level++) {
            refinement.refine(0.2 * refinement.relativeWidth, 100_000);
            double left = solved(section) / (DIFFERENCE * DIFFERENCE);
            last = gaps();
            share = last / left;
            assertTrue(share <= 1.2 * before, share + " after " + before);
            before = share;
        }
        assertTrue(first > 2000 * last, first + " to " + last);
        assertEquals(0.08, share, 0.01);
    }
}
