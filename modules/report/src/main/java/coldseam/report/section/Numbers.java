package coldseam.report.section;

import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.section.SectionPicture.Key;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Sets each material's number: on it where there is room, else beside the drawing with a line to it. */
final class Numbers {

    private static final double RADIUS = Canvas.RING;

    private final PaintedParts parts;
    private final PageGrid grid;
    private final View view;
    private final Occupied occupied;
    private final ImmutableList<Key> keys;
    private final Box box;

    /** Key number of each part; 0 where it has none. */
    private final int[] numbers;

    /** Points from each square to where another number begins. */
    private final double[] room;

    /** @param box the whole drawing with its rim */
    Numbers(PaintedParts parts, PageGrid grid, View view, Occupied occupied, ImmutableList<Key> keys, Box box) {
        this.parts = parts;
        this.grid = grid;
        this.view = view;
        this.occupied = occupied;
        this.keys = keys;
        this.box = box;
        this.numbers = parts.parts()
                .collectInt(part -> keys.detectOptional(
                                key -> key.material().equals(part.material()) && key.look() == part.look())
                        .map(Key::number)
                        .orElse(0))
                .toArray();
        this.room = grid.room(this::number);
    }

    private int number(int part) {
        return part == PaintedParts.NOTHING ? 0 : numbers[part];
    }

    private int number(int row, int column) {
        return number(grid.part(row, column));
    }

    void draw(Canvas canvas) {
        List<Key> outside = new ArrayList<>();
        for (Key key : keys) {
            Spot inside = roomiest(key.number());
            if (inside == null) {
                outside.add(key);
            } else {
                badge(canvas, inside, key.number());
            }
        }
        for (Key key : outside) {
            leader(canvas, key.number());
        }
    }

    /** Where a badge fits with the most room to spare; null where it fits nowhere. */
    private Spot roomiest(int number) {
        Spot best = null;
        double most = RADIUS + 1;
        for (int r = 0; r < grid.rows(); r++) {
            for (int c = 0; c < grid.columns(); c++) {
                double d = Math.min(room[r * grid.columns() + c], 14);
                if (d > most && number(r, c) == number && occupied.free(around(grid.middle(r, c)))) {
                    most = d;
                    best = grid.middle(r, c);
                }
            }
        }
        return best;
    }

    private static Box around(Spot at) {
        return new Box(at.x() - RADIUS - 1, at.y() - RADIUS - 1, at.x() + RADIUS + 1, at.y() + RADIUS + 1);
    }

    private void badge(Canvas canvas, Spot at, int number) {
        occupied.take(around(at));
        canvas.disc(at, RADIUS, Palette.WHITE);
        canvas.ringed(number, at);
    }

    /** A line from a badge in the side margin to a place where the material is seen. */
    private record Leader(Spot badge, Spot tip) {

        /** What it costs for its length and direction alone; infinite where the badge would lie on the place. */
        double least() {
            double dx = badge.x() - tip.x();
            double dy = badge.y() - tip.y();
            double length = Math.sqrt(dx * dx + dy * dy);
            return length > RADIUS + 5 ? length + 0.6 * Math.min(Math.abs(dx), Math.abs(dy)) : Double.POSITIVE_INFINITY;
        }
    }

    /**
     * A place for a badge.
     *
     * @param index among all, which decides between places whose lines cost the same
     * @param near what no line from it costs less than
     */
    private record Place(Spot spot, int index, double near) {}

    /**
     * The cheapest line, the first of equal ones. What the shortest costs bounds the others from the start, and places for
     * the badge are tried from the nearest on, till none can win.
     */
    private void leader(Canvas canvas, int number) {
        List<Spot> tips = places(number);
        if (tips.isEmpty()) {
            return;
        }
        List<Place> places = badges(Box.around(Lists.immutable.ofAll(tips)));
        Leader shortest = shortest(places, tips);
        if (shortest == null) {
            return;
        }
        Leader best = null;
        int bestIndex = 0;
        double cheapest = Math.nextUp(shortest.least() + crossings(shortest, number, Double.MAX_VALUE));
        for (Place place : places) {
            if (place.near > cheapest) {
                break;
            }
            for (Spot tip : tips) {
                if (reach(place, tip) <= cheapest) {
                    Leader leader = new Leader(place.spot, tip);
                    double least = leader.least();
                    double cost = least <= cheapest ? least + crossings(leader, number, cheapest - least) : least;
                    if (cost < cheapest || cost == cheapest && place.index < bestIndex) {
                        cheapest = cost;
                        best = leader;
                        bestIndex = place.index;
                    }
                }
            }
        }
        draw(canvas, best, number);
    }

