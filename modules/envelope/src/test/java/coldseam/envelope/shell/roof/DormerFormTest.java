package coldseam.envelope.shell.roof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.plan.Plan;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/**
 * A dormer 2 m wide on a slope of 45° over a side of 10 m from (1, 2) towards (9, 8): 0.5 m behind the wall, 1.2 m over the slope
 * there, so that its own eaves lie 1.7 m over the roof's. The shed rises with 14.04° (1 in 4), the gabled with 26.57° (1 in 2).
 */
class DormerFormTest {

    private static final double ROUND_OFF = 1e-9;

    private static final Point2 FROM = new Point2(1, 2);
    private static final Point2 TO = new Point2(9, 8);

    private static DormerForm form(
            boolean gabled, OptionalDouble left, double offMiddle, double setBack, double pitch) {
        return new DormerForm(
                new Body.Dormer("d", 0, gabled, left, offMiddle, 2, setBack, 1.2, pitch, "wall", "roof"), FROM, TO, 1);
    }

    private static final double QUARTER = Math.toDegrees(Math.atan(0.25));
    private static final double HALF = Math.toDegrees(Math.atan(0.5));

    private static final DormerForm SHED = form(false, OptionalDouble.empty(), 0, 0.5, QUARTER);
    private static final DormerForm GABLED = form(true, OptionalDouble.of(4), 7, 0.5, HALF);

    /** A point of the plan: u along the side, v inwards of it. */
    private static Point2 at(double u, double v) {
        return new Point2(1 + 0.8 * u - 0.6 * v, 2 + 0.6 * u + 0.8 * v);
    }

    /** It ends where 1.7 + (v − 0.5)/4 is v: 2.1 m behind the wall. */
    private static final double SHED_ENDS = 2.1;

    @Test
    void whereItStandsInPlan() {
        // In the middle unless it is said otherwise; an offset counts from there, a place from the left end.
        assertTrue(SHED.covers(at(4.001, 1)) && SHED.covers(at(5.999, 1)));
        assertFalse(SHED.covers(at(3.999, 1)) || SHED.covers(at(6.001, 1)));
        DormerForm right = form(false, OptionalDouble.empty(), 1.5, 0.5, QUARTER);
        assertTrue(right.covers(at(5.501, 1)) && right.covers(at(7.499, 1)) && !right.covers(at(5.499, 1)));
        DormerForm left = form(false, OptionalDouble.of(0.5), 1.5, 0.5, QUARTER);
        assertTrue(left.covers(at(0.501, 1)) && left.covers(at(2.499, 1)) && !left.covers(at(2.501, 1)));
        assertTrue(SHED.covers(at(5, 0.501)) && SHED.covers(at(5, SHED_ENDS - 0.001)));
        assertFalse(SHED.covers(at(5, 0.499)) || SHED.covers(at(5, SHED_ENDS + 0.001)));
        // The gabled one's eaves meet the slope at 1.7 m, its ridge, half a metre higher, at 2.2 m.
        assertTrue(GABLED.covers(at(4.01, 1.69)) && GABLED.covers(at(5, 2.199)) && GABLED.covers(at(4.5, 1.94)));
        assertFalse(GABLED.covers(at(4.01, 1.72)) || GABLED.covers(at(5, 2.201)) || GABLED.covers(at(4.5, 1.96)));
    }

    @Test
    void itsPlanesOverThePlan() {
        assertEquals(1.7, SHED.height(0, at(5, 0.5)), ROUND_OFF);
        assertEquals(1.7 + 0.25, SHED.height(0, at(4.3, 1.5)), ROUND_OFF);
        assertEquals(SHED.under(at(5, SHED_ENDS)), SHED.height(0, at(5, SHED_ENDS)), ROUND_OFF);
        assertEquals(1.5, SHED.under(at(3, 1.5)), ROUND_OFF);
        assertEquals(0, SHED.plane(at(4.5, 1)) + SHED.plane(at(5.5, 1)));
        assertEquals(0, GABLED.plane(at(4.9, 1)));
        assertEquals(1, GABLED.plane(at(5.1, 1)));
        assertEquals(1.7 + 0.25, GABLED.height(0, at(4.5, 1)), ROUND_OFF);
        assertEquals(1.7 + 0.25, GABLED.height(1, at(5.5, 2)), ROUND_OFF);
        assertEquals(2.2, GABLED.height(0, at(5, 1)), ROUND_OFF);
        assertEquals(2.2, GABLED.height(1, at(5, 1)), ROUND_OFF);
    }

    @Test
    void itsFrontLooksOutOfTheRoof() {
        // Outwards of the side is to the south-east.
        assertTrue(SHED.faces(new Point3(0.6, -0.8, 0)));
        assertFalse(SHED.faces(new Point3(-0.6, 0.8, 0)));
        assertFalse(SHED.faces(new Point3(0.8, 0.6, 0)));
        assertFalse(SHED.faces(new Point3(-0.8, -0.6, 0)));
        assertTrue(SHED.infront(at(4.001, 0.5)) && SHED.infront(at(5.999, 0.5)) && SHED.infront(at(5, 0.509)));
        assertFalse(SHED.infront(at(3.99, 0.5)) || SHED.infront(at(6.01, 0.5)) || SHED.infront(at(5, 0.511)));
        assertFalse(SHED.infront(at(5, 0.489)));
    }

