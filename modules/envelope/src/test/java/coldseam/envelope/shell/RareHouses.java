package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Point2;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Houses with what few have, several rare things in each: what is true of every shell must be true of theirs. No house of fixtures/houses
 * has any of it.
 */
final class RareHouses {

    private static final Exposure PARTY = new Exposure(Exposure.Kind.PARTY, "next door", 0);
    private static final Exposure SHED = new Exposure(Exposure.Kind.UNHEATED, "shed", 0.8);

    private RareHouses() {}

    static ImmutableMap<String, House> all() {
        return Maps.mutable
                .<String, House>empty()
                .withKeyValue("row", Houses.house(row()))
                .withKeyValue("towers", Houses.house(towers()))
                .withKeyValue("pitches", Houses.house(pitches()))
                .withKeyValue("half hips", Houses.house(halfHips()))
                .withKeyValue("terraces", Houses.house(terraces()))
                .withKeyValue("lean-to", Houses.house(leanTo()))
                .toImmutable();
    }

    private static Body.Stack stack(String name, double level, Body.Roof roof, Body.Storey... storeys) {
        return Houses.stack(
                name,
                new Body.Base(
                        Body.Base.Kind.SLAB_ON_GROUND,
                        Optional.of("slab"),
                        Optional.empty(),
                        0,
                        level,
                        Optional.empty(),
                        Exposure.ground()),
                roof,
                storeys);
    }

    private static Body.Storeys body(Body.FootprintLine line, Body.Stack main, Body.Stack... wings) {
        return Houses.body(line, main, Lists.immutable.of(wings));
    }

    private static Body.Storey faced(Body.Storey storey, Exposure... sides) {
        Body.Storey faced = storey;
        for (int i = 0; i < sides.length; i++) {
            faced = sides[i] == null ? faced : Houses.facing(faced, i, sides[i]);
        }
        return faced;
    }

    private static Body.Roof roofed(String assembly, Body.Roof r) {
        return new Body.Roof(
                r.form(),
                r.insulatedAtCeiling(),
                Optional.of(assembly),
                r.gableAssembly(),
                r.pitch(),
                r.lowSide(),
                r.parapetHeight(),
                r.loftFactor(),
                r.sides(),
                r.collar(),
                r.dormers());
    }

    static Body.Roof with(Body.Roof r, Optional<Body.Collar> collar, Body.Dormer... dormers) {
        return new Body.Roof(
                r.form(),
                r.insulatedAtCeiling(),
                r.assembly(),
                r.gableAssembly(),
                r.pitch(),
                r.lowSide(),
                r.parapetHeight(),
                r.loftFactor(),
                r.sides(),
                collar,
                Lists.immutable.of(dormers));
    }

    /**
     * A house in a row: the party walls of its storeys differ in thickness, so that there is a step between them; the yard's wall
     * has a jog of 0.2 m, and the upper storey ends over the yard, and its slopes under a collar.
     */
    static Body.Storeys row() {
        Body.Storey ground = faced(
                Houses.storey(
                        "ground",
                        Houses.points(0, 0, 9, 0, 9, 11, 4, 11, 4, 10.8, 0, 10.8),
                        3,
                        Lists.immutable.of("wall", "wall", "thin", "thin", "thin", "thick")),
                null,
                PARTY,
                SHED,
                null,
                null,
                PARTY);
        Body.Storey upper = faced(
                Houses.storey(
                        "upper", Houses.rectangle(0, 0, 9, 8), 2.8, Lists.immutable.of("wall", "thin", "thin", "thin")),
                null,
                PARTY,
                null,
                PARTY);
        Body.Roof roof =
                with(Houses.roof(Body.Roof.Form.GABLE, 40, 0, false), Optional.of(new Body.Collar(5, "deck", 0.9)));
        return body(Body.FootprintLine.STRUCTURE, stack("", 0, roof, ground, upper));
    }

    /**
     * A flat-roofed house, a tower of its own that stands on its roof, in the plane of its south wall, and a taller wing
     * with thinner walls in the same plane, under whose slab the house's reaches.
     */
    static Body.Storeys towers() {
        Body.Stack main =
                stack("", 0, Houses.flat(), Houses.storey("hall", Houses.rectangle(0, 0, 12, 8), 3.15, "wall"));
        Body.Stack tower = stack(
                "tower",
                4,
                Houses.roof(Body.Roof.Form.HIP, 35, 0, false),
                Houses.storey("study", Houses.rectangle(1, 0, 4, 4), 2.6, "wall"),
                Houses.storey("look-out", Houses.rectangle(1, 0, 4, 4), 2.4, "wall"));
        Body.Stack wing = stack(
                "wing",
                -0.4,
                Houses.flat(),
                Houses.storey("wing below", Houses.rectangle(8, 0, 9, 5), 2.7, "thin"),
                Houses.storey("wing above", Houses.rectangle(9, 0, 8, 5), 2.5, "thin"));
        return body(Body.FootprintLine.OUTER_FACE, main, tower, wing);
    }

