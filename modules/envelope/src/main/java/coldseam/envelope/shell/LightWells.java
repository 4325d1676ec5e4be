package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.LightWell;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.files.quantity.Format;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Light wells before windows of walls in the ground: before each the ground ends at its floor. The piece of wall behind it faces
 * open air: it is cut out of what faces the ground, and where the same wall stands free over it, joined to that.
 */
final class LightWells {

    /** m, by which corners lie off a plane that they were meant to be in. */
    private static final double IN_PLANE = 5e-4;

    /**
     * A light well at its place.
     *
     * @param opening that states it
     * @param facet name of the piece of wall that faces it
     * @param a its floor's left end at the wall, seen from outdoors
     * @param b the right end
     * @param topA the ground beside it over a
     * @param topB over b
     */
    record Placed(Opening opening, String facet, Vertex a, Vertex b, Vertex topA, Vertex topB) {}

    private final ImmutableList<Opening> openings;
    private final BodyFacets body;
    private final ShellFaults faults;
    private final MutableList<Facet> facets;
    private final Map<String, Placed> placed = Maps.mutable.empty();

    LightWells(ImmutableList<Opening> openings, BodyFacets body, ShellFaults faults) {
        this.openings = openings.select(opening -> opening.lightWell().isPresent());
        this.body = body;
        this.faults = faults;
        this.facets = body.facets().toList();
        this.openings.forEach(opening -> place(opening, opening.lightWell().orElseThrow()));
    }

    /** The body with its walls cut behind them. */
    BodyFacets body() {
        return new BodyFacets(
                facets.toImmutable(), body.storeys(), body.floorArea(), body.widestStep(), body.measured());
    }

    /** That of an opening; empty where it states none, or one that became a fault. */
    Optional<Placed> of(Opening opening) {
        return Optional.ofNullable(placed.get(opening.name()));
    }

    /** Whether an opening's surface is this facet, or one it is a piece of. */
    static boolean names(Opening opening, Facet facet) {
        return !facet.step()
                && (facet.whole().equals(opening.surface()) || facet.name().equals(opening.surface()));
    }

    /** Corners from whose left end an opening in a facet is measured: of a wall that the ground parts, both parts'. */
    static ImmutableList<Vertex> measuredFrom(Opening opening, Facet facet, ImmutableList<Facet> all) {
        ImmutableList<Facet> named = all.select(each -> names(opening, each) && inPlane(facet, each));
        return named.anySatisfy(LightWells::buried) ? named.flatCollect(Facet::outline) : facet.outline();
    }

    private static boolean buried(Facet facet) {
        return facet.use() == Body.Use.WALL && facet.faces(Exposure.Kind.GROUND);
    }

    private static boolean inPlane(Facet one, Facet other) {
        Point3 normal = one.normal();
        Point3 off = other.outline().getFirst().minus(one.outline().getFirst()).point();
        return Vectors.dot(normal, other.normal()) > 1 - 1e-9 && Math.abs(Vectors.dot(off, normal)) < IN_PLANE;
    }

    /** Heights and lengths of one light well, in units along its wall and upwards. */
    private record Column(Point3 along, double from, double to, long floor) {

        double at(Vertex v) {
            return v.x() * along.x() + v.y() * along.y();
        }

        /** Where a side of an outline crosses one of its two sides. */
        Vertex cut(Vertex p, Vertex q, double at) {
            double share = (at - at(p)) / (at(q) - at(p));
            return p.at(0).toward(q.at(0), share).at(Math.round(p.z() + share * (q.z() - p.z())));
        }
    }

    private void place(Opening opening, LightWell well) {
        ImmutableList<Facet> named = facets.select(each -> names(opening, each)).toImmutable();
        if (named.isEmpty() || named.anySatisfy(Facet::missing)) {
            return;
        }
        Optional<Facet> seed = named.detectOptional(LightWells::buried).or(() -> named.getFirstOptional());
        ImmutableList<Facet> wall = facets.select(each -> each.use() == Body.Use.WALL
                        && !each.step()
                        && inPlane(seed.orElseThrow(), each)
                        && each.traits().level() == seed.get().traits().level()
                        && each.assembly().equals(seed.get().assembly()))
                .toImmutable();
        ImmutableList<Facet> ground = wall.select(LightWells::buried);
        if (ground.isEmpty()) {
            fault(
                    opening,
                    "no part of \"%s\" faces the ground. Remove light-well, or name the wall of the cellar that does.",
                    opening.surface());
            return;
        }
        if (Double.isNaN(seed.get().traits().floor())) {
            fault(opening, "the body says no floor to measure its sill from. Give the body its levels.");
            return;
        }
        Optional<Column> found = column(opening, well, seed.get());
        if (found.isEmpty()) {
            return;
        }
        Column column = found.get();
        Optional<Placed> other = Lists.immutable
                .ofAll(placed.values())
                .detectOptional(each ->
                        inPlane(seed.get(), facets.detect(f -> f.name().equals(each.facet())))
                                && column.at(each.a()) < column.to() + Vertex.ONE
                                && column.at(each.b()) > column.from() - Vertex.ONE);
        if (other.isPresent()) {
            fault(
                    opening,
                    "it and the light well of \"%s\" are in the same place. Let one of both state one that is wide enough for"
                            + " both, by its width and left, and remove the other's.",
                    other.get().opening().name());
            return;
        }
        MutableList<String> misfits = Lists.mutable.empty();
        for (Facet facet : ground) {
            Optional<String> misfit = misfit(column, facet);
            if (misfit.isEmpty()) {
                cut(opening, column, facet, wall.reject(LightWells::buried));
                return;
            }
            misfits.add(misfit.get());
        }
        fault(opening, "%s", misfits.getLast());
    }

