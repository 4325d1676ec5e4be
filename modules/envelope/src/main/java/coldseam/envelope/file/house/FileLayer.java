package coldseam.envelope.file.house;

import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Unit;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.eclipse.collections.api.set.ImmutableSet;

@Noun("a layer")
@Doc("One layer of an assembly.")
record FileLayer(
        Position place,

        @Doc("What fills it, between the framing where there is framing.") @Refers("material")
        String material,

        @Doc("Its thickness.")
        @Unit(Dimension.THICKNESS)
        @Bounds(
                above = "0 mm",
                atMost = "2 m",
                usual = "plaster 10 to 20 mm, boards 10 to 30 mm, insulation 100 to 400 mm, masonry 100 to 400 mm")
        double thickness,

        @Doc(
                "The part it plays, by which a junction detail finds it; studs with what is between them, and sheathing, are structure; render,"
                        + " plaster or siding that stays on it under new boards is an old coat.")
        FilePart role,

        @Doc("Its declared thermal resistance, which then stands in for the material's conductivity.")
        @Unit(Dimension.RESISTANCE)
        @Bounds(above = "0 m²·K/W", atMost = "50 m²·K/W")
        OptionalDouble resistance,

        @Doc("Members that bridge it, such as studs.") Optional<FileFraming> framing,

        @Doc("How an air layer is ventilated; unventilated where this is missing.")
        Optional<FileAir> air,

        @Doc("How its thickness varies, where it is cut to falls.")
        Optional<Layer.Taper> taper,

        @Doc("What it controls: air, water, vapour, and heat for the continuous insulation.") @Default("")
        ImmutableSet<Control> controls) {

    FileLayer {
        if (air.isPresent() && role != FilePart.AIR_LAYER) {
            throw new BadValueException(
                    "air",
                    "only an air layer has the key air",
                    "role " + Words.word(role),
                    "role: air layer",
                    "change the role, or remove air");
        }
        double thinnest = thickness;
        if (taper.isPresent() && !(taper.get().thickest() > thinnest)) {
            throw new BadValueException(
                    "taper",
                    "the thickest place must be thicker than the layer's thickness, which is its thinnest",
                    Phrase.of(taper.get().thickest(), Dimension.THICKNESS),
                    Phrase.of("more than ").and(thinnest, Dimension.THICKNESS),
                    "give the thinnest place as thickness");
        }
    }

    @Noun("framing")
    @Doc("Members that bridge a layer: by their share, or by width, spacing and besides.")
    record FileFraming(
            @Doc("What the members are made of.") @Refers("material")
            String material,

            @Doc("Their share of the layer's area, plates and lintels counted in.")
            @Unit(Dimension.SHARE)
            @Bounds(above = "0 %", below = "100 %", usual = "9 to 25 %")
            OptionalDouble share,

            @Doc("Instead of share: how wide each of them is across the layer's area.")
            @Unit(Dimension.THICKNESS)
            @Bounds(above = "0 mm", atMost = "1 m", usual = "38 to 100 mm")
            OptionalDouble width,

            @Doc("Instead of share: from the middle of one to that of the next.")
            @Unit(Dimension.THICKNESS)
            @Bounds(above = "0 mm", atMost = "5 m", usual = "300 to 900 mm")
            OptionalDouble spacing,

            @Doc(
                    "With width and spacing: the share of the layer's area that plates, lintels, studs at openings and blocking take besides.")
            @Unit(Dimension.SHARE)
            @Bounds(atLeast = "0 %", below = "100 %", usual = USUAL)
            OptionalDouble besides) {

        /** Of what framing takes in all, less what members at 400 to 625 mm do (common practice, no source). */
        private static final String USUAL = "5 to 16 % in walls, 1 to 4 % between joists and rafters";

        FileFraming {
            boolean all = width.isPresent() && spacing.isPresent() && besides.isPresent();
            boolean some = width.isPresent() || spacing.isPresent() || besides.isPresent();
            if (share.isPresent() ? some : !all) {
                throw new BadValueException(
                        "",
                        "members are given by their share, or by all of width, spacing and besides",
                        given(
                                share,
                                "share",
                                given(width, "width", given(spacing, "spacing", given(besides, "besides", "")))),
                        "share alone, or width, spacing and besides",
                        share.isPresent()
                                ? "remove the one or the other"
                                : "give what is missing; besides is what plates, lintels, studs at openings and blocking take of"
                                        + " the layer's area, usually " + USUAL);
            }
            if (all && !(spaced(width, spacing, besides).share() < 1)) {
                throw new BadValueException(
                        "spacing",
                        "members and what there is besides leave room between them",
                        Phrase.of(spacing.getAsDouble(), Dimension.THICKNESS),
                        Phrase.of("more than ")
                                .and(width.getAsDouble() / (1 - besides.getAsDouble()), Dimension.THICKNESS),
                        "give the spacing from the middle of one member to that of the next");
            }
        }

        /** Names of the keys that are there. */
        private static String given(OptionalDouble value, String key, String others) {
            if (value.isEmpty()) {
                return others;
            }
            return others.isEmpty() ? key : key + ", " + others;
        }

        private static Layer.Spaced spaced(OptionalDouble width, OptionalDouble spacing, OptionalDouble besides) {
            return new Layer.Spaced(width.getAsDouble(), spacing.getAsDouble(), besides.getAsDouble());
        }

        /** Share of the layer's area, 0 to 1. */
        double taken() {
            return share.orElseGet(() -> spaced(width, spacing, besides).share());
        }

        Layer.Framing members(Function<String, Material> materials) {
            Material of = materials.apply(material);
            return share.isPresent()
                    ? new Layer.Framing(of, taken())
                    : new Layer.Framing(of, spaced(width, spacing, besides));
        }
    }

    @Noun("an air layer")
    @Doc("How an air layer is ventilated and how its faces radiate (ISO 6946).")
    record FileAir(
            @Doc("By the area of its openings.") @Default("unventilated")
            Layer.Ventilation ventilation,

            @Doc("Area of the openings on each length; for slightly ventilated layers.")
            @Default("0 mm²/m")
            @Unit(Dimension.AIR_LAYER_OPENING)
            @Bounds(atLeast = "0 mm²/m", atMost = "100000 mm²/m")
            double openings,

            @Doc("Emissivity of its one bright face; 0.9 where both are dull.")
            @Default("0.9")
            @Unit(Dimension.SHARE)
            @Bounds(atLeast = "2 %", atMost = "100 %", usual = "5 to 20 %")
            double lowEmissivity) {

        /** Opening areas of a slightly ventilated layer, mm²/m; ISO 6946:2017 6.9.3, from memory. */
        private static final double SLIGHT_FROM = 500;

        private static final double SLIGHT_TO = 1500;

        FileAir {
            boolean slight = ventilation == Layer.Ventilation.SLIGHTLY_VENTILATED;
            if (slight && !(openings > SLIGHT_FROM && openings < SLIGHT_TO)) {
                throw new BadValueException(
                        "openings",
                        "a slightly ventilated air layer has openings, but not too many (ISO 6946)",
                        Phrase.of(openings, Dimension.AIR_LAYER_OPENING),
                        Phrase.of("more than ")
                                .and("500 mm²/m", SLIGHT_FROM, Dimension.AIR_LAYER_OPENING)
                                .and(" and less than ")
                                .and("1500 mm²/m", SLIGHT_TO, Dimension.AIR_LAYER_OPENING),
                        "give the openings, or write unventilated or well ventilated");
            }
        }
    }

    /** The role that its part is of. */
    Role part() {
        return role.role();
    }

    Layer layer(Function<String, Material> materials) {
        Material filling = materials.apply(material);
        Optional<Layer.AirLayer> airLayer =
                air.map(each -> new Layer.AirLayer(each.ventilation, each.openings, each.lowEmissivity));
        if ((role == FilePart.AIR_LAYER || filling.isAir()) && airLayer.isEmpty()) {
            airLayer = Optional.of(new Layer.AirLayer(Layer.Ventilation.UNVENTILATED, 0, 0.9));
        }
        return new Layer(
                resistance.isPresent() ? withResistance(filling, resistance.getAsDouble()) : filling,
                thickness,
                part(),
                framing.map(each -> each.members(materials)),
                airLayer,
                taper,
                controls);
    }

    /** As well known as the material is: the house file gives a resistance no source of its own. */
    private Material withResistance(Material filling, double declared) {
        double conductivity = thickness / declared;
        return new Material(
                filling.name() + " of " + UnitSystem.SI.format(declared, Dimension.RESISTANCE),
                conductivity,
                filling.vapourResistanceFactor(),
                filling.density(),
                filling.compressiveStrength(),
                filling.insulates() || conductivity <= Material.INSULATES_UP_TO,
                filling.insulatesSource(),
                filling.controls(),
                filling.bears(),
                filling.carries(),
                filling.isAir(),
                filling.within(),
                new Provenance(
                        "resistance given in the house file",
                        filling.provenance().sureness()));
    }
}
