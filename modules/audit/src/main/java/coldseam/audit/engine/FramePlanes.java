package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.engine.Merit.Score;
import coldseam.junctions.BridgeResult;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * The best option of each sheet. A frame stands in one plane: the sheets of an opening's sides, and of all openings that share a
 * sheet with it, are given the best options of the plane in which they are best together.
 */
final class FramePlanes {

    private FramePlanes() {}

    /**
     * What stands to choose at the places of one sheet.
     *
     * @param built what is there, or stands in
     * @param chosen whether somebody chose it
     * @param others what else fits
     * @param size of all the places, m or how many
     * @param openings whose sides they are, by name
     */
    record Choice<R extends BridgeResult>(
            R built, boolean chosen, ImmutableList<R> others, double size, ImmutableSet<String> openings) {

        ImmutableList<R> all() {
            return Lists.immutable.of(built).newWithAll(others);
        }
    }

    /**
     * The best of a choice.
     *
     * @param elsewhere m, the plane of the others that share openings with it, where nothing of this choice is in it
     */
    record Found<R extends BridgeResult>(R best, OptionalDouble elsewhere) {}

    /** The best of each, in the order of the choices. */
    static <R extends BridgeResult> ImmutableList<Found<R>> best(ImmutableList<Choice<R>> choices, Merit merit) {
        Map<Choice<R>, Found<R>> best = new IdentityHashMap<>();
        for (ImmutableList<Choice<R>> together : together(choices)) {
            best.putAll(planes(together)
                    .collect(plane -> in(plane, together, merit))
                    .min(Comparator.comparing(Plane::score))
                    .best());
        }
        return choices.collect(best::get);
    }

    /** Those that share openings, directly or through others; what is at none stands alone. */
    private static <R extends BridgeResult> ImmutableList<ImmutableList<Choice<R>>> together(
            ImmutableList<Choice<R>> choices) {
        MutableList<ImmutableList<Choice<R>>> groups = Lists.mutable.empty();
        for (Choice<R> choice : choices) {
            ImmutableList<ImmutableList<Choice<R>>> sharing = groups.select(
                            group -> group.anySatisfy(each -> each.openings().anySatisfy(choice.openings()::contains)))
                    .toImmutable();
            groups.removeAllIterable(sharing);
            groups.add(sharing.flatCollect(group -> group).newWith(choice));
        }
        return groups.toImmutable();
    }

    /** Where frames may stand: where those that somebody chose do, else wherever an option has one; none where nothing has. */
    private static <R extends BridgeResult> ImmutableList<OptionalDouble> planes(ImmutableList<Choice<R>> choices) {
        ImmutableList<OptionalDouble> chosen =
                choices.select(Choice::chosen).collect(each -> each.built().frameSetBack());
        ImmutableList<OptionalDouble> any = choices.flatCollect(Choice::all).collect(BridgeResult::frameSetBack);
        return Lists.immutable
                .of(chosen, any)
                .collect(planes -> planes.select(OptionalDouble::isPresent).distinct())
                .detectIfNone(ImmutableList::notEmpty, () -> Lists.immutable.of(OptionalDouble.empty()));
    }

    /** The best of each choice in one plane, and how good they are together. */
    private record Plane<R extends BridgeResult>(Map<Choice<R>, Found<R>> best, Score score) {}

    private static <R extends BridgeResult> Plane<R> in(
            OptionalDouble plane, ImmutableList<Choice<R>> choices, Merit merit) {
        Map<Choice<R>, Found<R>> best = new IdentityHashMap<>();
        Score score = Score.NOTHING;
        for (Choice<R> choice : choices) {
            ImmutableList<R> there = choice.all().select(option -> isIn(plane, option));
            R found = (there.isEmpty() ? choice.all() : there).minBy(option -> merit.score(option, 1));
            best.put(choice, new Found<>(found, there.isEmpty() ? plane : OptionalDouble.empty()));
            score = score.plus(merit.score(found, choice.size()).missing(there.isEmpty() ? 1 : 0));
        }
        return new Plane<>(best, score);
    }

    private static boolean isIn(OptionalDouble plane, BridgeResult option) {
        OptionalDouble there = option.frameSetBack();
        return plane.isEmpty() || there.isEmpty() || BridgeSheet.inOnePlane(plane.getAsDouble(), there.getAsDouble());
    }
}
