package coldseam.envelope.shell.roof;

import static coldseam.envelope.shell.roof.PlanVectors.cross;
import static coldseam.envelope.shell.roof.PlanVectors.distance;
import static coldseam.envelope.shell.roof.PlanVectors.dot;
import static coldseam.envelope.shell.roof.PlanVectors.unit;
import static coldseam.envelope.shell.roof.RoofSkeleton.ONE;

import coldseam.envelope.Point2;
import java.util.function.IntPredicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** A level section's rings taken apart where they touch themselves or one another; what has no area is a ridge. */
final class SectionRings {

    /** A side of a section: where it begins, and whose side it is. */
    record Start(int side, Point2 at) {}

    /** A part of a section without area: a line, and the upright side that stands over it, or −1. */
    record Ridge(Point2 from, Point2 to, int upright) {}

    /** A part of a side, the section on its left. */
    private record Piece(int side, Point2 from, Point2 to) {

        boolean against(Piece other) {
            return from.equals(other.to) && to.equals(other.from);
        }
    }

    private final IntPredicate upright;
    private final MutableList<MutableList<Start>> rings = Lists.mutable.empty();
    private final MutableList<Ridge> ridges = Lists.mutable.empty();

    private SectionRings(IntPredicate upright) {
        this.upright = upright;
    }

    /**
     * @param section its rings: counterclockwise, those of courts clockwise
     * @param upright whether a side has no run
     * @param courts whether it may have courts
     */
    static SectionRings of(MutableList<MutableList<Start>> section, IntPredicate upright, boolean courts) {
        SectionRings apart = new SectionRings(upright);
        if (courts) {
            apart.join(section);
        } else {
            section.forEach(ring -> apart.part(parted(ring, places(ring))));
        }
        return apart;
    }

    /** Those that have an area, in order. */
    MutableList<MutableList<Start>> rings() {
        return rings;
    }

    MutableList<Ridge> ridges() {
        return ridges;
    }

    /** Places of sides' starts, those within the reach of one another once. */
    private static ImmutableList<Point2> places(MutableList<Start> starts) {
        MutableList<Point2> places = Lists.mutable.empty();
        starts.forEach(start -> {
            if (places.noneSatisfy(p -> distance(p, start.at()) <= ONE)) {
                places.add(start.at());
            }
        });
        return places.toImmutable();
    }

    /** The ring with corners within the reach of one another in one place, and on each side the corners that lie on it. */
    private static MutableList<Start> parted(MutableList<Start> ring, ImmutableList<Point2> all) {
        MutableList<Point2> places = ring.collect(start -> all.detect(p -> distance(p, start.at()) <= ONE));
        MutableList<Start> parted = Lists.mutable.empty();
        for (int i = 0; i < ring.size(); i++) {
            Point2 a = places.get(i);
            Point2 b = places.get((i + 1) % ring.size());
            int side = ring.get(i).side();
            if (a.equals(b)) {
                continue;
            }
            parted.add(new Start(side, a));
            Point2 along = unit(a, b);
            double length = distance(a, b);
            all.select(p -> {
                        Point2 off = new Point2(p.x() - a.x(), p.y() - a.y());
                        return dot(off, along) > 0
                                && dot(off, along) < length
                                && !p.equals(b)
                                && Math.abs(cross(along, off)) <= ONE;
                    })
                    .toSortedListBy(p -> distance(a, p))
                    .forEach(p -> parted.add(new Start(side, p)));
        }
        return parted;
    }

    /**
     * Where a court's outline and another's come together they are one.
     *
     * <p>Pieces that run against one another are a ridge. Of several ways on from a place a ring takes the one that keeps
     * the section beside it to itself: the first clockwise.
     */
    private void join(MutableList<MutableList<Start>> section) {
        ImmutableList<Point2> places = places(section.flatCollect(ring -> ring));
        MutableList<Piece> pieces = Lists.mutable.empty();
        section.forEach(ring -> {
            MutableList<Start> starts = parted(ring, places);
            starts.forEachWithIndex((start, i) -> pieces.add(new Piece(
                    start.side(),
                    start.at(),
                    starts.get((i + 1) % starts.size()).at())));
        });
        for (Piece piece : pieces.toImmutable()) {
            Piece other = pieces.contains(piece) ? pieces.detect(piece::against) : null;
            if (other != null) {
                pieces.remove(piece);
                pieces.remove(other);
                ridge(new Start(piece.side(), piece.from()), new Start(other.side(), other.from()));
            }
        }
        while (pieces.notEmpty()) {
            Piece first = pieces.getFirst();
            MutableList<Start> ring = Lists.mutable.empty();
            Piece here = first;
            do {
                Piece at = here;
                ring.add(new Start(at.side(), at.from()));
                here = pieces.select(p -> p.from().equals(at.to()))
                        .minByOptional(p -> clockwise(at, p))
                        .orElse(first);
                pieces.remove(here);
            } while (here != first);
            rings.add(ring);
        }
    }

    /** Radians clockwise from the way back along a piece to the way on along another. */
    private static double clockwise(Piece here, Piece next) {
        Point2 back = unit(here.to(), here.from());
        Point2 on = unit(next.from(), next.to());
        double angle = Math.atan2(-cross(back, on), dot(back, on));
        return angle <= 0 ? angle + 2 * Math.PI : angle;
    }

    /** Makes a ring rings that come to each place once. */
    private void part(MutableList<Start> ring) {
        for (int i = 0; i < ring.size(); i++) {
            for (int j = i + 1; j < ring.size(); j++) {
                if (ring.get(i).at().equals(ring.get(j).at())) {
                    MutableList<Start> rest = ring.subList(j, ring.size()).toList();
                    rest.addAllIterable(ring.subList(0, i));
                    part(ring.subList(i, j).toList());
                    part(rest);
                    return;
                }
            }
        }
        if (ring.size() == 2) {
            ridge(ring.get(0), ring.get(1));
        } else if (ring.size() > 2) {
            rings.add(ring);
        }
    }

    private void ridge(Start one, Start other) {
        int over = upright.test(one.side()) ? one.side() : upright.test(other.side()) ? other.side() : -1;
        ridges.add(new Ridge(one.at(), other.at(), over));
    }
}
