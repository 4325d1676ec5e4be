package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.atlas.Sweep;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import java.util.Set;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Every option at every thickness of the atlas, in both builds: it is drawn, or refused with its reason; without insulation and
 * with the most it is solved, too.
 */
@Timeout(600)
@Tag("slow")
class SweepBreadthTest {

    /** Coarse: that a section can be solved shows at any width, and a thousand are solved. */
    private static final Accuracy SKETCH = new Accuracy(0.05, 20_000);

    /** Of kinds whose floor has no board by its nature. */
    private static final Set<JunctionKind> WITHOUT_BOARD = Set.of(JunctionKind.of("existing slab edge"));

    /**
     * An atlas run to the end showed bests that broke where one surface's board is thin: of each kind the best keeps its pen
     * line, too.
     */
    @Test
    void everyOptionIsDrawnOrSaysWhyNotAndTheBestKeepsItsPenLine() {
        MutableList<String> faults = Lists.mutable.empty();
        int drawn = 0;
        int misfits = 0;
        int lines = 0;
        int solved = 0;
        ImmutableList<Double> thicknesses = Sweep.thicknesses(UnitSystem.SI);
        for (TypicalBuild build : TypicalBuild.values()) {
            for (JunctionKind kind : JunctionKind.all()) {
                ImmutableList<Detail> options = CatalogueFile.builtIn().options(kind);
                Detail best = options.select(TypicalSetups::usual).getLast();
                for (Sweep sweep : build.setups(kind, options).flatCollect(setup -> Sweep.of(setup, ""))) {
                    boolean usual = sweep.setup().equals(build.setup(kind));
                    for (Detail detail :
                            options.select(each -> build.setup(each).equals(sweep.setup()))) {
                        boolean held = usual && detail == best && !WITHOUT_BOARD.contains(kind);
                        int fitting = 0;
                        for (double thickness : thicknesses) {
                            Optional<JunctionSetup> setup = sweep.at(thickness);
                            if (setup.isEmpty()) {
                                continue;
                            }
                            String which = detail.id() + " in " + build + ", " + 1000 * thickness + " mm on the "
                                    + sweep.surface();
                            try {
                                Composition composition = BuiltIn.composed(detail, setup.get());
                                fitting++;
                                if (held && thickness > 0) {
                                    lines++;
                                    if (!line(composition, thickness).unbroken()) {
                                        faults.add(which + ": its pen line breaks");
                                    }
                                }
                                if (thickness == thicknesses.getFirst() || thickness == thicknesses.getLast()) {
                                    solved++;
                                    solve(composition, which, faults);
                                }
                            } catch (DetailDoesNotFit misfit) {
                                misfits++;
                                ImmutableList<String> reasons = misfit.reasons().collect(Phrase::toString);
                                if (reasons.isEmpty() || reasons.anySatisfy(String::isBlank)) {
                                    faults.add(which + ": refused without a reason");
                                }
                                // Most options are about insulation and do not fit where there is none.
                                if (thickness == thicknesses.getLast()) {
                                    faults.add(which + ": refused at the thick end, " + reasons.makeString("; "));
                                }
                            } catch (RuntimeException fault) {
                                faults.add(which + ": " + fault);
                            }
                        }
                        drawn += fitting;
                        if (fitting < 3) {
                            faults.add(detail.id() + " in " + build + " fits " + fitting + " thicknesses of the "
                                    + sweep.surface());
                        }
                    }
                }
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
        assertTrue(drawn > 1000 && misfits > 50, drawn + " drawn, " + misfits + " do not fit");
        assertTrue(lines > 500, lines + " pen lines");
        assertTrue(solved > 400, solved + " solved");
    }

    /** m; a loft is filled higher than any wall is boarded. */
    private static final double DEEP_LOFT = 0.6;

    @Test
    void deepLoftsAreDrawnAndSolved() {
        MutableList<String> faults = Lists.mutable.empty();
        int solved = 0;
        for (TypicalBuild build : TypicalBuild.values()) {
            for (JunctionKind kind :
                    JunctionKind.all().select(each -> each.bands().contains("ceiling"))) {
                ImmutableList<Detail> options = CatalogueFile.builtIn().options(kind);
                for (Sweep sweep : build.setups(kind, options).flatCollect(setup -> Sweep.of(setup, ""))) {
                    for (Detail detail :
                            options.select(each -> build.setup(each).equals(sweep.setup())
                                    && sweep.surface().equals("ceiling"))) {
                        String which = detail.id() + " in " + build;
                        try {
                            solve(Composer.compose(detail, sweep.at(DEEP_LOFT).orElseThrow()), which, faults);
                            solved++;
                        } catch (RuntimeException fault) {
                            faults.add(which + ": " + fault);
                        }
                    }
                }
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
        assertTrue(solved > 20, solved + " solved");
    }

    private static void solve(Composition composition, String which, MutableList<String> faults) {
        Solution solution = Conduction.solve(composition.heatFlow(), SKETCH);
        Interval flow = solution.coupling(
                Surroundings.INDOOR,
                solution.section()
                        .environments()
                        .detect(each -> !each.name().equals(Surroundings.INDOOR))
                        .name());
        // Written so that NaN fails.
        if (!(solution.met() && flow.lower() <= flow.upper() && flow.upper() > 0)) {
            faults.add(which + ": " + flow + (solution.met() ? "" : ", wider than asked"));
        }
    }

    private static PenLine line(Composition composition, double thickness) {
        return PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                thickness);
    }
}
