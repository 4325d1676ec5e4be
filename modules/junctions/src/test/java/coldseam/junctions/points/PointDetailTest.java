package coldseam.junctions.points;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.junctions.Rank;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** The built-in fasteners, posts and brackets keep the order the trade gives them. */
class PointDetailTest {

    private static final PointComputer COMPUTER = new PointComputer(new Accuracy(1e-4, 100_000));

    @Test
    void everyKindHasThreeOptionsAndEachLosesLessThanTheOneBefore() {
        ImmutableList<PointDetail> all = PointDetail.builtIn();
        ImmutableList<String> kinds = all.collect(PointDetail::kind).distinct();
        assertEquals(3, kinds.size());
        for (String kind : kinds) {
            ImmutableList<PointDetail> options = all.select(each -> each.kind().equals(kind));
            assertEquals(Lists.immutable.of(Rank.values()), options.collect(PointDetail::rank), kind);
            ImmutableList<PointResult> results = options.collect(each -> COMPUTER.compute(each.section()));
            for (int i = 0; i + 1 < results.size(); i++) {
                PointResult worse = results.get(i);
                PointResult better = results.get(i + 1);
                assertTrue(
                        better.chi().upper() < worse.chi().lower(),
                        kind + ": " + worse.chi() + " then " + better.chi());
                assertTrue(better.temperatureFactor() > worse.temperatureFactor(), kind);
            }
            assertTrue(
                    results.getLast().chi().lower() > 0,
                    kind + ": " + results.getLast().chi());
        }
    }

    @Test
    void stainlessScrewsLoseLessAndThickBoardsGiveLessAway() {
        PointResult carbon = screw(Fastener.Steel.CARBON, Fastener.Base.MASONRY, 0.1524);
        PointResult stainless = screw(Fastener.Steel.STAINLESS, Fastener.Base.MASONRY, 0.1524);
        PointResult thick = screw(Fastener.Steel.CARBON, Fastener.Base.MASONRY, 0.3048);
        assertTrue(stainless.chi().upper() < carbon.chi().lower());
        assertTrue(thick.chi().upper() < carbon.chi().lower());
        // Through 6 in of board the trade reckons 0.0005 (stainless) to 0.0015 W/K (carbon); plates and masonry add to
        // that.
        assertTrue(carbon.chi().lower() > 0.0005 && carbon.chi().upper() < 0.01, carbon.chi() + "");
    }

    private static PointResult screw(Fastener.Steel steel, Fastener.Base base, double board) {
        return COMPUTER.compute(new Fastener(steel, base, board).section());
    }

    /** 0.8·50·π·0.003²/d·(R1/RT)², ISO 6946:2017 annex F from memory, by hand for 200 mm of 0.035 on 240 mm of brick. */
    @Test
    void correctionBesideIsTheFormulaOfTheStandard() {
        Fastener fastener = new Fastener(Fastener.Steel.CARBON, Fastener.Base.MASONRY, 0.2);
        double share = (0.2 / 0.035) * fastener.section().transmittance();
        assertEquals(0.8 * 50 * Math.PI * 0.003 * 0.003 / 0.2 * share * share, fastener.correction(), 1e-9);
    }
}
