package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.atlas.Sweep;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import java.util.Optional;
import java.util.Set;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Every option at every thickness of the atlas: it is drawn, or says why it does not fit; nothing is solved. */
@Tag("slow")
class SweepBreadthTest {

    /** Thrown in place of a solution, once a section is there to solve. */
    private static final class Drawn extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** Of kinds whose floor has no board by its nature. */
    private static final Set<JunctionKind> WITHOUT_BOARD = Set.of(JunctionKind.of("existing slab edge"));

    /** An atlas run to the end showed bests that broke where one surface's board is thin; now the line is kept. */
    @Test
    void theBestKeepsThePenLineWhateverTheThickness() {
        MutableList<String> faults = Lists.mutable.empty();
        int lines = 0;
        for (TypicalBuild build : TypicalBuild.values()) {
            for (JunctionKind kind : JunctionKind.all()) {
                for (Sweep sweep : Sweep.of(build.setup(kind)).reject(each -> WITHOUT_BOARD.contains(kind))) {
                    Detail best = CatalogueFile.builtIn().options(kind).getLast();
                    for (double thickness : Sweep.thicknesses(UnitSystem.SI).reject(each -> each == 0)) {
                        try {
                            Composition composition =
                                    Composer.compose(best, sweep.at(thickness).orElseThrow(), BuiltIn.LIBRARY);
                            PenLine line = PenLines.of(
                                    composition.insulation(),
                                    composition.ends().getFirst(),
                                    composition.ends().getLast(),
                                    thickness);
                            lines++;
                            if (!line.unbroken()) {
                                faults.add(best.id() + " in " + build + ", " + 1000 * thickness + " mm on the "
                                        + sweep.surface());
                            }
                        } catch (DetailDoesNotFit misfit) {
                            continue;
                        }
                    }
                }
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
        assertTrue(lines > 500, lines + " pen lines");
    }

    @Test
    void everyOptionIsDrawnOrSaysWhyNot() {
        MutableList<String> faults = Lists.mutable.empty();
        int drawn = 0;
        int misfits = 0;
        for (TypicalBuild build : TypicalBuild.values()) {
            for (JunctionKind kind : JunctionKind.all()) {
                for (Sweep sweep : Sweep.of(build.setup(kind))) {
                    for (Detail detail : CatalogueFile.builtIn().options(kind)) {
                        int fitting = 0;
                        for (double thickness : Sweep.thicknesses(UnitSystem.SI)) {
                            Optional<JunctionSetup> setup = sweep.at(thickness);
                            if (setup.isEmpty()) {
                                continue;
                            }
                            try {
                                BridgeComputers.compute(
                                        detail,
                                        setup.get(),
                                        Accuracy.standard(),
                                        (Section section, Accuracy accuracy) -> {
                                            throw new Drawn();
                                        },
                                        WeakestPaths::of,
                                        BuiltIn.LIBRARY);
                            } catch (Drawn there) {
                                fitting++;
                            } catch (DetailDoesNotFit misfit) {
                                misfits++;
                            } catch (RuntimeException fault) {
                                faults.add(detail.id() + " at " + thickness + " m: " + fault);
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
    }
}
