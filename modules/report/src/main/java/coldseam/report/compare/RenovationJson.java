package coldseam.report.compare;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;
import static coldseam.report.data.Types.TEXTS;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.conduction.Interval;
import coldseam.files.JsonForm;
import coldseam.files.JsonType;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Renovation;
import coldseam.options.Renovation.Cold;
import coldseam.options.Renovation.Group;
import coldseam.options.Renovation.Part;
import coldseam.options.Renovation.Stage;
import coldseam.options.Renovation.Unlike;
import coldseam.options.Yearly;
import coldseam.report.words.CompareWords;
import coldseam.report.words.DifferenceWords;
import java.util.Optional;

/** Two houses compared, as data, in SI units; keys carry their unit and intervals both bounds. */
public final class RenovationJson {

    private static final JsonForm<Audit> SIDE = JsonForm.<Audit>of("SideData")
            .with("house", TEXT, audit -> audit.house().name())
            .says("its name")
            .with("inputDigest", TEXT, Audit::inputDigest)
            .says("SHA-256 of its file, hexadecimal")
            .with("said", HouseForms.WHOLE_HOUSE, audit -> audit);

    private static final JsonForm<Cold> COLD = JsonForm.<Cold>of("ColdData")
            .with("seam", TEXT, cold -> cold.row().name())
            .with("kind", TEXT, cold -> cold.row().kindLabel())
            .maybeNumber("temperatureFactorBefore", Cold::before)
            .says("as found; left out where none is known")
            .with("temperatureFactor", NUMBER, Cold::now)
            .with("temperatureFactorNeeded", NUMBER, Cold::need)
            .says("that keeps mould away")
            .with("mould", FLAG, Cold::mould)
            .with("colder", FLAG, Cold::colder);

    /** A part or a stage of a renovation, whose second house has the prices. */
    private record In<T>(Renovation all, T of) {}

    private static final JsonForm<In<Part>> PART = JsonForm.<In<Part>>of("PartData")
            .with("group", JsonType.words(Group.class), in -> in.of().group())
            .with("name", TEXT, in -> in.of().name())
            .says("of a surface or opening, kind of the junctions, or name of a set of points")
            .maybe("before_W_per_K", BOUNDS, in -> in.of().before())
            .says("left out where it is new or not computed")
            .maybe("after_W_per_K", BOUNDS, in -> in.of().after())
            .says("left out where it is gone or not computed")
            .with("more_W_per_K", BOUNDS, in -> in.of().more())
            .says("of both where both are there")
            .maybe("savedMoneyPerYear", BOUNDS, in -> money(in.all(), in.of().more()));

    private static final JsonForm<In<Stage>> STAGE = JsonForm.<In<Stage>>of("StageData")
            .with("measure", TEXT, in -> in.of().name())
            .says("the measure that is built in it")
            .with("house", HouseForms.WITHOUT_CORNERS, in -> in.of().audit())
            .says("without corners")
            .with("more_W_per_K", BOUNDS, in -> in.of().more())
            .says("than at the stage before")
            .maybeNumber("share", in -> in.of().share())
            .says("of the whole change")
            .maybe("savedMoneyPerYear", BOUNDS, in -> money(in.all(), in.of().more()))
            .with("findings", HouseForms.CHANGES, in -> in.of().changes())
            .with("open", TEXTS, in -> in.of().open().collect(JunctionRow::name))
            .says("names of seams whose detail cannot be built yet")
            .with("openPoints", TEXTS, in -> in.of().openPoints().collect(PointRow::name))
            .says("names of points that go through a surface of which one is built anew and the other still to come")
            .with("cold", COLD.list(), in -> in.of().cold())
            .says("seams that are colder than they were found, or on which mould may grow, the coldest first")
            .with("notJudged", TEXTS, in -> in.of().notJudged().collect(JunctionRow::name))
            .says("names of seams of which no temperature is known");

    private static final JsonForm<DifferenceWords.Difference> DIFFERENCE = JsonForm.<DifferenceWords.Difference>of(
                    "DifferenceData")
            .with("what", TEXT, DifferenceWords.Difference::what)
            .maybe("before", TEXT, DifferenceWords.Difference::before)
            .says("left out where only the second file has it")
            .maybe("after", TEXT, DifferenceWords.Difference::after)
            .says("left out where only the first file has it");

    private static final JsonForm<Renovation> RENOVATION = JsonForm.<Renovation>of("Renovation")
            .with("format", TEXT, all -> "coldseam renovation")
            .says("always \"coldseam renovation\"")
            .with("formatVersion", WHOLE, all -> 1)
            .says("raised when a key changes its meaning or goes; new keys may come without")
            .with("version", TEXT, all -> all.after().version())
            .says("of the tool")
            .with("before", SIDE, Renovation::before)
            .with("after", SIDE, Renovation::after)
            .with("currency", TEXT, all -> all.after().house().prices().currency())
            .says("of the second house; empty where it has no price")
            .with("more_W_per_K", BOUNDS, Renovation::more)
            .says("that the second loses more, without corners, and without what has no value")
            .maybe("savedMoneyPerYear", BOUNDS, all -> money(all, all.more()))
            .with("unlike", JsonType.words(Unlike.class).list(), Renovation::unlike)
            .says("what else differs between the files, so that the difference is not of what is built alone")
            .with(
                    "differences",
                    DIFFERENCE.list(),
                    all -> DifferenceWords.between(all.before(), all.after(), UnitSystem.SI))
            .says(
                    "what differs in the two files: build-ups, windows and doors, details, points, areas and inputs, in words")
            .with("idle", TEXTS, Renovation::idle)
            .says("measures that the order names and by which the houses do not differ")
            .with("findings", HouseForms.CHANGES, Renovation::changes)
            .with("parts", PART.list(), all -> all.parts().collect(part -> new In<>(all, part)))
            .says("parts that lose another amount than before, in the order of the heat-loss table")
            .with("cold", COLD.list(), Renovation::cold)
            .says("seams on which mould may grow as the house was found, the coldest first")
            .with("stages", STAGE.list(), all -> all.stages().collect(stage -> new In<>(all, stage)))
            .says("in the order of building; empty where the shapes differ")
            .with("cautions", TEXTS, all -> CompareWords.stageCautions());

    private RenovationJson() {}

    private static Optional<Interval> money(Renovation renovation, Interval more) {
        return Yearly.money(more.times(-1), renovation.after().house());
    }

    /** The file's text. */
    public static String text(Renovation renovation) {
        return RENOVATION.text(renovation);
    }

    /** Its JSON Schema (draft 2020-12), shipped as {@code coldseam/report/renovation.schema.json} too. */
    public static String schema() {
        return RENOVATION.schema("Two houses compared, written by coldseam");
    }
}
