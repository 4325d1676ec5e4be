package coldseam.junctions.point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.HeatFlow;
import coldseam.conduction.Accuracy;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.PointKind;
import coldseam.envelope.Role;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.detail.PointDrawing;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Test;

/** Points against closed forms and the standard's own simplified formula. */
class PointChecksTest {

    private static final BridgeComputer COMPUTER = BridgeComputers.computer(Accuracy.standard());

    /** What is made of the layer it goes through is no bridge: chi is exactly zero, whatever the other layers are. */
    @Test
    void aPlugOfTheSameBoardIsNothing() {
        Detail detail = PointCatalogueTest.read(
                "- {body: plug, material: same as insulation, diameter: 120 mm, from: insulation.inside, to: insulation.outside}");
        PointResult result = COMPUTER.compute(detail, TypicalBuild.MASONRY.setup(PointKind.of("bracket")));
        assertTrue(result.chi().lower() <= 1e-12 && result.chi().upper() >= -1e-12, () -> result.chi() + "");
        assertTrue(result.chi().width() < 1e-9, () -> "a field of layers is found at once: " + result.chi());
    }

    /**
     * What a guard post's four stainless M12 carry past its block: no more than four rods from the concrete's face to the block's,
     * k·4A/d, and no less than half of that, since concrete and foot plate take heat to and from each. Worked out apart.
     */
    @Test
    void aGuardPostsBoltsAreInItsChi() {
        PointSetup setup = TypicalBuild.MASONRY.setup(PointKind.of("steel post"));
        Detail bolted = CatalogueFile.builtIn().find("steel-post-on-block").orElseThrow();
        String bolts =
                ((PointDrawing) bolted.drawing()).terms().content().replaceAll("(?m)^  - \\{body: bolts, .*\\n", "");
        Detail glued = DetailFile.read("glued.yaml", bolts);
        double board = setup.host()
                .layers()
                .select(each -> each.role() == Role.INSULATION)
                .sumOfDouble(each -> each.thickness());
        double rods = 17 * 4 * Math.PI * 0.006 * 0.006 / board;
        double more = COMPUTER.compute(bolted, setup).chi().middle()
                - COMPUTER.compute(glued, setup).chi().middle();
        assertTrue(more > 0.5 * rods && more < rods, () -> more + " W/K of at most " + rods);
        assertTrue(more > 0.02, () -> "nobody would leave it out: " + more);
    }

    /**
     * A round rod that stands out 0.3 m on both sides of a board that insulates all but perfectly: two fins and a rod in
     * series, G = 1/(1/Gi + L/(k·A) + 1/Ge) with G = √(h·P·k·A)·tanh(m·Lc), Lc = L + r/2 for the tip (fin theory, any text
     * book of heat transfer; from memory). A fin is one-dimensional to half its Biot number h·r/k, 0.1 % here, and the board
     * still carries 2 parts in 10⁴.
     */
    @Test
    void aRodThroughABoardIsTwoFinsInSeries() {
        double k = 50;
        double r = 0.004;
        double board = 0.2;
        double out = 0.3;
        PointSection section = new PointSection(
                "rod",
                Lists.immutable.of(new PointSection.Sheet("board", 1e-6, board)),
                Lists.immutable.of(new PointSection.Body("rod", k, 0, r, -out, board + out)),
                0.13,
                0.04,
                0.5,
                20,
                0);
        double area = Math.PI * r * r;
        double fins = 1 / (1 / fin(k, r, out, 1 / 0.13) + board / (k * area) + 1 / fin(k, r, out, 1 / 0.04));
        PointSolution solved = PointSolution.of(section, new Accuracy(1e-4, 400_000), Conduction::solve);
        assertEquals(1, solved.chi().middle() / fins, 1.5e-3, () -> solved.chi() + " beside " + fins);
    }

    private static double fin(double k, double r, double length, double h) {
        double area = Math.PI * r * r;
        double girth = 2 * Math.PI * r;
        double m = Math.sqrt(h * girth / (k * area));
        return Math.sqrt(h * girth * k * area) * Math.tanh(m * (length + r / 2));
    }

