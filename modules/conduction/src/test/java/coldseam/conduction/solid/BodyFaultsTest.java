package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.SectionException;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Bodies that must be refused, and what they are told. */
class BodyFaultsTest {

    private static Blocks wall() {
        return Blocks.of("wall", 0, 0, 0, 1000, 1000, 300)
                .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                .air("indoor", 0, 0, -10, 1000, 1000, 0)
                .air("outdoor", 0, 0, 300, 1000, 1000, 310)
                .solid(0.035, 0, 0, 0, 1000, 1000, 300)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", -5, 0.04);
    }

    private static ImmutableList<String> faults(Blocks blocks) {
        return assertThrows(SectionException.class, () -> blocks.solve(0.1)).faults();
    }

    private static void only(String expected, Blocks blocks) {
        assertEquals(expected, faults(blocks).makeString("\n"));
    }

    @Test
    void anExposedFaceIsNotSilentlyAdiabatic() {
        only(
                "the z1 face of box 3 (material 0.035) at z = 0.3 m, from (0.5, 0, 0.3) m to (1, 1, 0.3) m, faces"
                        + " nothing; paint air of an environment or an adiabatic box there, or name the face among the"
                        + " cut-planes",
                Blocks.of("wall", 0, 0, 0, 1000, 1000, 300)
                        .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                        .air("indoor", 0, 0, -10, 1000, 1000, 0)
                        .air("outdoor", 0, 0, 300, 500, 1000, 310)
                        .solid(0.035, 0, 0, 0, 1000, 1000, 300)
                        .environment("indoor", 20, 0.13)
                        .environment("outdoor", -5, 0.04));
    }

    @Test
    void aCutPlaneStaysAdiabaticAndSaysSo() {
        BodySolution over = Blocks.of("wall", 0, 0, 0, 1000, 1000, 300)
                .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                .air("indoor", 0, 0, -10, 1000, 1000, 0)
                .air("outdoor", 0, 0, 0, 1010, 1000, 310)
                .solid(0.035, 0, 0, 0, 1000, 1000, 300)
                .environment("indoor", 20, 0.13)
                .environment("outdoor", -5, 0.04)
                .solve(1e-3);
        assertTrue(over.coupling("indoor", "outdoor").contains(1 / (0.17 + 0.3 / 0.035)));
        assertEquals(
                "air is painted past a cut plane; the body's face there is adiabatic all the same",
                over.notes().makeString());
    }

    @Test
    void goodConductorsThatTouchAlongALineOnly() {
        only(
                "box 4 (material 50.0) and box 5 (material 60.0) touch along a line only, at x = 0.5 m, y = 0.5 m, from"
                        + " (0.5, 0.5, 0.1) m to (0.5, 0.5, 0.3) m, with poor conductors or air between; overlap them or"
                        + " part them",
                wall().solid(50, 300, 300, 0, 500, 500, 300).solid(60, 500, 500, 100, 700, 700, 300));
    }

    @Test
    void touchingInAPointIsFine() {
        BodySolution touching = wall().solid(50, 300, 300, 0, 500, 500, 150)
                .solid(50, 500, 500, 150, 700, 700, 300)
                .solve(0.02);
        assertTrue(touching.met(), touching::toString);
    }

