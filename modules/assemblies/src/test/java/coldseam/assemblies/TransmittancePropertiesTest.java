package coldseam.assemblies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.eclipse.collections.impl.factory.Lists;

class TransmittancePropertiesTest {

    /** Round-off of a few hundred operations. */
    private static final double ROUND_OFF = 1e-11;

    private static Transmittance of(Assembly assembly) {
        return Transmittance.of(assembly, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS);
    }

    @Property(tries = 300, seed = "2026")
    void theTotalLiesBetweenItsLimits(@ForAll("assemblies") Assembly assembly) {
        Transmittance u = of(assembly);
        assertTrue(u.upperLimit() >= u.total() - ROUND_OFF, () -> "R'T " + u.upperLimit() + ", RT " + u.total());
        assertTrue(u.total() >= u.lowerLimit() - ROUND_OFF, () -> "RT " + u.total() + ", R''T " + u.lowerLimit());
        assertEquals((u.upperLimit() - u.lowerLimit()) / (2 * u.total()), u.relativeError(), ROUND_OFF);
    }

    @Property(tries = 300, seed = "2026")
    void moreInsulationNeverRaisesTheTransmittance(
            @ForAll("assemblies") Assembly assembly, @ForAll("layers") Layer more) {
        Assembly thicker = Build.assembly(assembly.layers().newWith(more).toArray(new Layer[0]));
        assertTrue(of(thicker).uncorrected() <= of(assembly).uncorrected() + ROUND_OFF);
    }

    @Property(tries = 300, seed = "2026")
    void theOrderOfTheLayersDoesNotMatter(@ForAll("assemblies") Assembly assembly) {
        Assembly turned = Build.assembly(assembly.layers().toReversed().toArray(new Layer[0]));
        assertEquals(of(assembly).total(), of(turned).total(), ROUND_OFF);
    }

    @Property(tries = 300, seed = "2026")
    void framingAsGoodAsTheFillChangesNothing(@ForAll("assemblies") Assembly assembly) {
        Assembly plain = Build.assembly(assembly.layers()
                .collect(layer -> Build.layer(
                        layer.role(),
                        "fill",
                        layer.thickness() * 1000,
                        layer.material().conductivity()))
                .toArray(new Layer[0]));
        Assembly framed = Build.assembly(plain.layers()
                .collect(layer -> Build.framed(layer, layer.material().conductivity(), 0.3))
                .toArray(new Layer[0]));
        assertEquals(of(plain).total(), of(framed).total(), ROUND_OFF);
    }

    @Property(tries = 300, seed = "2026")
    void theEquivalentStackHasTheAssemblysTransmittance(@ForAll("assemblies") Assembly assembly) {
        EquivalentLayers stack = EquivalentLayers.of(assembly, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS);
        double resistance = stack.carrying().sumOfDouble(EquivalentLayer::resistance)
                + stack.interiorSurfaceResistance()
                + stack.exteriorSurfaceResistance();
        assertEquals(of(assembly).total(), resistance, ROUND_OFF * resistance);
    }

    @Property(tries = 200, seed = "2026")
    void aTaperIsTheMeanOverItsField(
            @ForAll("shapes") Layer.Taper.Shape shape,
            @ForAll("resistances") double rest,
            @ForAll("resistances") double greatest) {
        // Midpoint rule over the height t of the field, weighted with how much of the field lies there.
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) / steps;
            double weight = switch (shape) {
                case RECTANGLE -> 1;
                case TRIANGLE_THICKEST_AT_APEX -> 2 * (1 - t);
                case TRIANGLE_THINNEST_AT_APEX -> 2 * t;
            };
            sum += weight / (rest + greatest * t) / steps;
        }
        // The midpoint rule's own error: (1/24)·h²·max f'' with f'' up to (2x² + 4x + 2)/R0, x = R2/R0.
        double x = greatest / rest;
        double error = 1.0 / 24 / steps / steps * (2 * x * x + 4 * x + 2) * 2 / rest + 1e-12;
        assertEquals(sum, TaperedLayers.transmittance(shape, rest, greatest), error);
    }

    @Property(tries = 200, seed = "2026")
    void aThinTaperIsNoTaper(@ForAll("shapes") Layer.Taper.Shape shape, @ForAll("resistances") double rest) {
        // Around the change from series to closed form.
        for (double x : new double[] {0, 1e-9, 0.999e-5, 1.001e-5, 1e-4}) {
            double mean = TaperedLayers.meanShare(shape) * x;
            // U = (1 − mean + O(x²))/R0; the closed form loses up to round-off over x² to cancellation.
            double slack = x * x + (x > 1e-5 ? 4e-16 / x / x : 1e-15);
            assertEquals((1 - mean) / rest, TaperedLayers.transmittance(shape, rest, x * rest), slack / rest);
        }
    }

    @Property(tries = 60, seed = "2026")
    void aTriangleIsTheMeanOverItsField(
            @ForAll("resistances") double rest, @ForAll("resistances") double one, @ForAll("resistances") double more) {
        double two = one + more;
        // The resistance is linear over the triangle with 0, R1, R2 at its corners; midpoints of a fine barycentric
        // grid.
        int n = 300;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n - i; j++) {
                sum += 1 / (rest + ((i + 1.0 / 3) * one + (j + 1.0 / 3) * two) / n);
                if (j < n - i - 1) {
                    sum += 1 / (rest + ((i + 2.0 / 3) * one + (j + 2.0 / 3) * two) / n);
                }
            }
        }
        double mean = sum / n / n;
        // The rule's error falls with 1/n² and the square of R2/R0 over 18.
        double error = Math.pow(two / rest / n, 2) / rest;
        assertEquals(mean, TaperedTriangle.transmittance(rest, one, two), error + 1e-12);
    }

    @Provide
    Arbitrary<Layer.Taper.Shape> shapes() {
        return Arbitraries.of(Layer.Taper.Shape.class);
    }

    @Provide
    Arbitrary<Double> resistances() {
        return Arbitraries.doubles().between(0.1, 10).ofScale(6);
    }

    @Provide
    Arbitrary<Layer> layers() {
        Arbitrary<Double> millimetres = Arbitraries.doubles().between(5, 400).ofScale(1);
        Arbitrary<Double> conductivities =
                Arbitraries.doubles().between(0.02, 2.5).ofScale(3);
        Arbitrary<Double> shares = Arbitraries.doubles().between(0.01, 0.5).ofScale(2);
        return Combinators.combine(millimetres, conductivities, conductivities, shares, Arbitraries.of(true, false))
                .as((mm, fill, frame, share, framed) -> {
                    Layer plain = Build.layer(Role.STRUCTURE, "fill", mm, fill);
                    return framed ? Build.framed(plain, frame, share) : plain;
                });
    }

    @Provide
    Arbitrary<Assembly> assemblies() {
        return layers().list()
                .ofMinSize(1)
                .ofMaxSize(6)
                .map(layers -> Build.assembly(Lists.mutable.withAll(layers).toArray(new Layer[0])));
    }
}
