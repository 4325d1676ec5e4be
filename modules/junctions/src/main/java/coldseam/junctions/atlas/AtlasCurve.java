package coldseam.junctions.atlas;

import coldseam.conduction.Interval;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.JunctionMeasures;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * One option over the thicknesses of a sweep.
 *
 * @param sweep what changes
 * @param points by thickness
 */
public record AtlasCurve(Sweep sweep, Detail detail, ImmutableList<AtlasPoint> points) {

    /**
     * One thickness.
     *
     * @param thickness m
     * @param measures what was computed; empty where the option does not fit
     * @param reasons why it does not
     */
    public record AtlasPoint(double thickness, Optional<Measures> measures, ImmutableList<Phrase> reasons) {

        static AtlasPoint of(double thickness, JunctionMeasures result) {
            return new AtlasPoint(
                    thickness,
                    Optional.of(new Measures(
                            result.psiExternal(),
                            result.psiInternal(),
                            result.temperatureFactor(),
                            result.penLine().unbroken(),
                            result.penLine().neck(),
                            result.weakestPath().ratio(),
                            result.outcome().got() <= result.outcome().asked())),
                    Lists.immutable.empty());
        }

        static AtlasPoint misfit(double thickness, ImmutableList<Phrase> reasons) {
            return new AtlasPoint(thickness, Optional.empty(), reasons);
        }
    }

    /**
     * What is kept of a result.
     *
     * @param psiExternal W/(m·K)
     * @param psiInternal W/(m·K)
     * @param temperatureFactor fRsi, an estimate
     * @param unbroken whether the pen line is
     * @param neck m
     * @param ratio of the weakest path
     * @param met whether the interval is as narrow as was asked for
     */
    public record Measures(
            Interval psiExternal,
            Interval psiInternal,
            double temperatureFactor,
            boolean unbroken,
            double neck,
            double ratio,
            boolean met) {}
}
