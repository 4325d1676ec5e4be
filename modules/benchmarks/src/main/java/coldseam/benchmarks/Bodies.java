package coldseam.benchmarks;

import coldseam.conduction.solid.Body;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.Box;
import coldseam.conduction.solid.Painted;
import coldseam.conduction.solid.Side;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/** Four bodies that are timed: those of {@code fixtures/sections} of the same names. */
final class Bodies {

    private Bodies() {}

    static ImmutableList<Body> all() {
        return Lists.immutable.of(corner(), slab(), bracket(), case4());
    }

    private static Body corner() {
        return body(
                "corner-of-two-walls-and-roof",
                box(0, 0, 0, 1580, 1580, 1600),
                Lists.immutable.of(Side.X1, Side.Y1, Side.Z0),
                air("outdoor", -10, -10, 0, 1580, 1580, 1610),
                solid(0.035, 0, 0, 0, 1580, 1580, 1600),
                solid(0.8, 200, 200, 0, 1580, 1580, 1200),
                solid(2.3, 200, 200, 1200, 1580, 1580, 1350),
                air("indoor", 380, 380, 0, 1580, 1580, 1200));
    }

    private static Body slab() {
        return body(
                "corner-with-slab-run-out",
                box(0, 0, 0, 1580, 1580, 1600),
                Lists.immutable.of(Side.X1, Side.Y1, Side.Z0),
                air("outdoor", -10, -10, 0, 1580, 1580, 1610),
                solid(0.035, 0, 0, 0, 1580, 1580, 1600),
                solid(0.8, 200, 200, 0, 1580, 1580, 1200),
                solid(2.3, 0, 0, 1200, 1580, 1580, 1350),
                air("indoor", 380, 380, 0, 1580, 1580, 1200));
    }

    private static Body bracket() {
        return body(
                "bracket-through-insulation",
                box(0, 0, 0, 500, 500, 480),
                Lists.immutable.of(Side.X0, Side.X1, Side.Y0, Side.Y1),
                air("indoor", 0, 0, -10, 500, 500, 0),
                air("outdoor", 0, 0, 380, 500, 500, 490),
                solid(2.3, 0, 0, 0, 500, 500, 180),
                solid(0.035, 0, 0, 180, 500, 500, 380),
                solid(50, 0, 0, 180, 5, 25, 480));
    }

    private static Body case4() {
        return body(
                "iso-10211-case-4",
                box(0, 0, 0, 500, 500, 600),
                Lists.immutable.of(Side.X0, Side.X1, Side.Y0, Side.Y1),
                air("outdoor", 0, 0, -10, 500, 500, 0),
                air("indoor", 0, 0, 200, 500, 500, 700),
                solid(0.1, 0, 0, 0, 500, 500, 200),
                solid(50, 0, 0, 0, 50, 25, 600));
    }

    private static Body body(String name, Box extent, ImmutableList<Side> cuts, Painted... painted) {
        MutableList<Painted> all = Lists.mutable.of(painted);
        boolean bar = name.startsWith("iso");
        return new Body(
                name,
                extent,
                1,
                Sets.immutable.withAll(cuts),
                all.toImmutable(),
                Lists.immutable.of(
                        BodyEnvironment.of("indoor", 1, bar ? 0.1 : 0.13),
                        BodyEnvironment.of("outdoor", 0, bar ? 0.1 : 0.04)),
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    private static Painted solid(double conductivity, double... mm) {
        return new Painted.Solid("" + conductivity, conductivity, box(mm));
    }

    private static Painted air(String environment, double... mm) {
        return new Painted.Air(environment, box(mm));
    }

    private static Box box(double... mm) {
        return Box.of(mm[0] / 1000, mm[1] / 1000, mm[2] / 1000, mm[3] / 1000, mm[4] / 1000, mm[5] / 1000);
    }
}
