package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.SideSummary;
import coldseam.envelope.shell.Side;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

class SidesTest {

    /** m² and W/(m²·K): the shell lies on a lattice of 0.1 mm. */
    private static final double LATTICE = 2e-3;

    private static ImmutableList<SideSummary> sides(String yaml) {
        return Sample.audit(yaml, Sample.good()).sides();
    }

    private static SideSummary side(String yaml, Side side) {
        return sides(yaml).detect(each -> each.side() == side);
    }

    private static double height() {
        return Sample.audit(Sample.yaml(), Sample.good()).shell().externalVolume()
                / (BoxByHand.LENGTH * BoxByHand.WIDTH);
    }

    @Test
    void allSixAreThereInOrder() {
        assertEquals(Lists.immutable.of(Side.values()), sides(Sample.yaml()).collect(SideSummary::side));
    }

    @Test
    void aSideHasItsAreaAndItsTransmittance() {
        SideSummary south = side(Sample.yaml(), Side.SOUTH);
        assertEquals(BoxByHand.LENGTH * height(), south.area(), LATTICE);
        assertEquals(0, south.openings());
        assertEquals(1, south.insulatedShare());
        assertEquals(BoxByHand.transmittance("wall"), south.meanTransmittance(), 1e-9);
        SideSummary below = side(Sample.yaml(), Side.BELOW);
        assertEquals(BoxByHand.LENGTH * BoxByHand.WIDTH, below.area(), LATTICE);
        assertEquals(BoxByHand.transmittance("slab"), below.meanTransmittance(), 1e-4);
    }

    private static final String WINDOW = """
            openings:
              window: {kind: window, surface: ground floor south wall, width: 2 m, height: 1.5 m, sill: 0.8 m,
                transmittance: 0.9 W/(m²·K)}
            """;

    @Test
    void anOpeningIsWeighedInByItsArea() {
        SideSummary south = side(Sample.yaml() + WINDOW, Side.SOUTH);
        double gross = BoxByHand.LENGTH * height();
        assertEquals(gross, south.area(), LATTICE);
        assertEquals(3, south.openings(), 1e-9);
        assertEquals(
                (BoxByHand.transmittance("wall") * (gross - 3) + 0.9 * 3) / gross, south.meanTransmittance(), 1e-5);
        assertEquals(1, south.insulatedShare(), "openings are no part of the share");
    }

    @Test
    void aBareWallIsNotInsulated() {
        String yaml = Sample.yaml().replace("{all: wall}", "{all: wall, west: bare wall}");
        assertEquals(0, side(yaml, Side.WEST).insulatedShare());
        assertEquals(1, side(yaml, Side.EAST).insulatedShare());
    }

    /** Over the ground floor's wall nothing closes the upper floor, which is 4 m long there. */
    @Test
    void whatIsMissingIsNotInsulated() {
        SideSummary west = side(
                Sample.terrace(
                                "    - {material: polyisocyanurate board, thickness: 160 mm, role: insulation, controls: [heat]}\n")
                        .replaceFirst("(?s)(upper floor.*)\\{all: wall}", "$1{all: wall, west: none}"),
                Side.WEST);
        assertTrue(west.missing() > 4 * 3, west::toString);
        assertEquals(west.area() / (west.area() + west.missing()), west.insulatedShare(), 1e-9);
    }

    @Test
    void aPartyWallCountsInTheAreaAndNotInTheLoss() {
        String yaml = Sample.yaml().replace("{all: wall}", "{all: wall, west: {assembly: bare wall, faces: next door}}")
                + "neighbours: {next door: {heated: true}}\n";
        SideSummary west = side(yaml, Side.WEST);
        assertEquals(BoxByHand.WIDTH * height(), west.area(), LATTICE);
        assertEquals(0, west.meanTransmittance());
        assertEquals(1, west.insulatedShare(), "nothing of it need be insulated");
    }
}
