package coldseam.envelope.file.house;

import coldseam.envelope.Body;
import coldseam.files.AlsoCalled;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Short;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

@Noun("a roof")
@Doc("What lies over the top storey.")
record FileRoof(
        @Doc("Its form; a terrace is a flat roof that one walks out on.")
        Body.Roof.Form form,

        @Doc("Name of the assembly that is insulated: the roof's or the ceiling's; none leaves a hole.")
        @Refers(value = "assembly", or = HouseFile.NONE)
        String assembly,

        @Doc("Whether the roof is insulated, or the top ceiling under a cold loft.") @Default("roof")
        InsulatedAt insulatedAt,

        @Doc("Assembly of gable triangles; that of the wall below where it is missing.") @Refers("assembly")
        Optional<String> gableAssembly,

        @Doc("Its pitch, such as 35 ° or 8:12; none for a flat roof or a terrace.")
        @Default("0 °")
        @Unit(Dimension.ANGLE)
        @Bounds(atLeast = "0 °", atMost = "75 °")
        double pitch,

        @Doc("The side on which a mono-pitch is lowest or along which the eaves of a gable run: south, or side 1.")
        Optional<Located<String>> lowSide,

        @Doc(
                "Sides of a gable or hip roof that rise otherwise: gable, slope or half hip, by a compass word or side 1 and so on;"
                        + " the narrower one wins.")
        @Default("")
        ImmutableList<Named<FileRoofSide>> sides,

        @Doc("A level ceiling between the slopes, below the ridge, with a cold loft over it.")
        Optional<Body.Collar> collar,

        @Doc("Dormers by name, on the slopes of a gable or hip roof that is insulated at its rafters.")
        @Default("")
        @Size(max = 20)
        ImmutableList<Named<FileDormer>> dormers,

        @Doc("Height of the parapets around flat roofs, lower roofs included, above the roof's outer face.")
        @Default("0 mm")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "3 m")
        double parapetHeight,

        @Doc("Temperature factor of a cold loft: 1 as cold as outdoors.")
        @Unit(Dimension.RATIO)
        @Bounds(atLeast = "0.5", atMost = "1", usual = "0.7 to 1")
        OptionalDouble loftFactor,

        Position place) {

    @Short
    @Noun("a roof's side")
    @Doc("How a roof rises over one side.")
    record FileRoofSide(
            @Doc("gable, slope or half hip.") Rise rise,

            @Doc("Pitch of its slope, where it is not the roof's.")
            @Unit(Dimension.ANGLE)
            @Bounds(atLeast = "1 °", atMost = "75 °")
            OptionalDouble pitch,

            @Doc("Height over the eaves up to which a half hip's gable stands.")
            @Unit(Dimension.LENGTH)
            @Bounds(above = "0 m", atMost = "20 m")
            OptionalDouble from,

            Position place) {

        FileRoofSide {
            if (rise == Rise.GABLE && pitch.isPresent()) {
                throw new BadValueException(
                        "pitch",
                        "a gable has no pitch",
                        Phrase.of(pitch.getAsDouble(), Dimension.ANGLE),
                        "remove the key, or write slope or half hip");
            }
            if (from.isPresent() != (rise == Rise.HALF_HIP)) {
                throw new BadValueException(
                        from.isPresent() ? "from" : "rise",
                        from.isPresent() ? "only a half hip has the key from" : "a half hip needs the key from",
                        Words.word(rise),
                        from.isPresent()
                                ? "remove the key, or write half hip"
                                : "add it: {rise: half hip, from: 1.5 m}, its height over the eaves");
            }
        }

        Body.RoofSide side(double roofPitch) {
            double gable = rise == Rise.GABLE ? Double.POSITIVE_INFINITY : from.orElse(0);
            return new Body.RoofSide(pitch.orElse(roofPitch), gable);
        }
    }

    /** Whether the rooms under it reach up to slopes. */
    boolean roomUnderSlopes() {
        return !form.isLevel() && insulatedAt == InsulatedAt.ROOF;
    }

    /** What rises over a side. */
    enum Rise {
        SLOPE,
        GABLE,
        HALF_HIP
    }

    FileRoof {
        boolean flat = form.isLevel();
        if (pitch > 0 && pitch < FileLowerRoof.LEAST_PITCH && insulatedAt == InsulatedAt.ROOF) {
            throw new BadValueException(
                    "pitch",
                    "a pitched roof slopes visibly",
                    Format.of("%.3g °", pitch),
                    "at least 1 °, or none for a flat roof",
                    "correct the pitch, or write form: flat without it");
        }
        if (flat != (pitch == 0)) {
            throw new BadValueException(
                    "pitch",
                    flat
                            ? (form == Body.Roof.Form.FLAT ? "a flat roof" : "a terrace") + " has no pitch"
                            : "a pitched roof needs a pitch",
                    Phrase.of(pitch, Dimension.ANGLE),
                    Phrase.of(flat ? "0 °" : "more than 0 ° and at most 75 °"),
                    flat ? "remove the key, or write mono pitch, gable or hip" : "add it, such as pitch: 35 °");
        }
        boolean needsLowSide = form == Body.Roof.Form.GABLE || form == Body.Roof.Form.MONO_PITCH;
        if (needsLowSide && lowSide.isEmpty()) {
            throw new BadValueException(
                    "form",
                    "a gable or mono pitch roof needs the key low-side",
                    "nothing",
                    "a compass word, or side 1 and so on",
                    "add it, such as low-side: south");
        }
        if (lowSide.isPresent() && !needsLowSide) {
            throw new BadValueException(
                    "lowSide",
                    "only a gable or mono pitch roof has the key low-side",
                    '"' + lowSide.get().value() + '"',
                    "remove the key, or change the form");
        }
        if (sides.notEmpty() && form != Body.Roof.Form.GABLE && form != Body.Roof.Form.HIP) {
            throw new BadValueException(
                    "sides",
                    "only a gable or hip roof has sides of their own",
                    Words.word(form),
                    "remove the key, or write form: hip");
        }
        boolean rafters =
                insulatedAt == InsulatedAt.ROOF && (form == Body.Roof.Form.GABLE || form == Body.Roof.Form.HIP);
        if (collar.isPresent() && !rafters) {
            throw new BadValueException(
                    "collar",
                    "only a gable or hip roof insulated at its rafters has a collar",
                    Words.word(form),
                    "remove the key, or change the form");
        }
        if (dormers.notEmpty() && !rafters) {
            throw new BadValueException(
                    "dormers",
                    "only a gable or hip roof insulated at its rafters has dormers",
                    Words.word(form),
                    "remove the key, or change the form");
        }
        if (form == Body.Roof.Form.TERRACE && insulatedAt == InsulatedAt.CEILING) {
            throw new BadValueException(
                    "insulatedAt",
                    "a terrace has no loft under it",
                    Words.word(insulatedAt),
                    Words.word(InsulatedAt.ROOF),
                    "remove the key, or write form: flat");
        }
        if (loftFactor.isPresent() && insulatedAt == InsulatedAt.ROOF) {
            throw new BadValueException(
                    "loftFactor",
                    "only a roof insulated at the ceiling has a cold loft",
                    String.valueOf(loftFactor.getAsDouble()),
                    "remove the key, or write insulated-at: ceiling");
        }
    }

    boolean hasColdLoft() {
        return insulatedAt == InsulatedAt.CEILING || collar.isPresent();
    }

    /** Refuses a parapet where no roof is flat. */
    void checkParapet(boolean hasLowerRoof, Faults faults) {
        if (parapetHeight > 0 && form != Body.Roof.Form.FLAT && !hasLowerRoof) {
            faults.add(
                    place,
                    "only a flat roof or a lower roof has a parapet",
                    Phrase.of("parapet-height ").and(parapetHeight, Dimension.LENGTH),
                    form == Body.Roof.Form.TERRACE
                            ? "write form: flat for a deck behind parapets, or remove parapet-height"
                            : "remove parapet-height");
        }
    }

    /** Checks the low side and the sides of their own against the top storey's outlines. */
    void check(StoreyOutlines outlines, Faults faults) {
        sides.select(each -> outlines.of(each.name()).isEmpty())
                .forEach(each -> faults.add(outlines.none(each.name(), each.place())));
        lowSide.ifPresent(word -> checkSide("low-side", word, outlines, faults));
        dormers.forEach(each -> checkSide("side", each.value().side(), outlines, faults));
    }

    /** Refuses a word that does not mean one side of a storey. */
    static void checkSide(String key, Located<String> word, StoreyOutlines outlines, Faults faults) {
        ImmutableList<Integer> sides = outlines.of(word.value());
        if (sides.isEmpty()) {
            faults.add(outlines.none(word.value(), word.place()));
        } else if (sides.size() > 1) {
            faults.add(
                    word.place(),
                    key + " must mean one side",
                    '"' + word.value() + "\", which means " + sides.size() + " sides",
                    sides.collect(outlines::numbered).makeString(", "),
                    "write one of them");
        }
    }

    /** Index of the low side among the top storey's sides as the file lists them; zero for roofs without one. */
    int lowSideIndex(StoreyOutlines outlines) {
        return lowSide.map(each -> outlines.of(each.value()).getFirst()).orElse(0);
    }

    /** Sides that rise otherwise than form and pitch say, by their index in the file. */
    ImmutableMap<Integer, Body.RoofSide> ownSides(StoreyOutlines outlines) {
        MutableMap<Integer, Body.RoofSide> own = Maps.mutable.empty();
        outlines.narrowest(sides).forEachKeyValue((side, rise) -> own.put(side, rise.side(pitch)));
        return own.toImmutable();
    }

    /** Where the insulation lies. */
    enum InsulatedAt {
        @AlsoCalled({"rafters", "slopes", "slope"})
        ROOF,

        @AlsoCalled({"attic", "loft", "attic floor", "loft floor", "joists"})
        CEILING
    }
}
