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
                .toImmutable();
    }

    private static Body.Stack stack(String name, double level, Body.Roof roof, Body.Storey... storeys) {
        return new Body.Stack(
                name,
                Lists.immutable.of(storeys),
                new Body.Base(
                        Body.Base.Kind.SLAB_ON_GROUND,
                        Optional.of("slab"),
                        Optional.empty(),
                        0,
                        level,
                        Optional.empty(),
                        Exposure.ground()),
                roof,
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    private static Body.Storeys body(Body.FootprintLine line, Body.Stack main, Body.Stack... wings) {
        return new Body.Storeys(
                line,
                main.storeys(),
                main.base(),
                main.roof(),
                main.otherBases(),
                main.ground(),
                Lists.immutable.of(wings));
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

    /**
     * A house in a row: the party walls of its storeys differ in thickness, so that there is a step between them; the upper storey ends
     * over the yard, and its slopes under a collar.
     */
    static Body.Storeys row() {
        Body.Storey ground = faced(
                Houses.storey(
                        "ground",
                        Houses.rectangle(0, 0, 9, 11),
                        3,
                        Lists.immutable.of("wall", "wall", "thin", "thick")),
                null,
                PARTY,
                SHED,
                PARTY);
        Body.Storey upper = faced(
                Houses.storey(
                        "upper", Houses.rectangle(0, 0, 9, 8), 2.8, Lists.immutable.of("wall", "thin", "thin", "thin")),
                null,
                PARTY,
                null,
                PARTY);
        Body.Roof plain = Houses.roof(Body.Roof.Form.GABLE, 40, 0, false);
        Body.Roof roof = new Body.Roof(
                plain.form(),
                false,
                plain.assembly(),
                Optional.empty(),
                plain.pitch(),
                0,
                0,
                OptionalDouble.empty(),
                Maps.immutable.empty(),
                Optional.of(new Body.Collar(5, "deck", 0.9)),
                Lists.immutable.empty());
        return body(Body.FootprintLine.STRUCTURE, stack("", 0, roof, ground, upper));
    }

    /**
     * A flat-roofed house, a tower of its own that begins where that one ends and stands in the plane of its south wall, and a taller wing
     * with thinner walls in the same plane, under whose slab the house's reaches.
     */
    static Body.Storeys towers() {
        Body.Stack main =
                stack("", 0, Houses.flat(), Houses.storey("hall", Houses.rectangle(0, 0, 12, 8), 3.15, "wall"));
        Body.Stack tower = stack(
                "tower",
                3.5,
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
     * the planes of the second's, of another build-up.
     */
    static Body.Storeys pitches() {
        Body.Stack main = stack(
                "",
                0,
                Houses.roof(Body.Roof.Form.GABLE, 45, 0, false),
                Houses.storey("first", Houses.rectangle(0, 0, 8, 8), 3, "wall"));
        Body.Stack second = stack(
                "second",
                0,
                Houses.roof(Body.Roof.Form.GABLE, 25, 0, false),
                Houses.storey("second", Houses.rectangle(8, 0, 6, 8), 4, "wall"));
        Body.Stack third = stack(
                "third",
                0,
                roofed("other roof", Houses.roof(Body.Roof.Form.GABLE, 25, 0, false)),
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
        Body.Roof roof = new Body.Roof(
                sides.form(),
                false,
                sides.assembly(),
                sides.gableAssembly(),
                sides.pitch(),
                0,
                0,
                OptionalDouble.empty(),
                sides.sides(),
                Optional.empty(),
                Lists.immutable.of(
                        new Body.Dormer(
                                "gabled dormer", 0, true, OptionalDouble.empty(), -3, 2, 0, 1.3, 30, "wall", "deck"),
                        new Body.Dormer(
                                "shed dormer", 0, false, OptionalDouble.of(9), 0, 3, 0, 1.2, 10, "wall", "deck")));
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
}
