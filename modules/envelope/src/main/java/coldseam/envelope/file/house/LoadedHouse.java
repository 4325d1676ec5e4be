package coldseam.envelope.file.house;

import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.OwnPsi;
import coldseam.envelope.PointBridges;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A house with the places of what can only be checked later, once the shell is built and the catalogue is read.
 *
 * @param house checked as far as the file alone allows
 * @param choices the junction choices, as placed in the file
 * @param ownPsi the own psi values, likewise
 * @param openings place of the surface's name of each opening, by the opening's name
 * @param seams place of the surface's name of each seam, by the seam's name
 * @param points each set of points, as placed in the file
 * @param detailPrices place of each detail that has a price, by the detail's name
 */
public record LoadedHouse(
        House house,
        ImmutableList<PlacedChoice> choices,
        ImmutableList<PlacedPsi> ownPsi,
        ImmutableMap<String, Position> openings,
        ImmutableMap<String, Position> seams,
        ImmutableList<PlacedPoints> points,
        ImmutableMap<String, Position> detailPrices) {

    /**
     * A junction choice with its places.
     *
     * @param choice one of {@link House#choices()}
     * @param detail place of the detail's id
     * @param surfaces the selector's surface names
     * @param parameters m, the lengths of the detail that are other here, by name
     */
    public record PlacedChoice(
            JunctionChoice choice,
            Position detail,
            ImmutableList<Located<String>> surfaces,
            ImmutableList<Named<Located<Double>>> parameters) {}

    /**
     * An own psi value with its places.
     *
     * @param psi one of {@link House#ownPsi()}
     * @param surfaces the selector's surface names
     */
    public record PlacedPsi(OwnPsi psi, ImmutableList<Located<String>> surfaces) {}

    /**
     * A set of points with its places.
     *
     * @param points one of {@link House#points()}
     * @param name place of its name
     * @param surface place of the surface's name
     * @param detail place of the detail's id; of the name where there is none
     * @param along place of the neighbour's name; of the name where there is none
     * @param parameters m, the lengths of the detail that are other here, by name
     */
    public record PlacedPoints(
            PointBridges points,
            Position name,
            Position surface,
            Position detail,
            Position along,
            ImmutableList<Named<Double>> parameters) {}
}
