package coldseam.audit;

import coldseam.envelope.Control;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.PointResult;
import coldseam.junctions.detail.Connection;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * One computed point, for all the points it stands for.
 *
 * @param id such as "P3", in the order of the report
 * @param result computed
 * @param best the best option of its kind for the same surface; empty where it is this one, or where none fits
 * @param points names of the sets of points of the house file
 * @param number of all of them
 * @param chosen whether the house file chose the detail
 * @param dewPointHumidity indoor relative humidity, 0 to 1, at which the coldest point reaches the dew point at the design
 *     temperatures; 1 where it never does
 * @param mouldHumidity the same for the mould limit, 80 % on the surface
 */
public record PointSheet(
        String id,
        PointResult result,
        Optional<PointResult> best,
        ImmutableList<String> points,
        int number,
        boolean chosen,
        double dewPointHumidity,
        double mouldHumidity)
        implements BridgeSheet {

    @Override
    public String kind() {
        return result.detail().kind().label();
    }

    @Override
    public Option option() {
        return option(result);
    }

    @Override
    public Optional<Option> better() {
        return best.map(PointSheet::option);
    }

    private static Option option(PointResult of) {
        return new Option(of.detail().id(), of.detail().name(), of.chi(), of.chi(), Optional.empty());
    }

    @Override
    public ImmutableMap<Control, Connection> connections() {
        return result.detail().connections();
    }

    @Override
    public double temperatureFactor() {
        return result.temperatureFactor();
    }

    @Override
    public Dimension dimension() {
        return Dimension.POINT_TRANSMITTANCE;
    }
}
