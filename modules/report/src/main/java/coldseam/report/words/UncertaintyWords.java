package coldseam.report.words;

import coldseam.audit.engine.InputUncertainty;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.plan.HeatInput;

/** What the inputs are called whose uncertainty counts. */
public final class UncertaintyWords {

    private UncertaintyWords() {}

    /** An input's name; a material that shares its own with another input has its conductivity beside it. */
    public static String name(InputUncertainty.Input input, InputUncertainty all, UnitSystem units) {
        String name = name(input.of());
        boolean shared = all.inputs().count(each -> name(each.of()).equals(name)) > 1;
        return shared && input.of() instanceof HeatInput.OfMaterial material
                ? name + ", " + units.format(material.conductivity(), Dimension.CONDUCTIVITY)
                : name;
    }

    private static String name(HeatInput input) {
        if (input instanceof HeatInput.OfSpace space) {
            return "temperature factor of " + space.name();
        }
        return input instanceof HeatInput.OfMaterial material ? material.name() : name((HeatInput.Other) input);
    }

    private static String name(HeatInput.Other input) {
        return switch (input) {
            case GROUND -> "the ground";
            case AIR_LAYERS -> "air layers";
            case OPENINGS -> "windows and doors, their declared U";
            case GLASS -> "glass";
            case EDGES -> "edges of glass";
            case FRAMES -> "frames and doors' leaves";
        };
    }
}