    /**
     * ISO 6946:2017 annex F, from memory: 0.8·λ·A·n/d·(R1/RT)². The factor 0.8 is what is left because the shaft's ends are
     * not quite at the temperatures of the faces; so a shaft between faces that tie its ends has at most 1/0.8 of the formula.
     * Thin boards let the resistance to and from the ends, which the formula knows by its 0.8 alone, weigh more, so the ratio
     * rises with the board's thickness; and it is lower for carbon steel, which asks more of its ends, and in wood, which ties
     * them less than masonry. So the two agree within a fifth through 6 in of board and more in masonry, stainless steel within
     * a fifth in wood; elsewhere the formula is on the safe side.
     */
    @Test
    void fastenersLieBesideTheStandardsCorrection() {
        double before = 0;
        Optional<Fastener> last = Optional.empty();
        for (Fastener fastener : Fastener.table()) {
            PointResult result = COMPUTER.compute(fastener.detail(), fastener.setup());
            double ratio = result.chi().middle() / fastener.correction();
            assertTrue(ratio < 1 / 0.8, () -> fastener + ": " + ratio);
            boolean next = last.isPresent()
                    && last.get().base() == fastener.base()
                    && last.get().steel() == fastener.steel();
            double thinner = before;
            assertTrue(!next || ratio > thinner, () -> fastener + ": " + ratio + " after " + thinner);
            boolean tied = fastener.base() == Fastener.Base.MASONRY || fastener.steel() == Fastener.Steel.STAINLESS;
            if (tied && fastener.board() >= 0.15) {
                assertEquals(1, ratio, 0.2, fastener::toString);
            }
            before = ratio;
            last = Optional.of(fastener);
        }
    }

    /** 0.8·50·π·0.003²/d·(R1/RT)², ISO 6946:2017 annex F from memory, by hand for 200 mm of 0.035 on 240 mm of brick. */
    @Test
    void correctionBesideIsTheFormulaOfTheStandard() {
        Fastener fastener = new Fastener(Fastener.Steel.CARBON, Fastener.Base.MASONRY, 0.2);
        double share = (0.2 / 0.035)
                * COMPUTER.compute(fastener.detail(), fastener.setup()).transmittance();
        assertEquals(0.8 * 50 * Math.PI * 0.003 * 0.003 / 0.2 * share * share, fastener.correction(), 1e-9);
    }

    /** Towards an unheated space fRsi is between indoors and outdoors: the space's factor b softens it. */
    @Test
    void anUnheatedSpaceSoftensTheSurfaceTemperature() {
        PointSetup wall = TypicalBuild.MASONRY.setup(PointKind.of("bracket"));
        PointSetup garage = new PointSetup(
                wall.host(),
                new coldseam.envelope.Exposure(coldseam.envelope.Exposure.Kind.UNHEATED, "garage", 0.5),
                HeatFlow.HORIZONTAL,
                Optional.empty(),
                20,
                -10,
                Maps.immutable.empty());
        Detail detail = CatalogueFile.builtIn().find("anchor-bolt-steel").orElseThrow();
        PointResult result = COMPUTER.compute(detail, garage);
        PointSection section = PointComposition.compose(detail, garage).section();
        assertEquals(5, section.outdoorTemperature(), 1e-9);
        PointSolution towardsIt = PointSolution.of(section, new Accuracy(1e-5, 400_000), Conduction::solve);
        assertEquals(1 - 0.5 * (1 - towardsIt.temperatureFactor()), result.temperatureFactor(), 1e-9);
    }

    /** A floor on the ground keeps its U of ISO 13370 in the section; a column's foot through its board then loses more. */
    @Test
    void theGroundIsAsThickAsTheFloorsTransmittanceSays() {
        PointSetup floor = TypicalBuild.MASONRY.setup(PointKind.of("column"));
        PointSetup onGround = new PointSetup(
                floor.host(),
                coldseam.envelope.Exposure.ground(),
                HeatFlow.DOWNWARDS,
                Optional.of(new PointSetup.GroundBelow(1.5, 0.14)),
                20,
                -5,
                Maps.immutable.empty());
        Detail through = CatalogueFile.builtIn().find("column-through").orElseThrow();
        Detail block = CatalogueFile.builtIn().find("column-under-block").orElseThrow();
        PointResult worst = COMPUTER.compute(through, onGround);
        assertEquals(0.14, worst.transmittance(), 1e-9);
        PointResult best = COMPUTER.compute(block, onGround);
        assertTrue(best.chi().upper() < worst.chi().lower() / 3, () -> best.chi() + " and " + worst.chi());
        // The ground's own resistance keeps a part of what the open air would take.
        assertTrue(worst.chi().upper() < COMPUTER.compute(through, floor).chi().lower());
        assertTrue(worst.pieces().anySatisfy(piece -> piece.role() == Role.STRUCTURE));
    }
}
