package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.engine.Unknown;
import coldseam.conduction.Interval;
import coldseam.envelope.PointKind;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Renovation;
import coldseam.options.Renovation.Cold;
import coldseam.options.Renovation.Stage;
import coldseam.options.Renovation.Unlike;
import coldseam.options.Standing;
import coldseam.options.Uneven;
import coldseam.options.Yearly;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Two houses compared: what is said under each heading, and the rows of its table, for the terminal and the PDF alike. */
public record RenovationWords(Renovation renovation, UnitSystem units, CompareWords words) {

    /** Of a comparison, in some units. */
    public RenovationWords(Renovation renovation, UnitSystem units) {
        this(renovation, units, new CompareWords(units));
    }

    public record Part(String heading, ImmutableList<String> lines) {}

    /**
     * A row of the table of what loses another amount than before, as printed.
     *
     * @param group it is the first of; empty where it goes on
     * @param name of the part
     * @param numbers before, after, the difference, and money a year more
     */
    public record Row(String group, String name, ImmutableList<String> numbers) {}

    /** Both houses, the difference, and what differs beside what is built. */
    public Part verdicts() {
        MutableList<String> lines = Lists.mutable.of(
                "before: " + house(renovation.before()),
                "after: " + house(renovation.after()),
                "after it loses" + change() + withCorners() + missing("before", renovation.before())
                        + missing("after", renovation.after()));
        renovation.unlike().collect(this::unlike).forEach(lines::add);
        if (renovation.idle().notEmpty()) {
            lines.add("in the order of building, though the two files do not differ by it: "
                    + renovation.idle().makeString(", "));
        }
        lines.add(
                "the difference and the stages, with what is found or cold in them, are of surfaces, seams and points; corners where edges meet, and seams that touch beyond what each loses alone, add "
                        + words.corners(renovation.before()) + " before and " + words.corners(renovation.after())
                        + " after ("
                        + VertexWords.count(renovation.after()) + " after)");
        return new Part("Before and after", lines.toImmutable());
    }

    /** What it is with corners; empty where they make no difference, or one of them is not known. */
    private String withCorners() {
        Interval corners =
                corners(renovation.after()).plus(corners(renovation.before()).times(-1));
        return known() && Standing.of(corners) != Standing.AS_GOOD
                ? ", in surfaces, seams and points; with corners, as H_T has them, "
                        + words.heat(renovation.more().plus(corners))
                : "";
    }

    private static Interval corners(Audit audit) {
        return audit.heatLoss().vertices().plus(audit.heatLoss().pairs());
    }

    /** Where something has no value the difference is of the two tables, and not of what is at least lost. */
    private String change() {
        return (known() ? " " : ", of what has a value, ") + change(renovation.more());
    }

    private boolean known() {
        return Unknown.of(renovation.before()).none()
                && Unknown.of(renovation.after()).none();
    }

    private String missing(String when, Audit audit) {
        return new HonestWords(audit, units)
                .unknown()
                .map(what -> "; not known, since " + when + " " + what)
                .orElse("");
    }

    private String unlike(Unlike what) {
        return "take care: the two files differ in "
                + switch (what) {
                    case SHAPE ->
                        "their shape, what they stand on, the names in it or their seams (" + size(renovation.before())
                                + " of surfaces before, " + size(renovation.after())
                                + " after), so the difference is not of what is built alone";
                    case STRUCTURE ->
                        "what carries, though it is said to stay, so the difference is not of what is built alone";
                    case SPACES_BESIDE ->
                        "the spaces beside the house (which there are, their factors, or where these come from), so the"
                                + " difference is not of what is built alone";
                    case SITE ->
                        "their site (temperatures, degree days, ground, dimensions or climate), so the difference is not of"
                                + " what is built alone";
                    case CONDUCTIVITIES ->
                        "what materials of one name conduct ("
                                + uneven().conductivities()
                                        .collect(each -> each.material() + " " + conducts(each.before()) + " before, "
                                                + conducts(each.after()) + " after")
                                        .makeString("; ")
                                + "), so the difference is not of what is built alone";
                    case POINTS_LEFT_OUT ->
                        "their points ("
                                + uneven().fewerPoints().collect(this::fewer).makeString("; ")
                                + "), so the difference is also of what is left out: list in both what stays";
                    case FASTENERS_LEFT_OUT ->
                        "what holds boards outside (fasteners before, none after in "
                                + Phrases.listed(uneven().unfastened().collect(each -> "\"" + each.name() + "\""))
                                + "), so the difference is also of what is left out";
                    case OPENINGS_LEFT_OUT ->
                        "the size of their windows and doors (" + area(Uneven.openings(renovation.before()))
                                + " before, " + area(Uneven.openings(renovation.after()))
                                + " after), so the difference is not of better ones alone";
                    case OWN_PSI ->
                        "psi of their own, which the other has not or not so ("
                                + rows(uneven().ownPsi(renovation.before())) + " before, "
                                + rows(uneven().ownPsi(renovation.after()))
                                + " after), so the difference is also of what the files say, and not of what is built alone";
                    case NOT_CHOSEN ->
                        "what nobody has chosen (" + rows(Uneven.notChosen(renovation.before())) + " before, "
                                + rows(Uneven.notChosen(renovation.after()))
                                + " after): the worst option stands in there, and what is built saves less than that";
                    case LIMITS -> "their limits, so findings may come and go without anything being built";
                    case PRICE ->
                        "their price of heat; money here is at the second's, "
                                + renovation.after().house().prices().currency();
                };
    }

