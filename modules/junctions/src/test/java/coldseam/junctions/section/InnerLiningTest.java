package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Boards inside a wall that is insulated outside, as forms of foam that stay have them, end where its lining does. */
final class InnerLiningTest {

    /** The same wall with boards behind its plaster, where it is insulated at all. */
    private static Assembly lined(Assembly wall) {
        if (wall.layers().noneSatisfy(layer -> layer.role() == Role.INSULATION)) {
            return wall;
        }
        return new Assembly(
                wall.name(),
                wall.layers()
                        .take(1)
                        .newWith(Samples.layer("inner board", 0.035, 60, Role.INSULATION))
                        .newWithAll(wall.layers().drop(1)),
                wall.fasteners(),
                wall.gaps(),
                wall.rain());
    }

    private static JunctionSetup lined(JunctionSetup setup) {
        ImmutableList<BridgeKind.Facing> faces = setup.kind().faces();
        return setup.between(
                faces.getFirst() == BridgeKind.Facing.SIDE ? lined(setup.first()) : setup.first(),
                setup.second().map(second -> faces.getLast() == BridgeKind.Facing.SIDE ? lined(second) : second));
    }

    private static String misfit(Detail detail, JunctionSetup setup) {
        try {
            BuiltIn.composed(detail, setup);
            return "";
        } catch (DetailDoesNotFit misfit) {
            return misfit.reasons().makeString("; ");
        }
    }

    @Test
    void whatFitsAWallFitsItWithALining() {
        MutableList<String> lost = Lists.mutable.empty();
        for (JunctionKind kind : JunctionKind.all()) {
            JunctionSetup plain = Samples.setup(kind);
            CatalogueFile.builtIn()
                    .options(kind)
                    .select(detail -> misfit(detail, plain).isEmpty())
                    .forEach(detail -> {
                        String why = misfit(detail, lined(plain));
                        if (!why.isEmpty()) {
                            lost.add(detail.id() + ": " + why);
                        }
                    });
        }
        assertEquals("", lost.makeString("\n"));
    }
}