    private void fault(Opening opening, String format, Object... values) {
        faults.add(
                ShellFault.Part.OPENING,
                opening.name(),
                "Light well of opening \"" + opening.name() + "\": " + format,
                values);
    }

    /** Where it stands; a fault where that is not before its window. */
    private Optional<Column> column(Opening opening, LightWell well, Facet seed) {
        Point3 along = SurfaceAxes.of(seed.normal(), Vectors.ZERO).u();
        Column whole = new Column(along, 0, 0, 0);
        ImmutableList<Vertex> corners = measuredFrom(opening, seed, facets.toImmutable());
        double left = corners.collectDouble(whole::at).min();
        double right = corners.collectDouble(whole::at).max();
        double window = opening.left().isPresent()
                ? left + opening.left().getAsDouble() * Vertex.PER_METRE
                : (left + right - opening.width() * Vertex.PER_METRE) / 2;
        double from = well.left().isPresent()
                ? left + well.left().getAsDouble() * Vertex.PER_METRE
                : window + (opening.width() - well.width()) / 2 * Vertex.PER_METRE;
        double to = from + well.width() * Vertex.PER_METRE;
        boolean before = from <= window + Vertex.ONE && window + opening.width() * Vertex.PER_METRE <= to + Vertex.ONE;
        if (!before) {
            fault(
                    opening,
                    "it reaches from %.3f m to %.3f m from the left end of \"%s\", its window from %.3f m to %.3f m. Correct left"
                            + " or width, so that it stands before the whole window.",
                    (from - left) / Vertex.PER_METRE,
                    (to - left) / Vertex.PER_METRE,
                    opening.surface(),
                    (window - left) / Vertex.PER_METRE,
                    (window - left) / Vertex.PER_METRE + opening.width());
            return Optional.empty();
        }
        return Optional.of(
                new Column(along, from, to, Vertex.height(seed.traits().floor() + opening.sill() - well.belowSill())));
    }

    private Optional<String> misfit(Column column, Facet facet) {
        double left = facet.outline().collectDouble(column::at).min();
        double right = facet.outline().collectDouble(column::at).max();
        // Inside, the wall ends by what it meets.
        double beside = Vertex.PER_METRE
                * facets.select(each ->
                                each.use() == Body.Use.WALL && each.outline().anySatisfy(facet.outline()::contains))
                        .collectDouble(Facet::inset)
                        .max();
        if (column.from() < left + beside - Vertex.ONE || column.to() > right - beside + Vertex.ONE) {
            return Optional.of(Format.of(
                    "it would reach from %.3f m to %.3f m from the left end of \"%s\"; what stands in the ground leaves room from"
                            + " %.3f m to %.3f m, clear of the walls that meet it. Make it narrower, or move it.",
                    (column.from() - left) / Vertex.PER_METRE,
                    (column.to() - left) / Vertex.PER_METRE,
                    facet.name(),
                    beside / Vertex.PER_METRE,
                    (right - left - beside) / Vertex.PER_METRE));
        }
        double floor = facet.traits().floor();
        double least = tops(column, facet).collectDouble(Vertex::z).min();
        if (column.floor() > least - Vertex.ONE) {
            return Optional.of(Format.of(
                    "its floor lies %.3f m over the storey's floor, and the ground before \"%s\" there at %.3f m."
                            + " Remove light-well where the window stands over the ground or in another's light well, or"
                            + " correct sill and below-sill.",
                    Vertex.metres(column.floor()) - floor, facet.name(), least / Vertex.PER_METRE - floor));
        }
        if (Vertex.metres(column.floor()) < floor) {
            return Optional.of(Format.of(
                    "its floor lies %.3f m under the storey's floor; at most it is as deep as that. Correct sill or below-sill;"
                            + " where the ground is lower before the whole wall, give its heights under body: ground.",
                    floor - Vertex.metres(column.floor())));
        }
        return Optional.empty();
    }

