package coldseam.junctions.vertex;

import coldseam.envelope.CornerKind;
import coldseam.envelope.CornerKind.Side;
import coldseam.envelope.KindForm;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.CornerDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.section.Composer;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A corner of each kind between build-ups a builder would use, for looking at its details before there is a house. */
public final class TypicalCorner {

    private static final int LEVEL = 2;

    private TypicalCorner() {}

    /**
     * A corner that a detail is for: with the first details of its edges, from the worst on, that leave it open; where none does,
     * with the worst ones, and by its own detail as if a house had named it.
     *
     * @param catalogue with the details of its edges
     */
    public static VertexSetup of(TypicalBuild build, Detail corner, Catalogue catalogue) {
        CornerDrawing drawing = (CornerDrawing) corner.drawing();
        ImmutableList<VertexSetup> all =
                choices(build, drawing, catalogue).collect(details -> of(build, drawing.kind(), details));
        Optional<VertexSetup> open = all.detectOptional(TypicalCorner::isOpen);
        VertexSetup setup = open.orElseGet(all::getFirst);
        return setup.with(CornerDetail.find(setup, Lists.immutable.of(corner), open.isEmpty()));
    }

    private static boolean isOpen(VertexSetup bare) {
        try {
            VertexBody.of("corner", bare);
            return false;
        } catch (DetailDoesNotFit open) {
            return true;
        }
    }

    /** Every set of details of the edges that a corner's detail is for, in the edges' order. */
    private static ImmutableList<ImmutableList<Detail>> choices(
            TypicalBuild build, CornerDrawing drawing, Catalogue catalogue) {
        ImmutableList<ImmutableList<Detail>> all = Lists.immutable.of(Lists.immutable.empty());
        for (CornerKind.Edge edge : drawing.kind().edges()) {
            ImmutableList<Detail> options = catalogue
                    .options(edge.kind())
                    .select(drawing::meets)
                    .select(detail -> Composer.isFor(detail, build.setup(edge.kind())));
            all = all.flatCollect(before -> options.collect(before::newWith));
        }
        return all;
    }

    /**
     * A corner of a kind.
     *
     * @param details of its edges, in their order
     */
    static VertexSetup of(TypicalBuild build, CornerKind kind, ImmutableList<Detail> details) {
        MutableList<EdgeEnd> ends = Lists.mutable.empty();
        kind.edges().forEachWithIndex((edge, i) -> {
            int along = kind.surfaces().indexOf(edge.surface());
            int wall = along == LEVEL ? 0 : 1 - along;
            boolean thing = edge.kind().form().second() == KindForm.Second.THING;
            ends.add(new EdgeEnd(
                    along,
                    edge.runs() == Side.BEFORE,
                    along == LEVEL ? 0 : thing ? wall : LEVEL,
                    along == LEVEL ? 1 : thing ? LEVEL : wall,
                    details.get(i),
                    build.setup(edge.kind())));
        });
        return new VertexSetup(
                CornerDetail.rooms(kind, Lists.immutable.of(0, 1, 2)), ends.toImmutable(), kind.upwards());
    }
}