    /** The line that costs least where nothing is crossed; null where none is long enough to be one. */
    private static Leader shortest(List<Place> places, List<Spot> tips) {
        Leader shortest = null;
        double least = Double.MAX_VALUE;
        for (Place place : places) {
            if (place.near >= least) {
                break;
            }
            for (Spot tip : tips) {
                if (reach(place, tip) < least) {
                    Leader leader = new Leader(place.spot, tip);
                    if (leader.least() < least) {
                        least = leader.least();
                        shortest = leader;
                    }
                }
            }
        }
        return shortest;
    }

    /** No line from a place to a tip costs less. */
    private static double reach(Place place, Spot tip) {
        return Math.max(Math.abs(place.spot.x() - tip.x()), Math.abs(place.spot.y() - tip.y()));
    }

    /** Places for badges, those nearest to a box first. */
    private List<Place> badges(Box tips) {
        List<Place> out = new ArrayList<>();
        for (Spot at : badges()) {
            double dx = Math.max(0, Math.max(tips.x0() - at.x(), at.x() - tips.x1()));
            double dy = Math.max(0, Math.max(tips.y0() - at.y(), at.y() - tips.y1()));
            out.add(new Place(at, out.size(), Math.max(dx, dy)));
        }
        out.sort(Comparator.comparingDouble(Place::near));
        return out;
    }

    private void draw(Canvas canvas, Leader leader, int number) {
        Spot tip = leader.tip;
        double length = leader.badge.distance(tip);
        Spot start = leader.badge.plus(
                (tip.x() - leader.badge.x()) / length * RADIUS, (tip.y() - leader.badge.y()) / length * RADIUS);
        canvas.line(start, tip, Pen.of(1.4, Palette.WHITE));
        canvas.line(start, tip, Pen.of(0.45, Palette.INK));
        canvas.disc(tip, 1.3, Palette.INK);
        occupied.take(start, tip, 1.5);
        badge(canvas, leader.badge, number);
    }

    /** Places for badges beside the materials: in the air of the drawing and in its side margins. */
    private List<Spot> badges() {
        List<Spot> out = new ArrayList<>();
        Box page = view.page();
        for (double y = page.y0() + RADIUS + 2; y <= page.y1() - RADIUS - 2; y += 5) {
            for (double x : new double[] {box.x0() + RADIUS + 2, box.x1() - RADIUS - 2}) {
                if (occupied.free(around(new Spot(x, y)))) {
                    out.add(new Spot(x, y));
                }
            }
        }
        int reach = (int) Math.ceil((RADIUS + 2) / PageGrid.STEP);
        for (int r = reach; r < grid.rows() - reach; r += 3) {
            for (int c = reach; c < grid.columns() - reach; c += 3) {
                Spot at = grid.middle(r, c);
                boolean roomy = room[r * grid.columns() + c] > RADIUS + 2;
                if (roomy && number(r, c) == 0 && occupied.free(around(at))) {
                    out.add(at);
                }
            }
        }
        return out;
    }

    /** What a line costs for running over other lines and over other materials; no more is counted than enough. */
    private double crossings(Leader leader, int number, double enough) {
        Spot from = leader.badge;
        Spot to = leader.tip;
        double cost = 0;
        double length = from.distance(to);
        for (double t = RADIUS / length; t < 1 && cost <= enough; t += 4 / length) {
            Spot at = from.towards(to, t);
            if (!occupied.free(Box.about(at, 1, 1))) {
                cost += 20;
            }
            int met = number(grid.partAt(at.x(), at.y()));
            cost += met == 0 || met == number ? 0 : 6;
        }
        return cost;
    }

    /** Places where a material is seen, a few of them. */
    private List<Spot> places(int number) {
        List<Spot> out = new ArrayList<>();
        for (int r = 1; r < grid.rows() - 1; r++) {
            for (int c = 1; c < grid.columns() - 1; c++) {
                if (number(r, c) == number) {
                    out.add(grid.middle(r, c));
                }
            }
        }
        if (out.isEmpty()) {
            thin(number, out);
        }
        int every = Math.max(1, out.size() / 80);
        List<Spot> few = new ArrayList<>();
        for (int i = 0; i < out.size(); i += every) {
            few.add(out.get(i));
        }
        return few;
    }

    /** A layer thinner than the grid: the middles of its outline. */
    private void thin(int number, List<Spot> out) {
        for (PaintedParts.Seen edge : parts.seen(view.window())) {
            if (number(edge.left()) == number || number(edge.right()) == number) {
                Spot from = view.at(edge.from());
                Spot to = view.at(edge.to());
                for (double t = 0.1; t < 1; t += 0.1) {
                    Spot at = from.towards(to, t);
                    if (view.page().contains(at.x(), at.y())) {
                        out.add(at);
                    }
                }
            }
        }
    }
}
