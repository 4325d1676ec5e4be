package coldseam.junctions.section;

import coldseam.conduction.Point;
import coldseam.envelope.KindForm;
import coldseam.envelope.Role;
import coldseam.junctions.kind.Chart;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Geometry;

/**
 * Where a pen line must begin and arrive.
 *
 * @param places lines in the section, two of them
 * @param arrivesIn a frame, which counts as reached where insulation touches it: its body carries the line on
 */
record PenEnds(ImmutableList<Geometry> places, Optional<Geometry> arrivesIn) {

    static PenEnds of(Scene scene, Map<Chart.Cut, Double> cuts) {
        Geometry start = across(scene, Chart.Cut.FIRST_AWAY, scene.first(), cuts);
        return switch (scene.form().second()) {
            case SURFACE -> surface(scene, cuts, start);
            case THING -> of(start, across(scene, Chart.Cut.FIRST_BEYOND, scene.first(), cuts));
            case FRAME, DOOR -> frame(scene, cuts, start);
        };
    }

    private static PenEnds of(Geometry start, Geometry end) {
        return new PenEnds(Lists.immutable.of(start, end), Optional.empty());
    }

    private static PenEnds surface(Scene scene, Map<Chart.Cut, Double> cuts, Geometry start) {
        Band band = scene.second().orElseThrow();
        Geometry end = across(scene, Chart.Cut.SECOND_AWAY, band, cuts);
        if (band.exposure().factor() > 0) {
            return of(start, end);
        }
        if (!scene.chart().crossing()) {
            // The line may leave at the face to the neighbour's rooms, or through boards that stand on his roof: a
            // third of
            // their depth from their end, whose own face is no narrow place.
            double at = cuts.getOrDefault(Chart.Cut.SECOND_AWAY, 0.0);
            Band first = scene.first();
            double foot = (first.inside(Role.INSULATION) - first.outside(Role.INSULATION)) / 3;
            return of(
                    start,
                    end.union(Shapes.line(
                                    scene.chart().at(band.outside(), 0),
                                    scene.chart().at(band.outside(), at)))
                            .union(Shapes.line(
                                    scene.chart().at(first.inside(Role.INSULATION), foot),
                                    scene.chart().at(first.outside(Role.INSULATION), foot))));
        }
        // Behind a party wall it is as warm as here: the line may leave at the neighbour's side, or in a lining of the
        // wall.
        double reach = scene.first().thickness();
        double cut = cuts.getOrDefault(Chart.Cut.SECOND_AWAY, 0.0) * Chart.Cut.SECOND_AWAY.sign();
        Geometry lining = Shapes.line(
                scene.chart().beside(false, band.inside() - reach, cut),
                scene.chart().beside(false, band.inside(), cut));
        Geometry line = Shapes.line(
                scene.chart().at(-reach, band.thickness()), scene.chart().at(2 * reach, band.thickness()));
        return of(start, end.union(line).union(lining));
    }

    private static Geometry across(Scene scene, Chart.Cut cut, Band band, Map<Chart.Cut, Double> cuts) {
        double at = cuts.getOrDefault(cut, 0.0) * cut.sign();
        return Shapes.line(
                scene.chart().beside(cut.ofFirst(), band.inside(), at),
                scene.chart().beside(cut.ofFirst(), band.outside(), at));
    }

    private static PenEnds frame(Scene scene, Map<Chart.Cut, Double> cuts, Geometry start) {
        double depth = scene.setup().opening().orElseThrow().frameDepth();
        double outside = scene.frameOutside();
        double inside = outside - depth;
        Chart chart = scene.chart();
        Point a;
        Point b;
        ImmutableList<Point> body;
        if (scene.form().second() == KindForm.Second.FRAME) {
            double past = Composer.FRAME_WIDTH + Composer.PAST_THE_CUT;
            a = chart.at(inside, Composer.FRAME_WIDTH);
            b = chart.at(outside, Composer.FRAME_WIDTH);
            body = Lists.immutable.of(
                    chart.at(inside, 0), chart.at(outside, 0), chart.at(outside, past), chart.at(inside, past));
        } else {
            double cut = cuts.getOrDefault(Chart.Cut.SECOND_AWAY, 0.0);
            double past = cut + Composer.PAST_THE_CUT;
            Point sillIn = chart.at(scene.scope().get("door.sill"), inside);
            Point sillOut = chart.at(scene.scope().get("door.sill"), outside);
            a = chart.beside(false, inside, cut);
            b = chart.beside(false, outside, cut);
            body = Lists.immutable.of(
                    sillIn, sillOut, chart.beside(false, outside, past), chart.beside(false, inside, past));
        }
        return new PenEnds(Lists.immutable.of(start, Shapes.line(a, b)), Optional.of(Shapes.of(body)));
    }
}
