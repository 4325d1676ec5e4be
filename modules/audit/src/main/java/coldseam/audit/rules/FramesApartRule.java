package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.envelope.Opening;
import coldseam.files.Groups;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.tuple.primitive.ObjectDoublePair;
import org.eclipse.collections.impl.tuple.primitive.PrimitiveTuples;

/** The frame of a window or door stands in one plane in the details of all its sides. */
public final class FramesApartRule implements Rule {

    /**
     * One frame in two planes.
     *
     * @param openings that are drawn alike, by name
     * @param outer the sheet that draws the frame farthest out
     * @param inner the one that draws it farthest in
     * @param from m, from the outer face of the wall to the frame's in the outer one
     * @param to the same in the inner one
     */
    public record Found(
            ImmutableList<String> openings, BridgeSheet<?> outer, BridgeSheet<?> inner, double from, double to)
            implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("set back at the least", from, Dimension.THICKNESS),
                    Value.of("at the most", to, Dimension.THICKNESS));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionRow> beside = facts.rows()
                .selectInstancesOf(JunctionRow.class)
                .select(row -> row.sheet().filter(BridgeSheet::chosen).isPresent()
                        && row.edge().opening().isPresent());
        ImmutableList<Drawn> apart = facts.house()
                .openings()
                .collect(opening -> Drawn.of(opening, beside))
                .select(Drawn::apart);
        return Groups.by(apart, Drawn::sheets).collect(this::draft);
    }

    /**
     * How the sides of an opening draw its frame.
     *
     * @param rows of its sides
     * @param frames the sheets that draw it, with its set-back in m; from the outside in
     */
    private record Drawn(
            Opening opening, ImmutableList<JunctionRow> rows, ImmutableList<ObjectDoublePair<BridgeSheet<?>>> frames) {

        static Drawn of(Opening opening, ImmutableList<JunctionRow> beside) {
            ImmutableList<JunctionRow> rows = beside.select(
                    row -> row.edge().opening().orElseThrow().name().equals(opening.name()));
            MutableList<ObjectDoublePair<BridgeSheet<?>>> frames = Lists.mutable.empty();
            rows.flatCollect(row -> row.sheet().stream().toList())
                    .distinctBy(BridgeSheet::id)
                    .forEach(sheet -> sheet.result()
                            .frameSetBack()
                            .ifPresent(metres -> frames.add(PrimitiveTuples.pair(sheet, metres))));
            return new Drawn(
                    opening, rows, frames.sortThisBy(ObjectDoublePair::getTwo).toImmutable());
        }

        boolean apart() {
            return frames.size() > 1
                    && !BridgeSheet.inOnePlane(
                            frames.getFirst().getTwo(), frames.getLast().getTwo());
        }

        /** Their ids. */
        ImmutableList<String> sheets() {
            return frames.collect(frame -> frame.getOne().id());
        }
    }

    private Draft draft(ImmutableList<Drawn> alike) {
        ObjectDoublePair<BridgeSheet<?>> outer = alike.getFirst().frames().getFirst();
        ObjectDoublePair<BridgeSheet<?>> inner = alike.getFirst().frames().getLast();
        ImmutableList<String> openings = alike.collect(drawn -> drawn.opening().name());
        return new Draft(
                "frames apart " + openings.getFirst(),
                Severity.WEAK,
                new Found(openings, outer.getOne(), inner.getOne(), outer.getTwo(), inner.getTwo()),
                new Subject.Bridges(alike.flatCollect(Drawn::rows)));
    }
}
