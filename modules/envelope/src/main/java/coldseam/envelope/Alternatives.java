package coldseam.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What might be built otherwise, to be compared before framing.
 *
 * @param decisions each with what may be decided, in the file's order: junctions, assemblies, openings, points
 */
public record Alternatives(ImmutableList<Decision> decisions) {

    /**
     * One thing to decide.
     *
     * @param name unique among the decisions
     * @param about what is decided
     * @param described cost of what the house file describes, for each metre, square metre or piece; empty where it is not
     *     given, which counts as nothing: the options' costs are then extra costs
     * @param options other than what is described, at least one
     */
    public record Decision(String name, About about, Optional<Price> described, ImmutableList<Option> options) {

        /** The house with one of the options built. */
        public House applied(House house, Option option) {
            return about.match(
                    junctions -> house.withChoices(Lists.immutable
                            .of(detail(option).choice(junctions.which()))
                            .newWithAll(house.choices())),
                    assembly -> house.withAssemblies(house.assemblies()
                            .newWithKeyValue(assembly.assembly(), ((Change.BuildUp) option.change()).assembly())),
                    these -> house.withOpenings(house.openings()
                            .collect(opening -> these.openings().contains(opening.name())
                                    ? ((Change.Windows) option.change()).inPlaceOf(opening)
                                    : opening)),
                    set -> house.withPoints(house.points()
                            .collect(each -> each.name().equals(set.points())
                                    ? detail(option).points(each)
                                    : each)));
        }

        private static Change.Detail detail(Option option) {
            return (Change.Detail) option.change();
        }
    }

    /** Ids and files of every detail that some option names. */
    public ImmutableSet<String> details() {
        return decisions
                .flatCollect(Decision::options)
                .collect(Option::change)
                .selectInstancesOf(Change.Detail.class)
                .collect(Change.Detail::detail)
                .toImmutableSet();
    }

    /** The house with every detail named that some option names, so that its files are read; it is not to be audited. */
    public House allNamed(House house) {
        return decisions.injectInto(
                house,
                (named, decision) -> decision.about()
                        .match(
                                junctions -> decision.options().injectInto(named, decision::applied),
                                assembly -> named,
                                openings -> named,
                                set -> named.withPoints(named.points()
                                        .newWithAll(named.points()
                                                .select(each -> each.name().equals(set.points()))
                                                .flatCollect(each -> decision.options()
                                                        .collect(option ->
                                                                ((Change.Detail) option.change()).points(each)))))));
    }

    /**
     * One way to decide.
     *
     * @param name unique in its decision
     * @param cost for each metre, square metre or piece; empty where it is not given
     * @param remark of whoever wrote the file; may be empty
     */
    public record Option(String name, Change change, Optional<Price> cost, String remark) {}

    /**
     * What something costs.
     *
     * @param amount in the house's currency, for each metre of junction, m² of surface or opening, or point; zero or more
     * @param source such as "quotation of 3 October"
     */
    public record Price(double amount, String source) {}

    /** What is decided. */
    public sealed interface About {

        /** The detail of some junctions. */
        record Junctions(Selector which) implements About {}

        /** An assembly, wherever it is used. */
        record OfAssembly(String assembly) implements About {}

        /** Some openings together, by name. */
        record Openings(ImmutableList<String> openings) implements About {}

        /** The detail of a set of points, by name. */
        record Points(String points) implements About {}

        /** What its alternative makes of it. */
        default <T> T match(
                Function<Junctions, T> junctions,
                Function<OfAssembly, T> assembly,
                Function<Openings, T> openings,
                Function<Points, T> points) {
            if (this instanceof Junctions it) {
                return junctions.apply(it);
            }
            if (this instanceof OfAssembly it) {
                return assembly.apply(it);
            }
            return this instanceof Openings it ? openings.apply(it) : points.apply((Points) this);
        }

        /** Whether it moves the setups of other junctions, so that its options must be combined with all others. */
        default boolean movesOthers() {
            return match(junctions -> false, assembly -> true, openings -> true, points -> false);
        }
    }

    /** How the house is changed. */
    public sealed interface Change {

        /**
         * Another detail for the junctions or points.
         *
         * @param detail id, or the path of a file beside the house file
         * @param parameters m, lengths of the detail that are other here
         */
        record Detail(String detail, ImmutableMap<String, Double> parameters) implements Change {

            /** It, chosen for junctions. */
            JunctionChoice choice(Selector which) {
                return new JunctionChoice(which, detail, parameters);
            }

            PointBridges points(PointBridges set) {
                return new PointBridges(
                        set.name(), set.surface(), set.kind(), Optional.of(detail), set.count(), parameters);
            }
        }

        /** Another build-up under the assembly's name. */
        record BuildUp(Assembly assembly) implements Change {}

        /**
         * Other openings in the same places.
         *
         * @param rating what is known of their thermal transmittance
         * @param frameDepth m; as described where empty
         * @param setBack m, from the wall's outer face; as described where empty
         */
        record Windows(Opening.Rating rating, OptionalDouble frameDepth, OptionalDouble setBack) implements Change {

            /** It, where another opening was. */
            Opening inPlaceOf(Opening other) {
                return other.with(
                        rating, frameDepth.orElse(other.frameDepth()), setBack.isPresent() ? setBack : other.setBack());
            }
        }
    }
}
