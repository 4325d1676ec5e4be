package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.files.quantity.Format;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Sets;

/** What a body by storeys must be before a shell can be built on it; every fault is collected. */
final class BodyChecks {

    /** Pitches, degrees, between which a pitched roof is built. */
    private static final double FLATTEST = 1;

    private static final double STEEPEST = 75;

    private final House house;
    private final ImmutableList<Body.Stack> stacks;
    private final ShellFaults faults;

    BodyChecks(House house, Body.Storeys body, ShellFaults faults) {
        this.house = house;
        this.stacks = body.stacks();
        this.faults = faults;
    }

    boolean pass() {
        for (Body.Stack stack : stacks.select(each -> each.storeys().isEmpty())) {
            fault(
                    ShellFault.Part.BODY,
                    stack,
                    "Body",
                    ": no storey is given, at least one is needed. Add a storey with its footprint and" + " height.");
            return false;
        }
        MutableSet<String> names = Sets.mutable.empty();
        MutableSet<String> walls = Sets.mutable.empty();
        stacks.flatCollect(Body.Stack::storeys).forEach(storey -> {
            if (!names.add(storey.name())) {
                faults.storey(storey.name(), ": the name is given twice. Give each storey its own name.");
            }
            storey(storey);
            storey.walls().forEach(wall -> {
                if (!walls.add(wall.name())) {
                    faults.wall(wall.name(), ": the name is given twice. Give each wall its own name.");
                }
                known(ShellFault.Part.WALL, wall.name(), "Wall \"" + wall.name() + "\"", wall.assembly());
            });
        });
        stacks.forEach(stack -> {
            known(
                    ShellFault.Part.BASE,
                    stack.name(),
                    "Lowest floor" + of(stack),
                    stack.base().assembly());
            known(
                    ShellFault.Part.ROOF,
                    stack.name(),
                    "Roof" + of(stack),
                    stack.roof().assembly());
            known(
                    ShellFault.Part.ROOF,
                    stack.name(),
                    "Gables" + of(stack),
                    stack.roof().gableAssembly());
            base(stack);
            ground(stack);
            roof(stack);
        });
        return faults.isEmpty();
    }

    private static String of(Body.Stack stack) {
        return stack.name().isEmpty() ? "" : " of \"" + stack.name() + "\"";
    }

    private void storey(Body.Storey storey) {
        String place = "Storey \"" + storey.name() + "\"";
        known(ShellFault.Part.STOREY, storey.name(), place + ", terrace", storey.terrace());
        known(ShellFault.Part.STOREY, storey.name(), place + ", overhang", storey.overhang());
        if (!(storey.height() > 0)) {
            faults.storey(
                    storey.name(),
                    ": its height is %.3f m; it must be more than 0 m, floor to floor.",
                    storey.height());
        }
        if (!(storey.floorThickness() >= 0 && storey.floorThickness() < 2)) {
            faults.storey(
                    storey.name(),
                    ": the internal floor under it is %.3f m thick; 0 m to 2 m are allowed.",
                    storey.floorThickness());
        }
        Optional<ImmutableList<Point2>> cornerless = storey.outlines().detectOptional(outline -> outline.size() < 3);
        if (cornerless.isPresent()) {
            faults.storey(
                    storey.name(),
                    ": its footprint, or a court, has %d corners, at least 3 are needed.",
                    cornerless.get().size());
            return;
        }
        Footprint footprint = Footprint.of(storey.outlines());
        ImmutableList<Point2> corners = footprint.corners();
        if (storey.walls().size() != corners.size()) {
            faults.storey(
                    storey.name(),
                    ": %d walls are given for a footprint of %d sides. Give one wall for each side, in order.",
                    storey.walls().size(),
                    corners.size());
            return;
        }
        for (int i = 0; i < corners.size(); i++) {
            Point2 a = corners.get(i);
            Point2 b = footprint.end(i);
            if (!(Math.hypot(a.x() - b.x(), a.y() - b.y()) >= 0.001)) {
                faults.storey(
                        storey.name(),
                        ": side %d of its footprint is shorter than 1 mm, from (%.4f, %.4f) m to (%.4f, %.4f) m."
                                + " Remove one of the corners.",
                        i + 1,
                        a.x(),
                        a.y(),
                        b.x(),
                        b.y());
                return;
            }
        }
        turning(storey, footprint);
    }

