package coldseam.junctions;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
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
        JunctionSetup typical = build.setup(kind);
        return new JunctionSetup(
                typical.kind(),
                thicker(typical.first()),
                typical.second().map(this::thicker),
                typical.angle(),
                typical.firstExposure(),
                typical.secondExposure(),
                typical.opening(),
                typical.floorThickness(),
                typical.upstand(),
                typical.ground(),
                typical.indoorTemperature(),
                typical.outdoorTemperature());
    }

    /** Both ways of building. */
    ImmutableList<JunctionSetup> setups(JunctionKind kind) {
        return Lists.immutable.of(setup(kind, TypicalBuild.MASONRY), setup(kind, TypicalBuild.FRAME));
    }

    private Assembly thicker(Assembly assembly) {
        return new Assembly(
                assembly.name(),
                assembly.layers()
                        .collect(layer -> layer.role() == Role.INSULATION
                                ? new Layer(
                                        layer.material(),
                                        layer.thickness() + board,
                                        layer.role(),
                                        layer.framing(),
                                        layer.air(),
                                        layer.taper(),
                                        layer.controls())
                                : layer),
                assembly.fasteners(),
                assembly.gaps(),
                assembly.rain());
    }
}
