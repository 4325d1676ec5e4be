package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.engine.InputUncertainty;
import coldseam.audit.engine.InputUncertainty.Input;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.plan.HeatInput;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** What inputs are called. */
class UncertaintyWordsTest {

    /** A detail's brick beside the house's, and a layer of glass beside a window's. */
    @Test
    void inputsOfOneNameAreToldApart() {
        ImmutableList<HeatInput> inputs = Lists.immutable.of(
                new HeatInput.OfMaterial("brick", 0.5),
                new HeatInput.OfMaterial("brick", 0.8),
                new HeatInput.OfMaterial("glass", 1),
                new HeatInput.OfMaterial("plaster", 0.4),
                HeatInput.Other.GLASS);
        InputUncertainty all = new InputUncertainty(inputs.collect(of -> new Input(of, 0.1, false, 1)));
        assertEquals(
                Lists.immutable.of(
                        "brick, 0.500 W/(m·K)", "brick, 0.800 W/(m·K)", "glass, 1.000 W/(m·K)", "plaster", "glass"),
                all.inputs().collect(each -> UncertaintyWords.name(each, all, UnitSystem.SI)));
    }
}
