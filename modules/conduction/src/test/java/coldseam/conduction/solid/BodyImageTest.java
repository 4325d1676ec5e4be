package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.SurfaceTemperature;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.junit.jupiter.api.Test;

/** What is one body but for its names, its boxes and its left and right is solved once, and told of each in its own words. */
class BodyImageTest {

    private static final Accuracy WIDE = new Accuracy(3e-3, 800_000).aimedAt("room", 0.1);

    /** A corner of two unlike walls under a deck, a bar of steel through one of them. */
    private static Blocks right() {
        return Blocks.of("right", -600, -600, -500, 400, 300, 400)
                .cut(BoxSide.X0, BoxSide.Y0, BoxSide.Z0)
                .air("out", -600, -600, -500, 400, 300, 400)
                .solid(0.04, -600, -600, -500, 300, 200, 300)
                .solid(0.8, -600, -600, -500, 100, 150, 150)
                .solid(50, 100, -200, -300, 300, -190, -290)
                .air("room", -600, -600, -500, 0, 0, 0)
                .environment("room", 20, 0.13)
                .environment("out", -5, 0.04);
    }

    /** Its mirror image in x = y, with other names and its boxes in pieces. */
    private static SolidBody left() {
        return Blocks.of("left", -600, -600, -500, 300, 400, 400)
                .cut(BoxSide.X0, BoxSide.Y0, BoxSide.Z0)
                .air("street", -600, -600, -500, 300, 400, 400)
                .solid(0.04, -600, -600, -500, 200, 300, 300)
                .solid(50, -200, 100, -300, -190, 300, -290)
                .solid(0.8, -600, -600, -500, 150, 0, 150)
                .solid(0.8, -600, 0, -500, 150, 100, 150)
                .air("hall", -600, -600, -500, 0, 0, 0)
                .environment("hall", 20, 0.13)
                .environment("street", -5, 0.04)
                .body();
    }

    private static BodySolution solved(SolidBody body, Accuracy accuracy) {
        BodyImage image = BodyImage.of(body);
        return image.of(BodySolver.solve(image.common(), image.common(accuracy)), accuracy);
    }

    @Test
    void aLeftCornerAndItsRightFellowAreOneBody() {
        BodyImage right = BodyImage.of(right().body());
        BodyImage left = BodyImage.of(left());
        assertFalse(right.isItsOwn());
        assertEquals(right.common(), left.common());
        SolidBody otherBar = right().solid(50, 100, -100, -300, 300, -90, -290).body();
        assertNotEquals(right.common(), BodyImage.of(otherBar).common());
    }

    /** To the last digit, each with its own names, places and boxes. */
    @Test
    void bothHaveOneSolution() {
        BodySolution right = solved(right().body(), WIDE);
        BodySolution left = solved(left(), WIDE.aimedAt("hall", 0.1));
        assertEquals(right.coupling("room", "out"), left.coupling("hall", "street"));
        assertEquals(
                right.heatFlows().collect(each -> each.value()),
                left.heatFlows().collect(each -> each.value()));
        SurfaceTemperature<Place> here = right.surface("room");
        SurfaceTemperature<Place> there = left.surface("hall");
        assertEquals(here.lowest(), there.lowest());
        assertEquals(here.at().x(), there.at().y());
        assertEquals(here.at().y(), there.at().x());
        assertEquals(here.at().z(), there.at().z());
        for (Place at : new Place[] {new Place(0.21, -0.19, -0.29), new Place(0.05, 0.12, 0.21)}) {
            double temperature = right.field().temperatureAt(at);
            assertTrue(temperature > -5 && temperature < 20);
            // Of the same values, summed in another order.
            assertEquals(temperature, left.field().temperatureAt(new Place(at.y(), at.x(), at.z())), 1e-12);
        }
        assertEquals(right.field().faces().size(), left.field().faces().size());
        assertTrue(left.heatFlows().getFirst().slopes().isEmpty(), "of what is aimed nobody asks them");
        Accuracy heat = new Accuracy(3e-3, 800_000);
        BodySolution rightHeat = solved(right().body(), heat);
        BodySolution leftHeat = solved(left(), heat);
        for (int e = 0; e < 2; e++) {
            ImmutableDoubleList near = rightHeat.heatFlows().get(e).slopes();
            ImmutableDoubleList far = leftHeat.heatFlows().get(e).slopes();
            assertEquals(near.get(3), far.get(2), 1e-12, "the bar's, summed in another order");
            assertEquals(near.get(2), far.get(3) + far.get(4), 1e-9);
        }
    }

    /** What is solved of the form in common is what would be solved of the body: the cells are the same. */
    @Test
    void isTheBodysOwnSolution() {
        // Of the two the one that is not exchanged, which shows by its extent.
        SolidBody body = BodyImage.of(left()).common().extent().equals(left().extent()) ? left() : right().body();
        Accuracy accuracy = WIDE.aimedAt(body.environments().getFirst().name(), 0.1);
        BodySolution own = BodySolver.solve(body, accuracy);
        BodySolution image = solved(body, accuracy);
        assertEquals(own.couplings(), image.couplings());
        assertEquals(own.surfaces(), image.surfaces());
        assertEquals(own.field().faces(), image.field().faces());
        assertEquals(own.notes(), image.notes());
    }

    @Test
    void whatIsAskedAtAPlaceIsItsOwn() {
        SolidBody probed = right().probe("here", -0.3, 0.1, -0.2).body();
        assertTrue(BodyImage.of(probed).isItsOwn());
        assertSame(probed, BodyImage.of(probed).common());
        SolidBody faulty = Blocks.of("nothing", 0, 0, 0, 100, 100, 100).body();
        assertSame(faulty, BodyImage.of(faulty).common());
    }
}
