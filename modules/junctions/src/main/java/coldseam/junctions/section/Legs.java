package coldseam.junctions.section;

import coldseam.assemblies.ground.Basement;
import coldseam.conduction.Point;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionResult.Leg.Part;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.kind.Chart;
import java.util.Map;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The plane parts of a section whose U·l is taken off its coupling.
 *
 * <p>Internal lengths end where the inner faces meet, external ones where the outer faces meet, so that psi_internal −
 * psi_external = Σ b·U·Δl. Where one surface goes on on both sides of an internal floor or partition both lengths count it
 * in. A floor on the ground has the U of ISO 13370 for the house's B', without edge insulation, which is drawn; its
 * external length is half of B'. Beside a cellar the wall counts apart below the ground, with the Ubw of ISO 13370.
 */
final class Legs {

    /** m; the formulas of a basement need some depth. */
    private static final double LEAST_DEPTH = 0.1;

    private final Scene scene;
    private final Map<Chart.Cut, Double> cuts;
    private final MutableList<JunctionResult.Leg> list = Lists.mutable.empty();
    private final MutableList<Double> factors = Lists.mutable.empty();
    private double weakest = Double.POSITIVE_INFINITY;

    Legs(Scene scene, Map<Chart.Cut, Double> cuts) {
        this.scene = scene;
        this.cuts = cuts;
        switch (scene.form().second()) {
            case SURFACE -> surfaces();
            case THING -> through();
            case FRAME -> frame();
            case DOOR -> door();
        }
    }

    ImmutableList<JunctionResult.Leg> legs() {
        return list.toImmutable();
    }

    /** Temperature factor b of what each leg faces. */
    ImmutableList<Double> factors() {
        return factors.toImmutable();
    }

    /** m²·K/W, the smaller of the plane parts' resistances without surfaces; of those that face a colder place. */
    double weakestNeighbour() {
        return weakest;
    }

    private void surfaces() {
        Band first = scene.first();
        Band second = scene.second().orElseThrow();
        Point corner = scene.chart().corner(first.outside(), second.outside());
        if (scene.form().ground() && scene.depth() > LEAST_DEPTH) {
            cellar(first, second, corner);
            return;
        }
        band(first, true, corner);
        band(second, false, corner);
    }

    /** Floor and wall of a cellar as ISO 13370 counts them: the wall apart below and above the ground. */
    private void cellar(Band floor, Band wall, Point corner) {
        double depth = scene.depth();
        JunctionSetup.GroundBlock ground = scene.setup().ground().orElseThrow();
        Basement basement = Basement.of(ground.strip(), depth, floor.resistance(), wall.resistance());
        double inwards = cut(Chart.Cut.FIRST_AWAY);
        add(Part.FIRST, floor, basement.transmittance(), inwards - scene.chart().along(true, corner), inwards);
        double above = cut(Chart.Cut.SECOND_AWAY) - depth;
        add(Part.SECOND, wall, wall.transmittance(), above, above);
        list.add(new JunctionResult.Leg(
                Part.IN_THE_GROUND,
                wall.name() + " in the ground",
                basement.wallTransmittance(),
                depth - scene.chart().along(false, corner),
                depth,
                wall.insulationThickness()));
        factors.add(wall.exposure().factor());
    }

    private void band(Band band, boolean first, Point corner) {
        double cut = cut(first ? Chart.Cut.FIRST_AWAY : Chart.Cut.SECOND_AWAY);
        double outer = cut - scene.chart().along(first, corner);
        add(
                first ? Part.FIRST : Part.SECOND,
                band,
                first && scene.form().ground() ? groundTransmittance(scene) : band.transmittance(),
                outer,
                cut);
    }

    private double cut(Chart.Cut cut) {
        Double at = cuts.get(cut);
        if (at == null) {
            String band = cut.ofFirst()
                    ? scene.drawing().kind().first()
                    : scene.drawing().kind().second();
            throw DetailDoesNotFit.of("the drawing has no " + band
                    + " that reaches the end of the section; paint the band, or a block that runs away.");
        }
        return at;
    }

    private void add(Part part, Band band, double transmittance, double external, double internal) {
        list.add(new JunctionResult.Leg(
                part,
                part == Part.FIRST ? scene.setup().firstName() : band.name(),
                transmittance,
                external,
                internal,
                band.insulationThickness()));
        factors.add(band.exposure().factor());
        if (band.exposure().factor() > 0) {
            weakest = Math.min(weakest, band.resistance());
        }
    }

    private void through() {
        Band band = scene.first();
        double length = cut(Chart.Cut.FIRST_AWAY) + cuts.getOrDefault(Chart.Cut.FIRST_BEYOND, 0.0);
        double transmittance = scene.form().ground() ? groundTransmittance(scene) : band.transmittance();
        add(Part.FIRST, band, transmittance, length, length);
    }

    private void frame() {
        Band band = scene.first();
        double length = cut(Chart.Cut.FIRST_AWAY);
        add(Part.FIRST, band, band.transmittance(), length, length);
        opening("frame", Composer.FRAME_WIDTH);
    }

    private void opening(String name, double length) {
        var opening = scene.setup().opening().orElseThrow();
        list.add(new JunctionResult.Leg(
                Part.OPENING, name, opening.frameTransmittance(), length, length, opening.frameDepth()));
        factors.add(scene.setup().secondExposure().factor());
        weakest = Math.min(weakest, Composer.frameResistance(scene));
    }

    private void door() {
        Band first = scene.first();
        double wallOutside = scene.secondOutside();
        Point corner = scene.chart().corner(first.outside(), wallOutside);
        band(first, true, corner);
        double sill = scene.chart().along(false, scene.chart().at(scene.scope().get("door.sill"), 0));
        opening("door", cut(Chart.Cut.SECOND_AWAY) - sill);
        scene.second().ifPresent(wall -> {
            // What lies between the planes' meeting and the sill is wall in the take-off of areas.
            list.add(new JunctionResult.Leg(
                    Part.SECOND,
                    wall.name(),
                    wall.transmittance(),
                    sill - scene.chart().along(false, corner),
                    sill,
                    wall.insulationThickness()));
            factors.add(scene.setup().secondExposure().factor());
        });
    }

    /**
     * Metres of soil under a floor that an inner wall stands on, so that floor and soil have the U of ISO 13370: there is no
     * edge in that section, whose distance would say how much ground takes part.
     */
    static double soilUnderInnerWall(Scene scene) {
        Band floor = scene.first();
        double ground = 1 / groundTransmittance(scene) - floor.rsi() - floor.resistance() - floor.rse();
        return ground * scene.setup().ground().orElseThrow().conductivity();
    }

    private static double groundTransmittance(Scene scene) {
        return scene.setup().ground().orElseThrow().transmittance(scene.first().resistance());
    }
}
