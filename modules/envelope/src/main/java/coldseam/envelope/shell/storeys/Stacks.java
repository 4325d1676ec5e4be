package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The storeys of all stacks of a body, counted through: those of the main stack, bottom → top, then those of each wing.
 *
 * @param all stacks, the main one first
 * @param storeys of all, in that order
 * @param owners for each storey the index of its stack
 */
record Stacks(ImmutableList<Body.Stack> all, ImmutableList<Body.Storey> storeys, ImmutableList<Integer> owners) {

    static Stacks of(Body.Storeys body) {
        MutableList<Integer> owners = Lists.mutable.empty();
        ImmutableList<Body.Stack> all = body.stacks();
        all.forEachWithIndex((stack, s) -> stack.storeys().forEach(storey -> owners.add(s)));
        return new Stacks(all, all.flatCollect(Body.Stack::storeys), owners.toImmutable());
    }

    int count() {
        return storeys.size();
    }

    Body.Storey storey(int k) {
        return storeys.get(k);
    }

    Body.Stack stack(int k) {
        return all.get(owners.get(k));
    }

    /** Whether a storey and the one counted after it are of one stack; false before the first and after the last. */
    boolean carries(int k) {
        return k >= 0 && k + 1 < count() && owners.get(k).equals(owners.get(k + 1));
    }

    /** The lowest storey of its stack. */
    int first(int k) {
        return owners.indexOf(owners.get(k));
    }

    /** m, z of its floor. */
    double floor(int k) {
        return StoreyLevels.floor(stack(k), k - first(k));
    }

    boolean lowest(int k) {
        return !carries(k - 1);
    }

    boolean top(int k) {
        return !carries(k);
    }

    /** Each storey that carries the next. */
    ImmutableList<Integer> pairs() {
        return Lists.immutable.fromStream(
                IntStream.range(0, count()).filter(this::carries).boxed());
    }

    /** The lowest storey of each stack. */
    ImmutableList<Integer> lowests() {
        return Lists.immutable.fromStream(
                IntStream.range(0, count()).filter(this::lowest).boxed());
    }

    /** The top storey of each stack. */
    ImmutableList<Integer> tops() {
        return Lists.immutable.fromStream(
                IntStream.range(0, count()).filter(this::top).boxed());
    }

    /** The index of a storey for its facets: stacks are a number apart, so that none takes the next one's for the storey above. */
    int level(int k) {
        return k + owners.get(k);
    }

    /** What is said after the name of a part there is one of in each stack. */
    String of(int k) {
        return stack(k).name().isEmpty() ? "" : " of " + stack(k).name();
    }
}
