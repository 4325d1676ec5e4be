package coldseam.junctions;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.detail.Detail;
import java.util.function.DoubleUnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The typical junctions with other thicknesses of board.
 *
 * @param board m added to the thickness of every continuous insulation
 */
public record TypicalSetups(double board) {

    static TypicalSetups asBuilt() {
        return new TypicalSetups(0);
    }

    public JunctionSetup setup(JunctionKind kind, TypicalBuild build) {
        return with(build.setup(kind), thickness -> thickness + board);
    }

    /** A junction that a detail is drawn for. */
    public JunctionSetup setup(Detail detail, TypicalBuild build) {
        return with(build.setup(detail), thickness -> thickness + board);
    }

    /** A junction that a detail is drawn for, whose continuous insulation is everywhere so thick, m. */
    public static JunctionSetup of(Detail detail, TypicalBuild build, double boards) {
        return with(build.setup(detail), thickness -> boards);
    }

    /** Whether a detail is for the typical junctions of its kind, and not for other walls alone, such as those insulated inside. */
    public static boolean usual(Detail detail) {
        return Lists.immutable
                .of(TypicalBuild.values())
                .allSatisfy(build -> build.setup(detail).equals(build.setup(detail.junction())));
    }

    /** The same layer of another material. */
    public static Layer of(Layer layer, Material other) {
        return new Layer(
                other, layer.thickness(), layer.role(), layer.framing(), layer.air(), layer.taper(), layer.controls());
    }

    private static JunctionSetup with(JunctionSetup typical, DoubleUnaryOperator boards) {
        return typical.between(with(typical.first(), boards), typical.second().map(each -> with(each, boards)));
    }

    /** Both ways of building. */
    ImmutableList<JunctionSetup> setups(JunctionKind kind) {
        return Lists.immutable.of(setup(kind, TypicalBuild.MASONRY), setup(kind, TypicalBuild.FRAME));
    }

    private static Assembly with(Assembly assembly, DoubleUnaryOperator boards) {
        return new Assembly(
                assembly.name(),
                assembly.layers()
                        .collect(layer -> layer.role() == Role.INSULATION
                                ? layer.thick(boards.applyAsDouble(layer.thickness()))
                                : layer),
                assembly.fasteners(),
                assembly.gaps(),
                assembly.rain());
    }
}
