package coldseam.envelope.file.house;

import coldseam.envelope.Compass;
import coldseam.envelope.Point2;
import coldseam.files.Fault;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Nearest;
import coldseam.files.Position;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * A storey's outline and those of its courts, in the file's order: their sides, counted through, and the words for them.
 *
 * <p>A side of a court is meant by the court's name before the word, and faces into the court: its north wall stands south of it.
 *
 * @param footprint corners, m
 * @param courts corners by name, m
 */
record StoreyOutlines(ImmutableList<Point2> footprint, ImmutableList<Named<ImmutableList<Point2>>> courts) {

    /** m, between a court and what is next to it, so that there may be a room; our own rule, as for storeys. */
    private static final double NARROWEST = 0.5;

    private static final String NUMBER = "side [1-9]\\d?";

    /** A side: of which outline, and which of it. */
    private record Side(String court, ImmutableList<Point2> outline, int number) {

        String words(String word) {
            return court.isEmpty() ? word : court + " " + word;
        }

        Compass facing() {
            Compass away = Outline.facing(outline, number);
            return court.isEmpty() ? away : away.opposite();
        }

        String compass() {
            return words(facing().word());
        }

        String numbered() {
            return words("side " + (number + 1));
        }
    }

    private ImmutableList<Side> sides() {
        return sides("", footprint).newWithAll(courts.flatCollect(court -> sides(court.name(), court.value())));
    }

    private static ImmutableList<Side> sides(String court, ImmutableList<Point2> outline) {
        return outline.collectWithIndex((corner, i) -> new Side(court, outline, i));
    }

    int count() {
        return sides().size();
    }

    /** The way a side faces; those of a court do so into it. */
    Compass facing(int side) {
        return sides().get(side).facing();
    }

    /** The compass word of the way a side faces, after its court's name. */
    String word(int side) {
        return sides().get(side).compass();
    }

    /** Its number, after its court's name. */
    String numbered(int side) {
        return sides().get(side).numbered();
    }

    /** The sides meant; none where the word means nothing here. */
    ImmutableList<Integer> of(String word) {
        ImmutableList<Side> all = sides();
        return Lists.immutable.fromStream(IntStream.range(0, all.size())
                .filter(i -> word.equals("all")
                        || word.equals(all.get(i).court())
                        || word.equals(all.get(i).compass())
                        || word.equals(all.get(i).numbered()))
                .boxed());
    }

    /** What is said of each side by the narrowest word that means it: a single side, then a compass word, a court, and all. */
    <T> ImmutableMap<Integer, T> narrowest(ImmutableList<Named<T>> said) {
        ImmutableList<Side> all = sides();
        MutableMap<Integer, T> bySide = Maps.mutable.empty();
        said.toSortedListBy(each -> all.anySatisfy(side -> side.numbered().equals(each.name()))
                        ? 3
                        : all.anySatisfy(side -> side.compass().equals(each.name()))
                                ? 2
                                : each.name().equals("all") ? 0 : 1)
                .forEach(each -> of(each.name()).forEach(side -> bySide.put(side, each.value())));
        return bySide.toImmutable();
    }

    /** The fault of a word that means no side. */
    Fault none(String word, Position place) {
        MutableList<String> words = Lists.mutable.with("all");
        sides().forEach(side -> words.add(side.compass()));
        words.add("side 1 to side " + footprint.size());
        courts.forEach(court -> words.add(court.name() + ", " + court.name() + " side 1 to side "
                + court.value().size()));
        MutableList<String> known = words.distinct();
        return new Fault(
                place,
                "no side of this footprint is meant by this",
                '"' + word + '"',
                known.makeString(", "),
                Nearest.meant(word, known).orElse("write one of them"));
    }

    private ImmutableList<ImmutableList<Point2>> outlines() {
        return Lists.immutable.of(footprint).newWithAll(courts.collect(Named::value));
    }

    /** The outlines as the house has them: counterclockwise, those of courts clockwise. */
    ImmutableList<ImmutableList<Point2>> turned() {
        return outlines().collectWithIndex((outline, o) -> backwards(outline, o) ? outline.toReversed() : outline);
    }

    private static boolean backwards(ImmutableList<Point2> outline, int number) {
        return Outline.signedArea(outline) < 0 == (number == 0);
    }

    /** A side's index in them. */
    int turned(int side) {
        int first = 0;
        int number = 0;
        for (ImmutableList<Point2> outline : outlines()) {
            int size = outline.size();
            if (side < first + size) {
                // Backwards, side i becomes the old side n − 2 − i: it runs between the same two corners.
                return backwards(outline, number) ? first + Math.floorMod(size - 2 - (side - first), size) : side;
            }
            first += size;
            number++;
        }
        throw new IllegalArgumentException("no side " + side);
    }

    /** What is said of each side, in their order. */
    <T> ImmutableList<T> turned(ImmutableList<T> bySide) {
        // Turned twice a side is where it was.
        return bySide.collectWithIndex((each, i) -> bySide.get(turned(i)));
    }

    /** What is said of each corner of the footprint, or of all outlines, in the order of the turned ones. */
    <T> ImmutableList<T> turnedCorners(ImmutableList<T> byCorner) {
        MutableList<T> turned = Lists.mutable.empty();
        outlines().forEachWithIndex((outline, o) -> {
            ImmutableList<T> own = byCorner.drop(turned.size()).take(outline.size());
            turned.addAllIterable(backwards(outline, o) ? own.toReversed() : own);
        });
        return turned.toImmutable();
    }

    /** In plan, m, without the courts. */
    Geometry polygon() {
        Geometry polygon = Outline.polygon(footprint);
        for (Named<ImmutableList<Point2>> court : courts) {
            polygon = polygon.difference(Outline.polygon(court.value()));
        }
        return polygon;
    }

    /** Adds a fault for each court that is none of this footprint. */
    void check(Faults faults) {
        Polygon outer = Outline.polygon(footprint);
        courts.forEachWithIndex((court, i) -> {
            String name = court.name();
            Polygon inner = Outline.polygon(court.value());
            if (name.equals("all")
                    || name.matches(NUMBER)
                    || Lists.immutable
                            .of(Compass.values())
                            .anySatisfy(way -> way.word().equals(name))) {
                faults.add(
                        court.place(),
                        "a court needs a name that means no side",
                        '"' + name + '"',
                        "name it otherwise, such as court or west court");
            }
            if (!outer.covers(inner)) {
                faults.add(
                        court.place(),
                        "a court lies within its storey's footprint",
                        Phrase.of('"' + name + "\", of which ")
                                .and(inner.difference(outer).getArea(), Dimension.AREA)
                                .and(" lie outside it"),
                        Phrase.of("all of it within the footprint"),
                        "check both outlines; one that is open to a side is drawn by the footprint itself");
            } else {
                apart(court, outer.getExteriorRing(), "the footprint's outline", faults);
            }
            courts.take(i)
                    .forEach(other ->
                            apart(court, Outline.polygon(other.value()), "court \"" + other.name() + '"', faults));
        });
    }

    private static void apart(Named<ImmutableList<Point2>> court, Geometry other, String what, Faults faults) {
        double distance = Outline.polygon(court.value()).distance(other);
        if (distance < NARROWEST) {
            faults.add(
                    court.place(),
                    "between a court and what is next to it there is a room",
                    Phrase.of('"' + court.name() + "\", ")
                            .and(distance, Dimension.LENGTH)
                            .and(" from " + what),
                    Phrase.of(NARROWEST, Dimension.LENGTH).and(" and more"),
                    "move or shrink it; courts that meet are one, and one at the outline is drawn by the footprint itself");
        }
    }
}
