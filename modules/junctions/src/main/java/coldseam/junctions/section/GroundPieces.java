package coldseam.junctions.section;

import coldseam.envelope.Body;
import coldseam.envelope.KindForm;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.language.Statement;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.section.Painter.Side;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What lies in the ground whatever the detail: the soil, and the house's own insulation along the rim of its slab. */
record GroundPieces(Scene scene) {

    /** Times the floor's width, how far the ground reaches outwards and down (ISO 10211:2017 clause 5.2.4, from memory). */
    static final double REACH = 2.5;

    /** The ground as a statement lays it, and edge insulation that lies flat in it; what was simplified goes to the notes. */
    ImmutableList<Painted> under(Statement.Ground ground, MutableList<String> notes) {
        JunctionSetup.GroundBlock block = scene.setup().ground().orElseThrow();
        if (scene.form().second() == KindForm.Second.THING) {
            notes.add("The ground under the inner wall is as deep as gives the floor beside it the U of ISO 13370.");
            return soil(block, underInnerWall());
        }
        notes.add("The ground reaches half the floor's width inwards, and 2.5 of it outwards and down (ISO 10211).");
        return soil(block, outlines(scene.value(ground.level()), REACH * block.floorWidth()))
                .newWithAll(boardLyingFlat(block));
    }

    private ImmutableList<ImmutableList<Chart.Place>> outlines(double level, double reach) {
        double floor = scene.first().outerFace();
        double face = scene.second().map(Band::outerFace).orElseGet(scene::secondOutside);
        Side inner = Side.on(Chart.Cut.FIRST_AWAY);
        Side far = Side.at(scene.secondOutside() + reach);
        // Under a floor that lies above the ground outdoors, it is filled up to the floor, as far as the foundation.
        Side foundation =
                Side.at(scene.second().map(wall -> wall.inside(Role.STRUCTURE)).orElse(0.0));
        return Lists.immutable
                .of(
                        Painter.rectangle(Side.at(floor), Side.at(Math.max(level, floor)), inner, foundation),
                        Painter.rectangle(Side.at(Math.max(level, 0)), Side.at(level + reach), inner, far),
                        // Beside a cellar it stands against the wall.
                        Painter.rectangle(Side.at(level), Side.at(0), Side.at(face), far))
                .flatCollect(each -> each.stream().toList());
    }

    private ImmutableList<ImmutableList<Chart.Place>> underInnerWall() {
        double floor = scene.first().outerFace();
        Side under = Side.at(floor + Legs.soilUnderInnerWall(scene));
        return Painter.rectangle(Side.at(floor), under, Side.on(Chart.Cut.FIRST_AWAY), Side.on(Chart.Cut.FIRST_BEYOND))
                .map(Lists.immutable::of)
                .orElse(Lists.immutable.empty());
    }

    private static ImmutableList<Painted> soil(
            JunctionSetup.GroundBlock block, ImmutableList<ImmutableList<Chart.Place>> outlines) {
        Material material = Material.conducting("ground", block.conductivity(), false, "the site");
        return outlines.collect(
                outline -> Painted.conducting("ground", outline, material, Role.STRUCTURE, new Origin.OfGround()));
    }

    /** Under the floor's build-up, from the wall's inner face inwards (ISO 13370:2017 annex D, from memory). */
    private ImmutableList<Painted> boardLyingFlat(JunctionSetup.GroundBlock block) {
        Optional<Body.EdgeInsulation> flat = block.edge().filter(edge -> !edge.vertical());
        double top = scene.first().outerFace();
        return board(
                flat,
                flat.flatMap(edge -> Painter.rectangle(
                        Side.at(top), Side.at(top + edge.thickness()), Side.at(-edge.extent()), Side.at(0))));
    }

    /**
     * Edge insulation that goes down from the ground outdoors, against whatever stands farthest out in it, in place of
     * a coat.
     *
     * @param painted all that the detail paints
     * @return empty where an inner wall parts the floor: there is no ground outdoors
     */
    ImmutableList<Painted> boardDownwards(ImmutableList<Painted> painted) {
        Statement.Ground ground = scene.drawing()
                .statements()
                .selectInstancesOf(Statement.Ground.class)
                .getFirst();
        if (ground == null || scene.form().second() == KindForm.Second.THING) {
            return Lists.immutable.empty();
        }
        Optional<Body.EdgeInsulation> down =
                scene.setup().ground().flatMap(JunctionSetup.GroundBlock::edge).filter(Body.EdgeInsulation::vertical);
        double level = scene.value(ground.level());
        double face = painted.select(each -> each.effect() == Painted.Effect.CONDUCTS
                        && each.role() != Role.CLADDING
                        && !(each.origin() instanceof Origin.OfGround))
                .flatCollect(Painted::solved)
                .select(place -> place.cut() == null && place.s() > level + Painter.SLACK)
                .collectDouble(Chart.Place::t)
                .maxIfEmpty(0);
        return board(
                down,
                down.flatMap(edge -> Painter.rectangle(
                        Side.at(level),
                        Side.at(level + edge.extent()),
                        Side.at(face),
                        Side.at(face + edge.thickness()))));
    }

    private static ImmutableList<Painted> board(
            Optional<Body.EdgeInsulation> edge, Optional<ImmutableList<Chart.Place>> outline) {
        if (outline.isEmpty()) {
            return Lists.immutable.empty();
        }
        Material material = edge.orElseThrow().material();
        Role role = material.insulates() ? Role.INSULATION : Role.STRUCTURE;
        Origin origin = new Origin.OfDetail("edge insulation");
        return Lists.immutable.of(Painted.conducting("edge insulation", outline.get(), material, role, origin));
    }
}