    private Uneven uneven() {
        return new Uneven(renovation.before(), renovation.after());
    }

    private String size(Audit audit) {
        return area(audit.shell().surfaces().sumOfDouble(Surface::externalArea));
    }

    private String area(double area) {
        return area == 0 ? "none" : units.format(area, Dimension.AREA);
    }

    /** "8 of the kind steel post before, none after". */
    private String fewer(PointKind kind) {
        int after = Uneven.count(renovation.after(), kind);
        return Uneven.count(renovation.before(), kind) + " of the kind " + kind.label() + " before, "
                + (after == 0 ? "none" : after) + " after";
    }

    /** "29.68 m of seams and 4 points", or that there are none. */
    private String rows(ImmutableList<? extends BridgeRow> rows) {
        double length = rows.selectInstancesOf(JunctionRow.class).sumOfDouble(JunctionRow::length);
        int points = (int) rows.selectInstancesOf(PointRow.class).sumOfInt(PointRow::number);
        MutableList<String> parts = Lists.mutable.empty();
        if (length > 0) {
            parts.add(units.format(length, Dimension.LENGTH) + " of seams");
        }
        if (points > 0) {
            parts.add(Phrases.count(points, "point", "points"));
        }
        return parts.isEmpty() ? "none" : parts.makeString(" and ");
    }

    private String conducts(double conductivity) {
        return units.format(conductivity, Dimension.CONDUCTIVITY);
    }

    /** With what its number rests on: of a house before, which gaps let lose more, what the one after does not rest on as well. */
    private String house(Audit audit) {
        HonestWords honest = new HonestWords(audit, units);
        boolean gapsBefore = audit == renovation.before() && !audit.verdict().unbroken();
        return audit.house().name() + ", H_T = " + honest.total()
                + words.year(audit).map(each -> ", " + each).orElse("") + ". "
                + VerdictWords.sentence(audit.verdict())
                + (gapsBefore ? honest.assumedBeside(renovation.after()) : honest.assumed())
                        .map(each -> " " + each)
                        .orElse("")
                + (audit.verdict().unbroken() ? " " + honest.measuredBy() : "");
    }

    private String change(Interval more) {
        return words.heat(more)
                + CompareWords.yearly(more, renovation.after().house())
                        .map(each -> ", " + each)
                        .orElse("");
    }

    /** What differs in the files. */
    public ImmutableList<DifferenceWords.Difference> differences() {
        return DifferenceWords.between(renovation.before(), renovation.after(), units);
    }

    /** What {@link #differences} stand under. */
    public String differencesHeading() {
        return "What differs in the two files";
    }

    /** What appears and what vanishes. */
    public Part findings() {
        return new Part(
                "Findings",
                Lists.immutable.of(words.changes(renovation.changes()).orElse("the same before and after")));
    }

    /** What the table is of, with its unit. */
    public String tableHeading() {
        return "What loses another amount than before, " + units.label(Dimension.HEAT_LOSS_COEFFICIENT);
    }

    /** The heads of the numbers, as many as a row has. */
    public ImmutableList<String> heads() {
        String currency = renovation.after().house().prices().currency();
        return Lists.immutable.of("before", "after", "more", currency.isEmpty() ? "" : currency + " a year");
    }

    /** What loses another amount than before. */
    public ImmutableList<Row> rows() {
        MutableList<Row> rows = Lists.mutable.empty();
        Optional<Renovation.Group> last = Optional.empty();
        for (Renovation.Part part : renovation.parts()) {
            boolean first = last.filter(part.group()::equals).isEmpty();
            last = Optional.of(part.group());
            boolean both = part.before().isPresent() && part.after().isPresent();
            rows.add(new Row(
                    first ? Words.word(part.group()) : "",
                    part.name(),
                    Lists.immutable.of(
                            part.before().map(this::number).orElse("none"),
                            part.after().map(this::number).orElse("none"),
                            both ? number(part.more()) : "",
                            both ? money(part.more()) : "")));
        }
        return rows.toImmutable();
    }

