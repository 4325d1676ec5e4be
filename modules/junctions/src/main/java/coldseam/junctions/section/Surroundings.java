package coldseam.junctions.section;

import coldseam.conduction.Environment;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import coldseam.envelope.Exposure;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The environments of a section: the rooms, and what each band faces.
 *
 * @param first what the first band faces
 * @param second what the second band faces; the first's where the kind has one surface
 */
public record Surroundings(Space first, Space second) {

    public static final String INDOOR = "indoor";
    public static final String OUTDOOR = "outdoor";

    /** The rooms again, as a frame or door faces them where surface temperatures are sought: beside, not on it. */
    public static final String INDOOR_AT_OPENING = "indoor, at the opening";

    /** m²·K/W, of surfaces that lie in no band's plane indoors, and of those in unheated spaces. */
    public static final double STILL_AIR = 0.13;

    /** m²·K/W, of surfaces outdoors (ISO 6946:2017 table 7, from memory). */
    public static final double OPEN_AIR = 0.04;

    /**
     * One environment outside the rooms.
     *
     * @param name of it
     * @param factor temperature factor b
     * @param surfaceResistance m²·K/W
     */
    public record Space(String name, double factor, double surfaceResistance) {}

    /** What surfaces with these exposures face. */
    public static Surroundings of(Exposure first, Exposure second) {
        return new Surroundings(space(first), space(second));
    }

    private static Space space(Exposure exposure) {
        return switch (exposure.kind()) {
            case OUTDOORS, GROUND -> new Space(OUTDOOR, 1, OPEN_AIR);
            case CRAWL_SPACE -> new Space("crawl space", exposure.factor(), STILL_AIR);
            case UNHEATED, PARTY ->
                new Space(
                        exposure.neighbour().isEmpty() ? "neighbour" : exposure.neighbour(),
                        exposure.factor(),
                        STILL_AIR);
        };
    }

    /** The spaces outside, each once; open air last where a detail needs it. */
    public ImmutableList<Space> spaces() {
        MutableList<Space> all = Lists.mutable.of(first);
        if (!second.name().equals(first.name())) {
            all.add(second);
        }
        return all.toImmutable();
    }

    /** W/(m·K), of the rooms with each of some spaces that a solved section faces, by its temperature factor. */
    public static Interval coupling(Solution heatFlow, ImmutableList<Space> spaces) {
        Interval coupling = Interval.of(0);
        for (Space space : spaces) {
            if (space.factor() > 0 && faces(heatFlow, space.name())) {
                coupling = coupling.plus(heatFlow.coupling(INDOOR, space.name()).times(space.factor()));
            }
        }
        return coupling;
    }

    /**
     * fRsi of a solved section's lowest surface temperature, °C: between the coldest environment that is outdoors in full, and
     * indoors; 1 where all air is as warm as the rooms.
     */
    public static double temperatureFactor(Solution surface, double lowest) {
        double indoor = surface.section()
                .environments()
                .detect(each -> each.name().equals(INDOOR))
                .temperature();
        double outdoor = surface.section()
                .environments()
                .collectDouble(each -> each.temperature())
                .min();
        return indoor > outdoor ? (lowest - outdoor) / (indoor - outdoor) : 1;
    }

    private static boolean faces(Solution solution, String environment) {
        return solution.section().environments().anySatisfy(each -> each.name().equals(environment));
    }

    /** The environments at these temperatures, °C. */
    ImmutableList<Environment> environments(double indoor, double outdoor) {
        return Lists.mutable
                .of(new Environment(INDOOR, indoor, STILL_AIR), new Environment(INDOOR_AT_OPENING, indoor, STILL_AIR))
                .withAll(spaces().collect(space -> new Environment(
                        space.name(), indoor - space.factor() * (indoor - outdoor), space.surfaceResistance())))
                .toImmutable();
    }
}
