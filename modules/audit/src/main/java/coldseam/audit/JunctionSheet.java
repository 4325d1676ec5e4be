package coldseam.audit;

import coldseam.envelope.Control;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Connection;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * One computed junction, for all the edges it stands for.
 *
 * @param id such as "J3", in the order of the report
 * @param result computed; for edges with an own psi too, where a detail is chosen
 * @param best the best option of the catalogue for the same setup; empty where it is this one, or where none fits
 * @param options all of the catalogue that fit the same setup, from worst to best as it ranks them
 * @param edges names of the shell's edges
 * @param length m, of all of them, in the site's dimension system
 * @param chosen whether the house file chose the detail
 * @param dewPointHumidity indoor relative humidity, 0 to 1, at which the coldest point reaches the dew point at the design
 *     temperatures; 1 where it never does
 * @param mouldHumidity the same for the mould limit, 80 % on the surface
 */
public record JunctionSheet(
        String id,
        JunctionResult result,
        Optional<JunctionResult> best,
        ImmutableList<JunctionResult> options,
        ImmutableList<String> edges,
        double length,
        boolean chosen,
        double dewPointHumidity,
        double mouldHumidity)
        implements BridgeSheet {

    @Override
    public String kind() {
        return result.setup().kind().label();
    }

    @Override
    public Option option() {
        return option(result);
    }

    @Override
    public Optional<Option> better() {
        return best.map(JunctionSheet::option);
    }

    private static Option option(JunctionResult of) {
        return new Option(
                of.detail().id(),
                of.detail().name(),
                of.psiExternal(),
                of.psiInternal(),
                of.detail().cost());
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
        return Dimension.LINEAR_TRANSMITTANCE;
    }
}