    /**
     * Three houses side by side: the slopes of the second cross those of the first along the wall between them, those of the third lie in
     * the planes of the second's, of another build-up, and end under a collar; the first has a dormer in its wall's face.
     */
    static Body.Storeys pitches() {
        Body.Stack main = stack(
                "",
                0,
                with(
                        Houses.roof(Body.Roof.Form.GABLE, 45, 0, false),
                        Optional.empty(),
                        new Body.Dormer("dormer", 2, true, OptionalDouble.empty(), 1, 2, 0, 1.3, 30, "wall", "deck")),
                Houses.storey("first", Houses.rectangle(0, 0, 8, 8), 3, "wall"));
        Body.Stack second = stack(
                "second",
                0,
                Houses.roof(Body.Roof.Form.GABLE, 25, 0, false),
                Houses.storey("second", Houses.rectangle(8, 0, 6, 8), 4, "wall"));
        Body.Stack third = stack(
                "third",
                0,
                with(
                        roofed("other roof", Houses.roof(Body.Roof.Form.GABLE, 25, 0, false)),
                        Optional.of(new Body.Collar(5, "deck", 0.9))),
                Houses.storey("third", Houses.rectangle(14, 0, 5, 8), 4, "wall"));
        return body(Body.FootprintLine.OUTER_FACE, main, second, third);
    }

    /**
     * Half-hips over a plan like a T: one begins as high as the ridge of the arm beside it, so that a side ends where another
     * begins to slope; the others higher and lower.
     */
    static Body.Storeys halfHips() {
        ImmutableList<Point2> tee = Houses.points(0, 0, 16, 0, 16, 8, 10, 8, 10, 14, 6, 14, 6, 8, 0, 8);
        Body.Roof sides = RoofsTest.roof(
                Body.Roof.Form.HIP,
                45,
                0,
                Maps.immutable.of(
                        1, new Body.RoofSide(45, 2), 4, new Body.RoofSide(60, 1), 7, new Body.RoofSide(55, 2.5)));
        Body.Roof roof = with(
                sides,
                Optional.empty(),
                new Body.Dormer("gabled dormer", 0, true, OptionalDouble.empty(), -3, 2, 0, 1.3, 30, "wall", "deck"),
                new Body.Dormer("shed dormer", 0, false, OptionalDouble.of(9), 0, 3, 0, 1.2, 10, "wall", "deck"));
        return Houses.body(roof, Houses.storey("tee", tee, 3, "wall"));
    }

    /** Storeys that step back all round and out again: terraces in a ring, overhangs, a court through the upper two. */
    static Body.Storeys terraces() {
        ImmutableList<ImmutableList<Point2>> court = Lists.immutable.of(Houses.points(5, 4, 5, 6.5, 7, 6.5, 8, 4));
        return Houses.body(
                Houses.flat(),
                Houses.storey("low", Houses.rectangle(0, 0, 14, 12), 3, "wall"),
                Houses.around(
                        Houses.storey(
                                "middle", Houses.points(2, 1.5, 11, 1.5, 11, 8.5, 4, 8.5, 4, 7, 2, 7), 2.8, "wall"),
                        court),
                Houses.around(Houses.storey("top", Houses.rectangle(2, 0.5, 10.5, 8), 2.8, "wall"), court));
    }

    /**
     * A lean-to whose slope rises from before the house through what its lower storey leaves open, a terrace and a lower roof of another
     * thickness, up to its upper storey's wall; a part of it stands over a crawl space.
     */
    static Body.Storeys leanTo() {
        Body.Storey plain = Houses.storey("ground", Houses.rectangle(0, 0, 12, 9), 3, "wall");
        Body.Storey ground = new Body.Storey(
                plain.name(),
                plain.footprint(),
                plain.courts(),
                plain.height(),
                plain.walls(),
                plain.terrace(),
                true,
                plain.overhang(),
                0,
                plain.floor(),
                Optional.of(new Body.LowerRoof(
                        Optional.of(Houses.rectangle(5, -1, 10, 6)),
                        "soffit",
                        0,
                        0,
                        0,
                        Optional.empty(),
                        Exposure.outdoors())),
                Optional.empty());
        Body.Stack lean = stack(
                "lean-to",
                0,
                Houses.roof(Body.Roof.Form.MONO_PITCH, 30, 0, false),
                Houses.storey("lean-to", Houses.rectangle(3, -3, 5, 5), 1, "wall"));
        Body.Base crawl = new Body.Base(
                Body.Base.Kind.SUSPENDED,
                Optional.of("thick"),
                Optional.empty(),
                0,
                0,
                Houses.base(Body.Base.Kind.SUSPENDED, 0, Exposure.ground()).crawlSpace(),
                new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1));
        Body.Stack main =
                stack("", 0, Houses.flat(), ground, Houses.storey("upper", Houses.rectangle(0, 3, 12, 6), 2.8, "thin"));
        return body(
                Body.FootprintLine.OUTER_FACE,
                new Body.Stack(
                        main.name(),
                        main.storeys(),
                        main.base(),
                        main.roof(),
                        Lists.immutable.of(new Body.AreaBase(Houses.rectangle(7, 4, 6, 6), crawl)),
                        main.ground()),
                lean);
    }
}
