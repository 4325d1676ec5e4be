package coldseam.envelope;

import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What stays of an old house: the structure of every surface that is not built new.
 *
 * @param builtNew names of the surfaces whose structure is new, or of roofs or storeys all of whose surfaces are
 * @param balloonFrame whether the studs of framed walls that stay run past the floors
 * @param takenDown parts that come down all the same, such as a parapet, in the words of the details that ask for it
 * @param found what is there before anything is built; empty where the file does not say
 * @param order of building, where it is told: names of assemblies and of {@link #OTHER_MEASURES}, each once
 */
public record Retrofit(
        ImmutableSet<String> builtNew,
        boolean balloonFrame,
        ImmutableSet<String> takenDown,
        Optional<Found> found,
        ImmutableList<String> order) {

    /**
     * What is there before anything is built.
     *
     * @param assemblies build-ups as they are found, by the names of those that take their place
     * @param windows windows and doors as they are found, by their names
     * @param choices which detail is there, the first that matches; where none does, the worst of the kind is taken
     */
    public record Found(
            ImmutableMap<String, Assembly> assemblies,
            ImmutableMap<String, Window> windows,
            ImmutableList<JunctionChoice> choices) {

        /**
         * A window or door as it is found; place, size and depth of the frame stay.
         *
         * @param rating what is known of its thermal transmittance
         * @param setBack m, from the old wall's outer face to the frame's; the detail's own place where empty
         */
        public record Window(Opening.Rating rating, OptionalDouble setBack) {}

        private Opening opening(Opening planned) {
            Window found = windows.get(planned.name());
            return found == null ? planned : planned.with(found.rating(), planned.frameDepth(), found.setBack());
        }

        /** The house as it is found; what is not known of it is as it will be. */
        House in(House planned) {
            return planned.withAssemblies(planned.assemblies().collectValues(assemblies::getIfAbsentValue))
                    .withOpenings(planned.openings().collect(this::opening))
                    .withChoices(choices);
        }
    }

    /** The measure of every window and door that becomes another. */
    public static final String OPENINGS = "windows and doors";

    /** The measure of every set of points that becomes another. */
    public static final String POINTS = "points";

    /** The measure of every detail that becomes another where nothing beside it does. */
    public static final String DETAILS = "details";

    /** Those that are no build-up. */
    public static final ImmutableList<String> OTHER_MEASURES = Lists.immutable.of(OPENINGS, POINTS, DETAILS);

    /** The part that takes all of a roof down with it. */
    public static final String ROOF = "roof";

    @Noun("what comes down with what")
    record FileTakenDown(ImmutableMap<String, String> comesDownWith, ImmutableList<String> ofTheWall) {}

    private static final FileTakenDown PARTS =
            new ResourceFolder("/kinds/").read("taken-down.yaml", FileTakenDown.class, Maps.immutable.empty());

    /** Parts that come down with another, each with that one. */
    public static ImmutableMap<String, String> comesDownWith() {
        return PARTS.comesDownWith();
    }

    /** Parts of a wall, which are new in one that is. */
    public static ImmutableList<String> ofTheWall() {
        return PARTS.ofTheWall();
    }

    /** Whether a part is the roof's, or the roof itself. */
    public static boolean isOfTheRoof(String part) {
        return ROOF.equals(part) || ROOF.equals(comesDownWith().get(part));
    }

    /** Whether a part comes down, by itself or with what it belongs to. */
    public boolean takesDown(String part) {
        return takenDown.contains(part)
                || comesDownWith().containsKey(part)
                        && takenDown.contains(comesDownWith().get(part));
    }
}
