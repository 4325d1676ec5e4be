package coldseam.envelope.file.house;

import coldseam.envelope.House;
import coldseam.envelope.file.Position;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A house with the places of what can only be checked later, once the shell is built and the catalogue is read.
 *
 * @param house checked as far as the file alone allows
 * @param choices places of the junction choices, in the order of {@link House#choices()}
 * @param ownPsi places of the own psi values, in the order of {@link House#ownPsi()}
 * @param openings place of the surface's name of each opening, by the opening's name
 * @param seams place of the surface's name of each seam, by the seam's name
 * @param points places of each set of points, in the order of {@link House#points()}
 * @param detailPrices place of each detail that has a price, by the detail's name
 */
public record LoadedHouse(
        House house,
        ImmutableList<ChoicePlaces> choices,
        ImmutableList<ChoicePlaces> ownPsi,
        ImmutableMap<String, Position> openings,
        ImmutableMap<String, Position> seams,
        ImmutableList<PointPlaces> points,
        ImmutableMap<String, Position> detailPrices) {

    /**
     * Places of a set of points.
     *
     * @param name of its name
     * @param surface of the surface's name
     * @param detail of the detail's id; of the name where there is none
     * @param along of the neighbour's name; of the name where there is none
     * @param parameters of the names of its parameters
     */
    public record PointPlaces(
            Position name,
            Position surface,
            Position detail,
            Position along,
            ImmutableMap<String, Position> parameters) {}

    /**
     * Places of a junction choice or own psi value.
     *
     * @param subject of the detail's id, or of the own psi value
     * @param surfaces of the selector's surface names, in its order
     * @param parameters of the names of a detail's parameters, by the name
     * @param values of their values, by the name
     */
    public record ChoicePlaces(
            Position subject,
            ImmutableList<Position> surfaces,
            ImmutableMap<String, Position> parameters,
            ImmutableMap<String, Position> values) {

        /** Without parameters. */
        public ChoicePlaces(Position subject, ImmutableList<Position> surfaces) {
            this(subject, surfaces, Maps.immutable.empty(), Maps.immutable.empty());
        }
    }
}
