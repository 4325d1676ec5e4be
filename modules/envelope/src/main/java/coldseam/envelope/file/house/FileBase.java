package coldseam.envelope.file.house;

import coldseam.envelope.Body;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Unit;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.Optional;

@Noun("a base")
@Doc("What lies under the lowest storey.")
record FileBase(
        @Doc("Kind of floor.") Body.Base.Kind kind,

        @Doc("Name of its assembly; none leaves a hole.") @Refers(value = "assembly", or = HouseFile.NONE)
        String assembly,

        @Doc("Insulation beside or under the rim of a slab on ground.")
        Optional<FileEdgeInsulation> edge,

        @Doc("Depth of a heated cellar's floor below ground level.")
        @Default("0 m")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "6 m", usual = "1 to 2.8 m")
        double depth,

        @Doc(
                "Height of the upper face of a floor on the ground or over an unheated space over the zero of the house, such as the"
                        + " upper half of a split level; 0 m where it is missing, which beside a floor over a crawl space is not that floor's.")
        @Default("0 m")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "-10 m", atMost = "20 m")
        double level,

        @Doc("The space under a suspended floor.") Optional<FileCrawlSpace> crawlSpace,

        @Doc("What it faces, for a floor over an unheated space: its name among the neighbours.") @Refers("neighbour")
        Optional<String> faces,

        @Doc(
                "Where it lies in plan, only among other-bases, drawn out beyond the walls it reaches: as far as nothing heated is below.")
        Optional<FileFootprint> area,

        Position place) {

    /** m under the ground, from which a floor is a cellar's, as for levels of a body by surfaces. */
    private static final double DEEPEST = 0.5;

    /** What to do where a space beside the rooms has no line of its own. */
    static final String SPACE =
            "define the space under neighbours, such as neighbours: {garage: {temperature-factor: 0.8, source: whose}}"
                    + " (1 is as cold as outdoors, 0 as warm as the rooms)";

    /** Refuses an area where the base is the only one. */
    void checkMain(Faults faults) {
        if (area.isPresent()) {
            faults.add(
                    place,
                    "only other-bases have an area; this base takes what they leave",
                    "an area",
                    "remove the key, or move this base to other-bases");
        }
    }

    /** Refuses a level so far under the ground at the house's zero that the walls over it stand in that. */
    void checkDepth(Faults faults) {
        if (level < -DEEPEST) {
            faults.add(
                    place,
                    "walls over a floor so far under the ground stand in it, of which nothing is said",
                    Phrase.of(level, Dimension.LENGTH),
                    Phrase.of(-DEEPEST, Dimension.LENGTH).and(" and more"),
                    "give ground, its heights beside the lowest storey's corners, or kind: heated cellar with its depth");
        }
    }

    /** Refuses what cannot lie under a part of the house. */
    void checkOther(Faults faults) {
        if (area.isEmpty()) {
            faults.add(
                    place,
                    "each of other-bases needs an area",
                    "none",
                    "add it, such as area: {rectangle: [4 m, 5 m], at: [0 m, 0 m]}");
        }
        if (level != 0) {
            faults.add(
                    place,
                    "one of other-bases lies at the level of the storey on it",
                    Phrase.of(level, Dimension.LENGTH),
                    "remove the key level, or make this part of the house a wing with a base of its own");
        }
        if (kind == Body.Base.Kind.HEATED_CELLAR) {
            faults.add(
                    place,
                    "a heated cellar is a storey of its own, the lowest",
                    "heated cellar among other-bases",
                    "slab on ground, suspended, or over unheated",
                    "add a storey for the cellar and give the body its base");
        }
    }

    FileBase {
        String name = Words.word(kind);
        requireWith(kind == Body.Base.Kind.SUSPENDED, crawlSpace.isPresent(), "crawl-space", "crawl-space", name);
        requireWith(
                kind == Body.Base.Kind.OVER_UNHEATED,
                faces.isPresent(),
                "faces",
                "faces with the name of the space, and " + SPACE,
                name);
        requireWith(
                kind == Body.Base.Kind.HEATED_CELLAR,
                depth > 0,
                "depth",
                "depth, of its floor under the ground, such as 2.3 m",
                name);
        if (level != 0 && (kind == Body.Base.Kind.HEATED_CELLAR || kind == Body.Base.Kind.SUSPENDED)) {
            throw new BadValueException(
                    "level",
                    "a base of this kind lies where its depth or its crawl space says",
                    name,
                    "remove the key level, or change the kind");
        }
        if (edge.isPresent() && kind != Body.Base.Kind.SLAB_ON_GROUND) {
            throw new BadValueException(
                    "edge",
                    "only a slab on ground has the key edge",
                    name,
                    "kind: slab on ground",
                    "remove the key edge");
        }
    }

    private static void requireWith(boolean needed, boolean given, String key, String next, String name) {
        if (needed && !given) {
            throw new BadValueException(
                    "kind", "a base needs the key " + key, name, "add " + next + ", or choose another kind");
        }
        if (given && !needed) {
            throw new BadValueException(
                    component(key),
                    "a base of this kind has no key " + key,
                    name,
                    "remove the key, or change the kind");
        }
    }

    private static String component(String key) {
        return key.equals("crawl-space") ? "crawlSpace" : key;
    }

    @Noun("edge insulation")
    @Doc("Insulation along the rim of a slab on ground (ISO 13370).")
    record FileEdgeInsulation(
            @Doc("Whether it goes down or lies flat.") Direction direction,

            @Doc("Its depth or width.")
            @Unit(Dimension.LENGTH)
            @Bounds(atLeast = "0.1 m", atMost = "3 m", usual = "0.3 to 1.2 m")
            double extent,

            @Doc("Its thickness.") @Unit(Dimension.THICKNESS) @Bounds(atLeast = "10 mm", atMost = "500 mm")
            double thickness,

            @Doc("What it is made of.") @Refers("material") String material) {}

    /** Which way edge insulation goes. */
    enum Direction {
        VERTICAL,
        HORIZONTAL
    }

    @Noun("a crawl space")
    @Doc("The space under a suspended floor (ISO 13370).")
    record FileCrawlSpace(
            @Doc("Height of the floor above ground level.")
            @Unit(Dimension.LENGTH)
            @Bounds(atLeast = "0.05 m", atMost = "3 m", usual = "0.3 to 1 m")
            double height,

            @Doc("Thermal transmittance of its walls above ground.")
            @Unit(Dimension.TRANSMITTANCE)
            @Bounds(atLeast = "0.1 W/(m²·K)", atMost = "7 W/(m²·K)", usual = "0.3 to 2.5 W/(m²·K)")
            double wallTransmittance,

            @Doc("Area of its vents on each length of perimeter.")
            @Unit(Dimension.OPENING_PER_LENGTH)
            @Bounds(atLeast = "0.0002 m²/m", atMost = "0.1 m²/m", usual = "0.001 to 0.003 m²/m")
            double vents,

            @Doc("Mean wind speed at 10 m.")
            @Default("4 m/s")
            @Unit(Dimension.SPEED)
            @Bounds(atLeast = "1 m/s", atMost = "12 m/s", usual = "3 to 6 m/s")
            double windSpeed,

            @Doc("How far wind is kept off.") @Default("average")
            Shielding windShielding,

            @Doc("Thermal resistance of insulation on its ground.")
            @Default("0 m²·K/W")
            @Unit(Dimension.RESISTANCE)
            @Bounds(atLeast = "0 m²·K/W", atMost = "10 m²·K/W", usual = "0 to 5 m²·K/W")
            double groundResistance) {}

    /** Wind shielding factors, ISO 13370:2017 table 8; from memory. */
    enum Shielding {
        SHELTERED(0.02),
        AVERAGE(0.05),
        EXPOSED(0.10);

        private final double factor;

        Shielding(double factor) {
            this.factor = factor;
        }

        double factor() {
            return factor;
        }
    }
}
