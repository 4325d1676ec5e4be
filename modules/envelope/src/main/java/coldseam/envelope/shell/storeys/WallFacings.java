package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import java.util.function.ToLongFunction;
import org.eclipse.collections.api.list.ImmutableList;

/** Whether walls that are said to face the ground or a crawl space stand where one is: there they lose less than outdoors. */
record WallFacings(
        Stacks stacks,
        ImmutableList<Footprint> outer,
        StoreyLevels levels,
        ToLongFunction<Vertex> ground,
        ShellFaults faults) {

    /** m, that a wall in the ground may rise over it, as a height of the ground must lie below the walls' end; our own rule. */
    private static final double OUT = 0.5;

    void check() {
        for (int k = 0; k < stacks.count(); k++) {
            Footprint footprint = outer.get(k);
            for (int i : footprint.starts().castToList()) {
                Body.Wall wall = stacks.storey(k).walls().get(footprint.side(i));
                if (wall.exposure().kind() == Exposure.Kind.GROUND) {
                    inGround(k, wall, Vertex.inPlan(footprint.corners().get(i)), Vertex.inPlan(footprint.end(i)));
                } else if (wall.exposure().kind() == Exposure.Kind.CRAWL_SPACE) {
                    besideCrawlSpace(k, wall);
                }
            }
        }
    }

    private void inGround(int storey, Body.Wall wall, Vertex a, Vertex b) {
        double beside = Vertex.metres(Math.min(ground.applyAsLong(a), ground.applyAsLong(b)));
        double top = Vertex.metres(levels.tops().get(storey));
        if (top - beside > OUT) {
            faults.wall(
                    wall.name(),
                    ": it faces the ground, but rises to %.3f m, and the ground beside it lies at %.3f m. Let it face"
                            + " outdoors: it is parted where the ground ends, at the heights that the key ground gives.",
                    top,
                    beside);
        }
    }

    /** A crawl space lies under a floor: what stands beside it begins below that floor. */
    private void besideCrawlSpace(int storey, Body.Wall wall) {
        long foot = levels.floors().get(storey);
        boolean beside = stacks.lowests()
                .anySatisfy(k -> suspended(stacks.stack(k).base())
                        && foot < levels.floors().get(k));
        boolean part = stacks.all().anySatisfy(stack -> stack.otherBases().anySatisfy(each -> suspended(each.base())));
        if (!beside && !(part && stacks.lowest(storey))) {
            faults.wall(
                    wall.name(),
                    ": it faces a crawl space, but no suspended floor lies higher than its foot at %.3f m. Say what it"
                            + " faces.",
                    Vertex.metres(foot));
        }
    }

    private static boolean suspended(Body.Base base) {
        return base.kind() == Body.Base.Kind.SUSPENDED;
    }
}
