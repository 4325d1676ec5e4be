package coldseam.junctions.section;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.kind.Chart;
import java.util.EnumMap;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.locationtech.jts.geom.Geometry;

/**
 * A seam's section laid along one of its surfaces, whose undisturbed layers run to the right: x is the distance from the seam's
 * line into the surface, as it is measured on the outer face, y that outside its inner face, m.
 *
 * @param surfaceTemperature likewise, with 0.25 m²·K/W indoors
 * @param faces what is seen of each conducting piece
 * @param surface the band that runs away, its inner face at zero
 * @param surroundings the environments
 * @param end x, where the surface is cut
 * @param page from here to where a place lies in the detail's own section
 */
public record SeamRun(
        Section heatFlow,
        Section surfaceTemperature,
        ImmutableList<Composition.Face> faces,
        Band surface,
        Surroundings surroundings,
        double end,
        UnaryOperator<Point> page) {

    /** m, within which a corner lies on a layer's face: turning a section moves it by rounding. */
    private static final double ON_A_FACE = 5e-7;

    /**
     * Lays a detail's section along a surface.
     *
     * @param cut at which the surface ends
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range, or the section shows no such surface
     */
    public static SeamRun of(Detail detail, JunctionSetup setup, Chart.Cut cut) {
        if (!(detail.drawing() instanceof BandDrawing drawing)) {
            throw DetailDoesNotFit.of(detail.who() + " is drawn by hand, not by bands");
        }
        Scene scene = Scene.of(detail, drawing, setup);
        Composer composer = new Composer(detail, scene, Painter.paint(scene));
        EnumMap<Chart.Cut, Double> cuts = composer.cutDistances();
        Band band = scene.band(cut.ofFirst())
                .filter(there -> cuts.containsKey(cut))
                .orElseThrow(() -> DetailDoesNotFit.of(detail.who() + " draws no surface that runs away there"));
        Composition composition = composer.composed();
        double line = line(scene, cut);
        Band surface = band.moved(-band.inside());
        ImmutableList<Double> levels = surface.strata()
                .select(Band.Stratum::solved)
                .collect(Band.Stratum::solvedOutside)
                .newWith(0.0);
        UnaryOperator<Point> laid = at -> {
            double y = scene.chart().across(cut.ofFirst(), at) - band.inside();
            return new Point(
                    cut.sign() * scene.chart().along(cut.ofFirst(), at) - line,
                    levels.detectIfNone(level -> Math.abs(level - y) < ON_A_FACE, () -> y));
        };
        UnaryOperator<Point> page =
                at -> scene.chart().beside(cut.ofFirst(), at.y() + band.inside(), cut.sign() * (at.x() + line));
        return new SeamRun(
                laid(composition.heatFlow(), laid),
                laid(composition.surfaceTemperature(), laid),
                composition.faces().collect(face -> laid(face, laid)),
                surface,
                composition.surroundings(),
                cuts.get(cut) - line,
                page);
    }

    /** This one turned over, so that x is the distance from a line so far from its own, m, on its surface. */
    public SeamRun turned(double distance) {
        UnaryOperator<Point> laid = at -> new Point(distance - at.x(), at.y());
        return new SeamRun(
                laid(heatFlow, laid),
                laid(surfaceTemperature, laid),
                faces.collect(face -> laid(face, laid)),
                surface,
                surroundings,
                distance - end,
                at -> page.apply(laid.apply(at)));
    }

    /**
     * m along the surface, away from where the section's axes meet, of the line from which the house measures: where the outer
     * faces meet, the frame's edge, or the upper face of a storey's floor.
     */
    private static double line(Scene scene, Chart.Cut cut) {
        Chart chart = scene.chart();
        Point at = switch (scene.form().second()) {
            case SURFACE ->
                chart.corner(
                        scene.first().outside(), scene.second().orElseThrow().outside());
            case THING -> chart.at(0, scene.secondOutside());
            case FRAME -> chart.at(0, 0);
            case DOOR -> throw DetailDoesNotFit.of("a door's threshold is the seam that it stands on");
        };
        return cut.sign() * chart.along(cut.ofFirst(), at);
    }

    /** A section moved, its boundaries with the resistances they have where it was. */
    public static Section laid(Section section, UnaryOperator<Point> laid) {
        return new Section(
                section.name(),
                section.symmetry(),
                section.regions()
                        .collect(each -> new Region(
                                each.material(),
                                each.conductivity(),
                                new Polygon(each.outline().corners().collect(laid::apply)))),
                section.environments(),
                section.boundaries()
                        .collect(each -> new Boundary(
                                each.environment(),
                                each.path().collect(laid::apply),
                                OptionalDouble.of(each.surfaceResistance()
                                        .orElseGet(() -> section.environments()
                                                .detect(there -> there.name().equals(each.environment()))
                                                .surfaceResistance())))),
                Lists.immutable.empty());
    }

    private static Composition.Face laid(Composition.Face face, UnaryOperator<Point> laid) {
        Geometry area = Shapes.union(Shapes.outlines(face.area())
                .collect(each -> Shapes.of(each.corners().collect(laid::apply))));
        return new Composition.Face(area, face.conductivity(), face.insulates());
    }
}