    private String number(Interval value) {
        return new Print(units).readable(value, Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private String money(Interval more) {
        return Yearly.money(more, renovation.after().house())
                .map(each -> Math.abs(each.middle()) < 0.5 ? "0" : Format.of("%+.0f", each.middle()))
                .orElse("");
    }

    /** As found, then each stage in the order of building. */
    public ImmutableList<Part> stages() {
        if (renovation.stages().isEmpty()) {
            return Lists.immutable.of(new Part(
                    "In the order of building",
                    Lists.immutable.of(
                            "nothing is told of stages: nothing differs that is built by stages, or the shapes or"
                                    + " the spaces beside them differ; build-ups and surfaces keep their names from one file"
                                    + " to the other")));
        }
        int count = renovation.stages().size();
        return Lists.immutable
                .of(new Part("As found", found()))
                .newWithAll(renovation
                        .stages()
                        .collectWithIndex((stage, i) ->
                                new Part("Stage " + (i + 1) + ": " + stage.name(), stage(stage, i + 1 == count))));
    }

    private ImmutableList<String> found() {
        return mould(renovation.before(), renovation.cold(), "")
                .newWithAll(notJudged(renovation
                        .before()
                        .junctions()
                        .select(row -> row.sheet().isEmpty())));
    }

    private static ImmutableList<String> notJudged(ImmutableList<JunctionRow> rows) {
        return rows.isEmpty()
                ? Lists.immutable.empty()
                : Lists.immutable.of("no temperature is known, so mould is not judged, at: " + kinds(rows));
    }

    private ImmutableList<String> stage(Stage stage, boolean last) {
        MutableList<String> lines = Lists.mutable.empty();
        lines.add("H = " + words.loss(stage.audit()) + ", " + change(stage.more()) + CompareWords.share(stage.share()));
        lines.add(VerdictWords.sentence(stage.audit().verdict())
                + new HonestWords(stage.audit(), units)
                        .assumedBeside(renovation.after())
                        .map(each -> " " + each)
                        .orElse(""));
        words.changes(stage.changes()).ifPresent(lines::add);
        if (stage.open().notEmpty()) {
            lines.add("open until a later stage, so to be closed for a while: " + kinds(stage.open()));
        }
        if (stage.openPoints().notEmpty()) {
            lines.add((renovation.stages().indexOf(stage) >= pointsAt()
                            ? "set before what they go through is built, so to be closed, and reached again then: "
                            : "still the old ones in what is built anew, so to be opened once more: ")
                    + stage.openPoints()
                            .collect(row -> row.name() + " (" + row.number() + ") in "
                                    + row.surface().name())
                            .makeString(", "));
        }
        if (stage.name().equals(Retrofit.OPENINGS)
                && stage.audit()
                        .points()
                        .noneSatisfy(row -> row.kind().serves().contains(PointKind.Service.VENTILATION))) {
            lines.add(
                    "new windows and doors let less air in: in rooms that are aired no more than before it is damper from"
                            + " now on than mould is judged by here, and no duct for ventilation is listed");
        }
        String while_ = last ? " for good" : " for a while";
        lines.addAllIterable(mould(stage.audit(), stage.cold().select(Cold::mould), while_));
        ImmutableList<Cold> colder = stage.cold().select(cold -> cold.colder() && !cold.mould());
        byKind(colder).forEach(cold -> lines.add("colder" + while_ + " than it was found, and warm enough: " + cold));
        return lines.withAll(notJudged(stage.notJudged())).toImmutable();
    }

    /** Which stage builds the points; past the last where none does. */
    private int pointsAt() {
        int at = renovation.stages().detectIndex(stage -> stage.name().equals(Retrofit.POINTS));
        return at < 0 ? renovation.stages().size() : at;
    }

    private static ImmutableList<String> mould(Audit audit, ImmutableList<Cold> cold, String while_) {
        return cold.isEmpty()
                ? Lists.immutable.of(Format.of(
                        "no seam of known temperature is colder than fRsi %.2f, which %s; corners are not looked at here",
                        audit.mould().need(),
                        audit.mould().monthly().isPresent()
                                ? "keeps mould away by the months"
                                : "is the limit; the house file gives no months to judge mould by"))
                : byKind(cold).collect(each -> "MOULD MAY GROW" + while_ + ": " + each);
    }

    /** A line for each kind, of its coldest seam. */
    private static ImmutableList<String> byKind(ImmutableList<Cold> cold) {
        return Groups.by(cold, each -> each.row().kindLabel()).collect(alike -> {
            Cold coldest = alike.minBy(Cold::now);
            return Format.of(
                    "%s (%d), fRsi %.2f at the coldest, %.2f is needed%s",
                    coldest.row().kindLabel(),
                    alike.size(),
                    coldest.now(),
                    coldest.need(),
                    coldest.colder()
                            ? Format.of(", %.2f as found", coldest.before().getAsDouble())
                            : "");
        });
    }

    /** Kinds with how many of each. */
    private static String kinds(ImmutableList<JunctionRow> rows) {
        return Groups.by(rows, JunctionRow::kindLabel)
                .collect(alike -> alike.getFirst().kindLabel() + " (" + alike.size() + ")")
                .makeString(", ");
    }
}