    @Test
    void aPartThatFacesNoEnvironment() {
        assertTrue(faults(Blocks.of("two", 0, 0, 0, 1000, 1000, 700)
                        .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1, BoxSide.Z1)
                        .air("indoor", 0, 0, -10, 1000, 1000, 0)
                        .air("outdoor", 0, 0, 300, 1000, 1000, 310)
                        .adiabatic(0, 0, 310, 1000, 1000, 500)
                        .solid(0.035, 0, 0, 0, 1000, 1000, 300)
                        .solid(2, 0, 0, 500, 1000, 1000, 700)
                        .environment("indoor", 20, 0.13)
                        .environment("outdoor", -5, 0.04))
                .contains("box 5 (material 2.0) at (0.5, 0.5, 0.6) m and what it touches face no environment at all, so"
                        + " their temperature is not defined; join them to the rest or remove them"));
    }

    @Test
    void prescribedTemperaturesThatMeet() {
        only(
                "the surfaces of hot and cold have no surface resistance and meet at (0, 0, 0) m: the heat flow there is"
                        + " infinite; give one of them a resistance or part them",
                Blocks.of("cube", 0, 0, 0, 1000, 1000, 1000)
                        .cut(BoxSide.X1, BoxSide.Y0, BoxSide.Y1, BoxSide.Z1)
                        .air("hot", -10, 0, 0, 0, 1000, 1000)
                        .air("cold", 0, 0, -10, 1000, 1000, 0)
                        .solid(1, 0, 0, 0, 1000, 1000, 1000)
                        .environment("hot", 1, 0)
                        .environment("cold", 0, 0));
    }

    @Test
    void everyFaultAtOnce() {
        only(
                """
                the multiplicity is 0.0; it must be a number, 1 or greater: 4 where a quarter is drawn
                box 4 (material -1.0) has conductivity -1.0 W/(m·K); it must be a number greater than 0
                box 4 (material -1.0) reaches to x = 1.2 m, past the face of the body at 1 m; nothing is solid outside the \
                body: end the box there or make the body larger
                box 5 (nowhere) is 0 mm thick in z; a box must be at least 0.002 mm thick in each direction
                box 5 (nowhere) is air of an environment that is not defined; there are garden, indoor, outdoor
                environment garden has temperature NaN °C; it must be a number
                environment garden has surface resistance -1.0 m²·K/W; it must be a number, 0 or greater
                patch corner faces cellar, which is not defined; there are indoor, outdoor, garden
                probe a is there twice; give each probe a name of its own""",
                wall().times(0)
                        .solid(-1, 0, 0, 0, 1200, 100, 100)
                        .air("nowhere", 0, 0, 5, 10, 10, 5)
                        .environment("garden", Double.NaN, -1)
                        .patch("corner", "cellar", 0, 0, -10, 10, 10, 0)
                        .probe("a", 0, 0, 0)
                        .probe("a", 0, 0, 1));
    }

    @Test
    void partsThatTouchNothing() {
        only("""
                the air of environment garden touches no solid; paint a box of it against a surface, or leave the \
                environment out
                patch corner holds no surface that faces its environment's air; move its box there""", wall().environment("garden", 10, 0.1).patch("corner", "indoor", 0, 0, 300, 10, 10, 310));
    }

    @Test
    void aPatchHasOneResistance() {
        only(
                "patch corner holds surfaces of more than one surface resistance; draw one patch for each",
                SolidCases.corner()
                        .environment(new BodyEnvironment("attic", 5, 0.1, 0.13, 0.17))
                        .air("attic", 380, 380, 0, 1580, 1580, 1200)
                        .air("indoor", 500, 500, 0, 1580, 1580, 1200)
                        .patch("corner", "attic", 380, 380, 1150, 430, 430, 1200));
    }

    @Test
    void planesCloserThanTheSnapAreOne() {
        BodySolution snapped = wall().solid(0.035, 0, 0, 0, 500.0004, 1000, 300)
                .solid(0.035, 500, 0, 0, 700, 1000, 300)
                .solve(1e-3);
        assertEquals(
                "planes at x = 0.5000000 and 0.5000004 m are closer than 0.001 mm and were made one",
                snapped.notes().makeString());
    }

    @Test
    void saysWhereTheIntervalStaysWide() {
        BodySolution wide = BodySolver.solve(SolidCases.bracket().body(), new Accuracy(1e-6, 20_000));
        assertFalse(wide.met());
        assertTrue(wide.unknowns() <= 25_000, () -> "" + wide.unknowns());
        assertTrue(
                wide.notes()
                        .makeString()
                        .matches("the interval is 0\\.\\d+ of the coupling wide, not 1\\.00e-06 as asked.*"),
                () -> wide.notes().makeString());
    }
}
