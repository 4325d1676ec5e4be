package coldseam.conduction.solid;

import coldseam.conduction.DrawingFault;
import coldseam.conduction.DrawingFault.About;
import coldseam.conduction.DrawingFaults;
import coldseam.conduction.Figures;
import java.util.Locale;
import java.util.Set;
import org.eclipse.collections.api.list.MutableList;

/** The faults of a body that show before anything is painted: numbers out of range, names that do not fit. */
record BodyCheck(SolidBody body, DrawingFaults faults) {

    /** (Output) every fault found. */
    static void run(SolidBody body, MutableList<DrawingFault> faults) {
        BodyCheck check = new BodyCheck(body, new DrawingFaults(faults));
        check.extent();
        check.painted();
        check.environments();
        check.faults.each(About.PATCH, "patch", body.patches(), Patch::name, check::patch);
        check.faults.each(About.PROBE, "probe", body.probes(), BodyProbe::name, check::probe);
    }

    private void extent() {
        box("the body", body.extent());
        if (!(body.multiplicity() >= 1 && body.multiplicity() < Double.POSITIVE_INFINITY)) {
            faults.add("the multiplicity is " + body.multiplicity()
                    + "; it must be a number, 1 or greater: 4 where a quarter is drawn");
        }
        if (body.painted().noneSatisfy(each -> each.match(solid -> false, air -> true, none -> false))) {
            faults.add("no air is painted; paint a box of each environment, it may reach outside the body");
        }
    }

    private void painted() {
        if (body.painted().noneSatisfy(each -> each.match(solid -> true, air -> false, none -> false))) {
            faults.add("the body has no solid; paint at least one box of a material");
        }
        Set<String> names = body.environments().collect(BodyEnvironment::name).toSet();
        for (int i = 0; i < body.painted().size(); i++) {
            faults.look(About.PAINTED, i);
            String what = piece(body, i);
            PaintedBox painted = body.painted().get(i);
            box(what, painted.box());
            painted.match(
                    solid -> {
                        solid(what, solid);
                        return what;
                    },
                    air -> {
                        if (!names.contains(air.environment())) {
                            faults.add(what + " is air of an environment that is not defined; there are "
                                    + String.join(", ", names.stream().sorted().toList()));
                        }
                        air.own()
                                .ifPresent(own -> faults.resistance(
                                        what, own.x0(), own.x1(), own.y0(), own.y1(), own.z0(), own.z1()));
                        return what;
                    },
                    none -> what);
        }
    }

    private void solid(String what, PaintedBox.Solid solid) {
        faults.conductivity(what, solid.conductivity());
        for (BoxSide side : BoxSide.values()) {
            double beyond = side.of(solid.box()) - side.of(body.extent());
            if ((side.high() ? beyond : -beyond) > SolidBody.SNAP) {
                faults.add(String.format(
                        Locale.ROOT,
                        "%s reaches to %s = %s m, past the face of the body at %s m; nothing is solid outside the"
                                + " body: end the box there or make the body larger",
                        what,
                        "xyz".charAt(side.direction()),
                        Figures.number(side.of(solid.box())),
                        Figures.number(side.of(body.extent()))));
            }
        }
    }

    private void environments() {
        faults.look(About.WHOLE, 0);
        if (body.environments().isEmpty()) {
            faults.add("the body has no environment; give at least one with its temperature");
        }
        faults.each(
                About.ENVIRONMENT, "environment", body.environments(), BodyEnvironment::name, (what, environment) -> {
                    faults.temperature(what, environment.temperature());
                    faults.resistance(what, environment.up(), environment.horizontal(), environment.down());
                });
    }

    private void patch(String what, Patch patch) {
        box(what, patch.box());
        BodyEnvironment faced = body.environments().detect(each -> each.name().equals(patch.environment()));
        if (faced == null) {
            faults.add(what + " faces " + patch.environment() + ", which is not defined; there are "
                    + body.environments().collect(BodyEnvironment::name).makeString(", "));
        } else if (!(faced.up() > 0 && faced.horizontal() > 0 && faced.down() > 0)) {
            faults.add(what + " faces " + patch.environment() + ", whose surface resistance is 0: the temperature"
                    + " there is the environment's own; leave the patch out");
        }
    }

    private void probe(String what, BodyProbe probe) {
        if (!finite(probe.at())) {
            faults.add(what + " is at " + probe.at() + "; coordinates must be numbers");
        }
    }

    private void box(String what, Cuboid box) {
        if (!finite(box.from()) || !finite(box.to())) {
            faults.add(what + " has a corner that is not a number; give six coordinates");
            return;
        }
        for (int d = 0; d < 3; d++) {
            if (!(box.size(d) >= 2 * SolidBody.SNAP)) {
                faults.add(String.format(
                        Locale.ROOT,
                        "%s is %s mm thick in %s; a box must be at least %s mm thick in each direction",
                        what,
                        Figures.number(1e3 * box.size(d)),
                        "xyz".charAt(d),
                        Figures.number(2e3 * SolidBody.SNAP)));
            }
        }
    }

    private static boolean finite(Place at) {
        // Beyond this a micrometre is lost in the digits of a coordinate.
        double largest = 1e6;
        return Math.abs(at.x()) < largest && Math.abs(at.y()) < largest && Math.abs(at.z()) < largest;
    }

    /** What a painted box is called in messages: its number in the drawing and what it is. */
    static String piece(SolidBody body, int index) {
        return "box " + (index + 1) + " ("
                + body.painted()
                        .get(index)
                        .match(PaintedBox.Solid::material, PaintedBox.Air::environment, none -> "adiabatic")
                + ")";
    }

    /** A place in metres, to the micrometre. */
    static String place(double x, double y, double z) {
        return "(" + Figures.number(x) + ", " + Figures.number(y) + ", " + Figures.number(z) + ") m";
    }
}