    private static double area(ImmutableList<Polygon> parts) {
        return parts.sumOfDouble(Polygon::getArea);
    }

    @Test
    void itsPartsCoverWhatItDoes() {
        assertEquals(2 * (SHED_ENDS - 0.5), area(SHED.parts()), ROUND_OFF);
        assertEquals(1, SHED.parts().size());
        assertEquals(2, GABLED.parts().size());
        assertEquals(2 * 1.2 + 2 * 0.5 / 2, area(GABLED.parts()), ROUND_OFF);
        for (int plane = 0; plane < 2; plane++) {
            Polygon part = GABLED.parts().get(plane);
            assertEquals(1.45, part.getArea(), ROUND_OFF);
            assertTrue(part.covers(Plan.point(at(plane == 0 ? 4.5 : 5.5, 1))));
        }
    }

    private static void assertInItsPlanes(DormerForm form, DormerForm.Edge edge) {
        for (boolean first : new boolean[] {true, false}) {
            Point2 end = first ? edge.line().from() : edge.line().to();
            double height = first ? edge.line().fromHeight() : edge.line().toHeight();
            double own = Math.min(form.height(0, end), form.dormer().gabled() ? form.height(1, end) : 1e9);
            assertEquals(own, height, ROUND_OFF, edge.toString());
            assertTrue(height >= form.under(end) - ROUND_OFF);
        }
    }

    /** Every line's ends lie on a plane of its own, and where it meets the slope on that, too. */
    @Test
    void itsLinesLieInItsPlanes() {
        for (DormerForm form : new DormerForm[] {SHED, GABLED}) {
            double length = 0;
            for (DormerForm.Edge edge : form.edges()) {
                assertInItsPlanes(form, edge);
                length += Math.hypot(
                        edge.line().to().x() - edge.line().from().x(),
                        edge.line().to().y() - edge.line().from().y());
                assertEquals(-1, edge.line().upright());
            }
            double gabled = 2 * 1.2 + 2 + 1.7 + 2 * Math.hypot(1, 0.5);
            assertEquals(form == SHED ? 2 * (SHED_ENDS - 0.5) + 2 + 2 : gabled, length, ROUND_OFF);
        }
        assertEquals(2, SHED.edges().count(each -> each.kind() == DormerForm.Kind.CHEEK));
        assertEquals(1, SHED.edges().count(each -> each.kind() == DormerForm.Kind.FRONT));
        assertEquals(2, GABLED.edges().count(each -> each.kind() == DormerForm.Kind.FRONT));
        assertEquals(3, GABLED.edges().count(each -> each.kind() == DormerForm.Kind.MEETING));
    }

    /** By a level the section is wider by what lies under it beyond the slope's own line, counted in squares of 20 mm. */
    @Test
    void itWidensALevelSection() {
        double square = 0.02;
        for (DormerForm form : new DormerForm[] {SHED, GABLED, form(true, OptionalDouble.of(4), 0, 0, HALF)}) {
            for (double height : new double[] {0.2, 0.6, 1.1, 1.69, 1.75, 1.9, 2.05, 2.15, 2.4}) {
                double sum = 0;
                for (double u = 4 + square / 2; u < 6; u += square) {
                    for (double v = form.dormer().setBack() + square / 2; v < 2.5; v += square) {
                        Point2 p = at(u, v);
                        double own = form.height(form.plane(p), p);
                        if (v < height && own > v && own > height) {
                            sum += square * square;
                        }
                    }
                }
                assertEquals(sum, form.widens(height), 0.03, form.dormer() + " at " + height);
            }
        }
    }

    /** From its foot to its top there is one formula between any two of its levels' neighbours. */
    @Test
    void itsLevelsLieBetweenItsHeights() {
        assertEquals(
                Lists.immutable
                        .of(1.1, (2 * 1.7 + 2.1) / 3, (1.7 + 2 * 2.1) / 3)
                        .collect(each -> Math.rint(each * 1e9)),
                SHED.levels().collect(each -> Math.rint(each * 1e9)));
        assertEquals(
                Lists.immutable
                        .of(1.1, (2 * 1.7 + 2.2) / 3, (1.7 + 2 * 2.2) / 3)
                        .collect(each -> Math.rint(each * 1e9)),
                GABLED.levels().collect(each -> Math.rint(each * 1e9)));
    }

    private static Polygon slope(double deep) {
        return Plan.outline(Lists.immutable.of(at(0, 0), at(10, 0), at(10 - deep, deep), at(deep, deep)));
    }

    /** Beside its left cheek the slope is parted down to the eaves and up to its end, so that it has no hole. */
    @Test
    void theSlopeIsPartedBesideIt() {
        ImmutableList<DormerForm.Edge> cuts = SHED.cuts(slope(3));
        assertEquals(2, cuts.size());
        assertLine(cuts.get(0), at(4, 0), at(4, 0.5), 0, 0.5);
        assertLine(cuts.get(1), at(4, SHED_ENDS), at(4, 3), SHED_ENDS, 3);
        assertEquals(
                Lists.immutable.empty(),
                form(false, OptionalDouble.empty(), 0, 0, QUARTER).cuts(slope(3)));
    }

