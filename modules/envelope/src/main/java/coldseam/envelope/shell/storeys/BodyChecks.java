package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;

/**
 * What of a body by storeys a house file cannot check key by key, and must be true before a shell can be built on it; every fault
 * is collected.
 */
record BodyChecks(ImmutableList<Body.Stack> stacks, ShellFaults faults) {

    boolean pass() {
        MutableSet<String> walls = Sets.mutable.empty();
        stacks.flatCollect(Body.Stack::storeys)
                .flatCollect(Body.Storey::walls)
                .reject(wall -> walls.add(wall.name()))
                .forEach(wall -> faults.wall(wall.name(), ": the name is given twice. Give each wall its own name."));
        stacks.forEach(this::ground);
        return faults.isEmpty();
    }

    /** Ground that reaches over the walls would bury the roof. */
    private void ground(Body.Stack stack) {
        double top = Vertex.metres(StoreyLevels.top(stack));
        stack.ground().forEachWithIndex((height, i) -> {
            if (!(height < top)) {
                faults.add(
                        ShellFault.Part.BODY,
                        stack.name(),
                        "Ground%s: beside corner %d of the lowest storey it is %.3f m high; the walls end at %.3f m. A roof in the"
                                + " ground is not known: give a lower height, or the wall there as facing the ground.",
                        stack.name().isEmpty() ? "" : " of \"" + stack.name() + "\"",
                        i + 1,
                        height,
                        top);
            }
        });
    }
}