    /** The upper end of a facet in the ground, from the right side of a column to its left. */
    private static ImmutableList<Vertex> tops(Column column, Facet facet) {
        MutableList<Vertex> tops = Lists.mutable.empty();
        around(column, facet.outline(), true).forEach(each -> {
            if (each.inside()) {
                tops.add(each.corner());
            }
        });
        return tops.toImmutable();
    }

    /** A corner of an outline, and whether it belongs to the part over or under a column that is asked for. */
    private record Step(Vertex corner, boolean inside) {}

    /**
     * An outline with corners where it crosses a column's sides, on its upper side, along which it runs to the left, or its lower;
     * counterclockwise, from a corner outside the column.
     */
    private static ImmutableList<Step> around(Column column, ImmutableList<Vertex> outline, boolean upper) {
        double enter = upper ? column.to() : column.from();
        double leave = upper ? column.from() : column.to();
        int sense = upper ? -1 : 1;
        int first = outline.detectIndex(v -> sense * (column.at(v) - enter) < 0);
        MutableList<Step> steps = Lists.mutable.empty();
        boolean inside = false;
        for (int i = 0; i < outline.size(); i++) {
            Vertex p = outline.get((first + i) % outline.size());
            Vertex q = outline.get((first + i + 1) % outline.size());
            steps.add(new Step(p, inside));
            double from = sense * column.at(p);
            double to = sense * column.at(q);
            if (from < sense * enter && to >= sense * enter) {
                steps.add(new Step(column.cut(p, q, enter), true));
                inside = true;
            }
            if (inside && from <= sense * leave && to > sense * leave) {
                steps.add(new Step(column.cut(p, q, leave), true));
                inside = false;
            }
        }
        return steps.toImmutable();
    }

    private void cut(Opening opening, Column column, Facet facet, ImmutableList<Facet> free) {
        ImmutableList<Step> steps = around(column, facet.outline(), true);
        ImmutableList<Vertex> tops = steps.select(Step::inside).collect(Step::corner);
        Vertex topB = tops.getFirst();
        Vertex topA = tops.getLast();
        Vertex a = topA.at(column.floor());
        Vertex b = topB.at(column.floor());
        replace(facet, facet.withOutline(Ring.tidy(with(steps, Lists.immutable.of(topB, b, a, topA)))));
        Optional<Facet> over = free.detectOptional(each -> each.faces(Exposure.Kind.OUTDOORS)
                && foot(column, each).size() >= 2
                && foot(column, each).size() == tops.size()
                && near(foot(column, each).getFirst(), topA)
                && near(foot(column, each).getLast(), topB));
        String name = over.map(Facet::name).orElse(facet.whole() + ", in the light well of " + opening.name());
        over.ifPresentOrElse(
                each -> replace(
                        each,
                        each.withOutline(Ring.tidy(
                                with(around(column, each.outline(), false), Lists.immutable.of(topA, a, b, topB))))),
                () -> facets.add(
                        facets.indexOf(facets.detect(each -> each.name().equals(facet.name()))) + 1,
                        new Facet(
                                name,
                                facet.whole(),
                                facet.partOf(),
                                facet.use(),
                                facet.assembly(),
                                Exposure.outdoors(),
                                Lists.immutable.of(a, b).newWithAll(tops),
                                facet.inset(),
                                facet.traits())));
        placed.put(opening.name(), new Placed(opening, name, a, b, topA, topB));
    }

    private static ImmutableList<Vertex> foot(Column column, Facet facet) {
        boolean beside = facet.outline().noneSatisfy(v -> column.at(v) < column.from());
        return beside
                ? Lists.immutable.empty()
                : around(column, facet.outline(), false).select(Step::inside).collect(Step::corner);
    }

    private static boolean near(Vertex one, Vertex other) {
        return one.minus(other).length() <= Vertex.ONE;
    }

    /** An outline with the corners in a column replaced. */
    private static ImmutableList<Vertex> with(ImmutableList<Step> steps, ImmutableList<Vertex> instead) {
        int at = steps.detectIndex(Step::inside);
        MutableList<Vertex> corners =
                steps.reject(Step::inside).collect(Step::corner).toList();
        corners.addAll(at, instead.castToList());
        return corners.toImmutable();
    }

    private void replace(Facet facet, Facet by) {
        facets.set(facets.detectIndex(each -> each.name().equals(facet.name())), by);
    }
}