    private static void assertLine(DormerForm.Edge edge, Point2 from, Point2 to, double low, double high) {
        assertEquals(DormerForm.Kind.CUT, edge.kind());
        assertEquals(from.x(), edge.line().from().x(), ROUND_OFF);
        assertEquals(from.y(), edge.line().from().y(), ROUND_OFF);
        assertEquals(to.x(), edge.line().to().x(), ROUND_OFF);
        assertEquals(to.y(), edge.line().to().y(), ROUND_OFF);
        assertEquals(low, edge.line().fromHeight(), ROUND_OFF);
        assertEquals(high, edge.line().toHeight(), ROUND_OFF);
    }

    @Test
    void itStandsOnItsSlopeAlone() {
        assertEquals(Optional.empty(), SHED.misfit(slope(3)));
        assertEquals(Optional.empty(), GABLED.misfit(slope(3)));
        String deep = SHED.misfit(slope(1.9)).orElseThrow();
        assertTrue(
                deep.startsWith(
                        "it would reach from 4.000 m to 6.000 m from the left end of a side 10.000 m long and from 0.500 m to"
                                + " 2.100 m behind its outer face, where its roof meets the slope; "),
                deep);
        // 2 m by 0.2 m, and a hair all round of three sides.
        assertTrue(deep.contains(" slope, which ends 1.900 m behind that face there. Make it"), deep);
        assertTrue(deep.contains("0.42") && deep.contains(" m² of that is no part of the slope"), deep);
        assertTrue(GABLED.misfit(slope(2.1)).orElseThrow().contains("0.500 m to 2.200 m behind"));
        // At the eaves its front may stand in the wall's face, at the side's end it may not.
        assertEquals(
                Optional.empty(),
                form(false, OptionalDouble.of(4), 0, 0, QUARTER).misfit(slope(3)));
        assertTrue(form(false, OptionalDouble.of(8), 0, 0.5, QUARTER)
                .misfit(slope(3))
                .isPresent());
        assertEquals(
                Optional.empty(),
                form(false, OptionalDouble.empty(), 0, 0.5, 44)
                        .misfit(slope(3))
                        .filter(why -> why.contains("never meets")));
        assertEquals(
                "its pitch is 44.1°; that of a shed may be 44.0° at most, or it never meets the roof under it, of 45.0°. Lower the"
                        + " pitch, or make it gabled",
                form(false, OptionalDouble.empty(), 0, 0.5, 44.1)
                        .misfit(slope(3))
                        .orElseThrow());
        assertEquals(
                Optional.empty(), form(true, OptionalDouble.empty(), 0, 0.5, 50).misfit(slope(4)));
    }

    /** A hair apart they do not meet. */
    @Test
    void twoComeNoCloserThanAHair() {
        assertTrue(SHED.meets(form(true, OptionalDouble.of(6.009), 0, 0.5, HALF)));
        assertFalse(SHED.meets(form(true, OptionalDouble.of(6.011), 0, 0.5, HALF)));
        assertTrue(SHED.meets(form(true, OptionalDouble.of(5), 0, 0.5, HALF)));
    }

    /** On a slope of two in one, 0.5 m behind the wall is 1 m over the eaves: it ends where 2.2 + (v - 0.5)/4 is 2 v. */
    @Test
    void onASteeperSlopeItEndsSooner() {
        DormerForm steep = new DormerForm(SHED.dormer(), FROM, TO, 2);
        double ends = (2.2 - 0.125) / 1.75;
        assertEquals(2.2 + 0.25, steep.height(0, at(5, 1.5)), ROUND_OFF);
        assertEquals(3, steep.under(at(3, 1.5)), ROUND_OFF);
        assertEquals(2 * (ends - 0.5), area(steep.parts()), ROUND_OFF);
        assertLine(steep.cuts(slope(3)).get(0), at(4, 0), at(4, 0.5), 0, 1);
        assertLine(steep.cuts(slope(3)).get(1), at(4, ends), at(4, 3), 2 * ends, 6);
        assertEquals((1 + 2.2) / 2, steep.levels().getFirst(), ROUND_OFF);
        assertEquals((2 * 2.2 + 2 * ends) / 3, steep.levels().get(1), ROUND_OFF);
        assertEquals(2 * (2 / 2.0 - 0.5), steep.widens(2), ROUND_OFF);
        DormerForm gabled = new DormerForm(GABLED.dormer(), FROM, TO, 2);
        // Its cheeks end 1.1 m behind the wall, its ridge, half a metre higher, 1.35 m.
        assertEquals(2 * 0.6 + 2 * 0.25 / 2, area(gabled.parts()), ROUND_OFF);
        for (DormerForm form : new DormerForm[] {steep, gabled}) {
            for (DormerForm.Edge edge : form.edges()) {
                assertInItsPlanes(form, edge);
            }
        }
    }
}