    private void turning(Body.Storey storey, Footprint footprint) {
        double area = Footprint.of(Lists.immutable.of(storey.footprint())).area();
        if (!footprint.onLattice().isValid()) {
            faults.storey(
                    storey.name(),
                    ": its footprint crosses or touches itself, or a court of its does not lie within it. Give the corners in"
                            + " order around the storey.");
        } else if (!(area > 0)) {
            faults.storey(
                    storey.name(),
                    ": its footprint runs clockwise. Give the corners counterclockwise, seen from above.");
        } else if (storey.courts()
                .anySatisfy(court -> Footprint.of(Lists.immutable.of(court)).area() > 0)) {
            faults.storey(
                    storey.name(),
                    ": one of its courts runs counterclockwise. Give a court's corners clockwise, seen from above.");
        }
    }

    private void base(Body.Stack stack) {
        Body.Base base = stack.base();
        boolean cellar = base.kind() == Body.Base.Kind.HEATED_CELLAR;
        if (cellar && !(base.depth() > 0)) {
            fault(
                    ShellFault.Part.BASE,
                    stack,
                    "Lowest floor",
                    ": a heated cellar with its floor %.3f m below ground level; it must be more than 0 m."
                            + " Give the depth, or a slab on ground.",
                    base.depth());
        }
        if (base.kind() == Body.Base.Kind.SUSPENDED && base.crawlSpace().isEmpty()) {
            fault(
                    ShellFault.Part.BASE,
                    stack,
                    "Lowest floor",
                    ": a suspended floor without its crawl space. Give the crawl space's height and vents.");
        }
    }

    /** Ground that reaches over the walls would bury the roof. */
    private void ground(Body.Stack stack) {
        double top = Vertex.metres(StoreyLevels.top(stack));
        stack.ground().forEachWithIndex((height, i) -> {
            if (!(height < top)) {
                fault(
                        ShellFault.Part.BODY,
                        stack,
                        "Ground",
                        ": beside corner %d of the lowest storey it is %.3f m high; the walls end at %.3f m. A roof in the"
                                + " ground is not known: give a lower height, or the wall there as facing the ground.",
                        i + 1,
                        height,
                        top);
            }
        });
    }

    private void roof(Body.Stack stack) {
        Body.Roof roof = stack.roof();
        boolean pitched = !roof.form().isLevel();
        if (pitched && !roof.insulatedAtCeiling() && !(roof.pitch() >= FLATTEST && roof.pitch() <= STEEPEST)) {
            fault(
                    ShellFault.Part.ROOF,
                    stack,
                    "Roof",
                    ": its pitch is %.2f°; a pitched roof may have %.0f° to %.0f°. Give the pitch, or a flat roof.",
                    roof.pitch(),
                    FLATTEST,
                    STEEPEST);
        }
        int sides = stack.storeys().getLast().walls().size();
        boolean sided = roof.form() == Body.Roof.Form.GABLE || roof.form() == Body.Roof.Form.MONO_PITCH;
        if (sided && !(roof.lowSide() >= 0 && roof.lowSide() < sides)) {
            fault(
                    ShellFault.Part.ROOF,
                    stack,
                    "Roof",
                    ": its low side is side %d, but the top storey has the sides 0 to %d. Name one of them.",
                    roof.lowSide(),
                    sides - 1);
        }
        if (!(roof.parapetHeight() >= 0)) {
            fault(
                    ShellFault.Part.ROOF,
                    stack,
                    "Roof",
                    ": its parapet is %.3f m high; 0 m or more is allowed.",
                    roof.parapetHeight());
        }
    }

    private void known(ShellFault.Part part, String name, String place, Optional<String> assembly) {
        if (assembly.isPresent() && !house.assemblies().containsKey(assembly.get())) {
            faults.add(
                    part,
                    name,
                    "%s: the assembly \"%s\" is not among the house's assemblies. Define it, or name one of: %s.",
                    place,
                    assembly.get(),
                    house.assemblies().keysView().toSortedList().makeString(", "));
        }
    }

    private void fault(ShellFault.Part part, Body.Stack stack, String what, String format, Object... values) {
        faults.add(part, stack.name(), "%s%s", what + of(stack), Format.of(format, values));
    }
}
