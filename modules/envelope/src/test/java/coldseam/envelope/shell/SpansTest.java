package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Body;
import coldseam.envelope.Vectors;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** How far surfaces reach, along the axes, where a side may tell it, and aslant, where it is searched for. */
class SpansTest {

    /** m, to which a circle's centre is searched for, twice, since a diameter is told. */
    private static final double CLOSE = 0.02;

    private static ImmutableList<Double> across(Body.Storeys body, double degrees) {
        return ShellBuilder.build(Houses.house(AnyAngleTest.turned(body, degrees)))
                .surfaces()
                .collect(Spans::across);
    }

    /** Rectangles, upright and aslant, gables, and a floor with a corner left out. */
    @Test
    void theyReachAsFarHoweverTheHouseIsTurned() {
        ImmutableList<Body.Storeys> bodies = Lists.immutable.of(
                Houses.body(
                        Houses.roof(Body.Roof.Form.GABLE, 35, 0, false),
                        Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall")),
                Houses.body(
                        Houses.flat(),
                        Houses.storey("ground floor", Houses.points(0, 0, 10, 0, 10, 5, 6, 5, 6, 9, 0, 9), 3, "wall")));
        bodies.forEach(body -> across(body, 0)
                .zip(across(body, 25))
                .forEach(pair -> assertEquals(pair.getTwo(), pair.getOne(), CLOSE)));
    }

    /** Between inner faces, of walls as well as of the floor. */
    @Test
    void aRectanglesIsItsShorterSide() {
        Shell box = ShellBuilder.build(Houses.house(
                Houses.body(Houses.flat(), Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"))));
        box.surfaces().forEach(surface -> {
            double most = surface.innerOutline()
                    .zip(surface.innerOutline().drop(1))
                    .collectDouble(side -> Vectors.length(Vectors.minus(side.getTwo(), side.getOne())))
                    .min();
            assertEquals(most, Spans.across(surface), 1e-9);
        });
    }
}
