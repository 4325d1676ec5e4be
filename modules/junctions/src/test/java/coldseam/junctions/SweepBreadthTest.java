package coldseam.junctions;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.junctions.atlas.Sweep;
import java.util.Optional;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Every option at every thickness of the atlas: it is drawn, or says why it does not fit; nothing is solved. */
class SweepBreadthTest {

    /** Thrown in place of a solution, once a section is there to solve. */
    private static final class Drawn extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    @Test
    void everyOptionIsDrawnOrSaysWhyNot() {
        MutableList<String> faults = Lists.mutable.empty();
        int drawn = 0;
        int misfits = 0;
        for (TypicalBuild build : TypicalBuild.values()) {
            for (JunctionKind kind : JunctionKind.values()) {
                for (Sweep sweep : Sweep.of(build.setup(kind))) {
                    for (Detail detail : CatalogueFile.builtIn().options(kind)) {
                        int fitting = 0;
                        for (double thickness : Sweep.thicknesses(UnitSystem.SI)) {
                            Optional<JunctionSetup> setup = sweep.at(thickness);
                            if (setup.isEmpty()) {
                                continue;
                            }
                            try {
                                Junctions.compute(
                                        detail,
                                        setup.get(),
                                        Accuracy.standard(),
                                        (Section section, Accuracy accuracy) -> {
                                            throw new Drawn();
                                        },
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
