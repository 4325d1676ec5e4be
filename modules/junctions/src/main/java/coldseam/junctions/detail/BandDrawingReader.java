package coldseam.junctions.detail;

import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.SourceNode;
import coldseam.files.Vocabulary;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.LineRange;
import coldseam.junctions.language.Measured;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/** Reads the drawing of a junction's detail file. */
final class BandDrawingReader extends TermsReader {

    private static final String AWAY = "away";
    private static final String BEYOND = "beyond";

    /** How far what lies across two bands end to end reaches into the room. */
    private static final String INTO_THE_ROOM = "1 m";

    private static final String SET_BACK = "set-back";
    private static final String OTHERWISE = ", in splash ";
    private static final String GROUND = "ground";
    private static final String LINTEL = "lintel";

    /** What a part calls the two ranges of whatever kind draws it. */
    private static final Pattern AXIS = Pattern.compile("^(?:across|along)$|\\b(?:across|along)(?=\\.[a-z])");

    private final FileDetail file;
    private final JunctionKind kind;
    private final KindForm form;

    BandDrawingReader(FileDetail file, String content, Faults faults) {
        super(
                file,
                content,
                faults,
                DrawingNames.of(file.kind()),
                "a band",
                file.kind().bands());
        this.file = file;
        this.kind = file.kind();
        this.form = kind.form();
    }

    BandDrawing drawing() {
        DrawingTerms terms = terms();
        ImmutableList<Statement> statements = file.drawing().flatCollect(this::statements);
        if (form.framed() && statements.noneSatisfy(Statement.Frame.class::isInstance)) {
            faults.add(file.place(), "the drawing needs its frame", "", "add \"- frame: set-back\"");
        }
        alsoFor();
        return new BandDrawing(
                kind,
                terms,
                only(),
                insulatedInside(),
                file.angles().map(each -> new BandDrawing.Angles(each.least(), each.most())),
                statements);
    }

    /** Refuses other kinds that this drawing cannot mean: its lines would lie elsewhere there, or nowhere. */
    private void alsoFor() {
        ImmutableList<JunctionKind> alike = JunctionKind.all()
                .select(each -> each != kind
                        && each.form().equals(form)
                        && each.bands().equals(kind.bands())
                        && each.axes().equals(kind.axes()));
        MutableList<JunctionKind> meant = Lists.mutable.empty();
        for (Located<JunctionKind> other : file.also()) {
            if (!alike.contains(other.value()) || meant.contains(other.value())) {
                faults.add(
                        other.place(),
                        "another kind of the same form and bands is needed, once",
                        '"' + other.value().label() + '"',
                        alike.isEmpty()
                                ? "none is like: " + kind.label()
                                : alike.collect(JunctionKind::label).makeString(", "),
                        "remove it, and draw a file of its own for it");
            }
            meant.add(other.value());
        }
    }

    private BandDrawing.Only only() {
        ImmutableList<BandDrawing.Contrast> contrasts = form.twoBuildUps()
                ? collected(file.where(), each -> BandDrawing.Contrast.of(each.value()))
                : Lists.immutable.empty();
        return new BandDrawing.Only(
                collected(
                        file.where()
                                .reject(each ->
                                        contrasts.anySatisfy(one -> one.words().equals(each.value()))),
                        this::built),
                contrasts);
    }

    private ImmutableSet<String> insulatedInside() {
        ImmutableList<String> bands = form.twoSurfaces() ? kind.bands() : Lists.immutable.empty();
        file.insulatedInside()
                .reject(each -> bands.contains(each.value()))
                .each(each -> faults.add(
                        each.place(),
                        "a surface of this kind is needed",
                        '"' + each.value() + '"',
                        bands.isEmpty() ? "none: only one surface meets here" : bands.makeString(", "),
                        "correct or remove it"));
        return file.insulatedInside().collect(Located::value).toImmutableSet();
    }

    @Override
    boolean isTaken(String name) {
        return super.isTaken(name) || name.equals(AWAY) || name.equals(BEYOND);
    }

    @Override
    String alike() {
        return "two lengths, two numbers or two lines of one band";
    }

    // Statements.

    private ImmutableList<Statement> statements(SourceNode node) {
        return Binder.bind(node, FileStatement.class, faults, vocabulary(node))
                .map(bound -> bound.statements().collect(each -> where(bound, each)))
                .orElse(Lists.immutable.empty());
    }

    /** Such as {@code where: wall framed}, or {@code where: [floor framed, wall masonry]}, of which all must hold. */
    private static Statement where(FileStatement bound, Statement statement) {
        return bound.where()
                .map(FileStatement.FileBuilds::all)
                .orElse(Lists.immutable.empty())
                .injectInto(statement, (inner, built) -> new Statement.Where(built.first(), built.build(), inner));
    }

    /** What this kind calls the ranges of a statement, and how its texts are read. */
    private Vocabulary vocabulary(SourceNode statement) {
        MutableMap<Class<?>, Function<Located<String>, Optional<?>>> texts = Maps.mutable.empty();
        texts.put(FileStatement.Across.class, text -> end(text, Measured.FIRST).map(FileStatement.Across::new));
        texts.put(FileStatement.Along.class, text -> end(text, Measured.SECOND).map(FileStatement.Along::new));
        texts.put(FileStatement.Ending.class, text -> ending(statement, text));
        texts.put(
                FileStatement.LineAcross.class,
                text -> place(text, Measured.FIRST).map(FileStatement.LineAcross::new));
        texts.put(
                FileStatement.LineAlong.class,
                text -> place(text, Measured.SECOND).map(FileStatement.LineAlong::new));
        texts.put(FileStatement.Level.class, this::level);
        texts.put(FileStatement.FrameLine.class, this::frame);
        texts.put(FileStatement.Sill.class, this::sill);
        texts.put(FileStatement.BandName.class, this::band);
        texts.put(FileStatement.PartDrawn.class, this::part);
        texts.put(BandDrawing.Built.class, this::built);
        texts.put(Control.class, this::carried);
        texts.put(Statement.MaterialChoice.class, this::material);
        texts.put(Statement.MaterialChoice.Named.class, this::sheet);
        return new Vocabulary(
                Maps.immutable.empty(),
                Maps.immutable.of(
                        "across", kind.axes().getFirst(), "along", kind.axes().getLast()),
                texts.toImmutable());
    }

    /** What stands in a drawing's place of a part that many drawings have. */
    private Optional<FileStatement.PartDrawn> part(Located<String> name) {
        ImmutableList<String> known = SharedParts.names();
        if (!known.contains(name.value())) {
            faults.add(
                    name.place(),
                    "a part that comes with the catalogue is needed",
                    '"' + name.value() + '"',
                    known.makeString(", "),
                    "draw anything else as a block");
            return Optional.empty();
        }
        return Optional.of(new FileStatement.PartDrawn(
                SharedParts.statements(name.value()).collect(this::inAxes).flatCollect(this::statements)));
    }

    /** A part with this kind's names for {@code across} and {@code along}: of its ranges, and before a dot of its bands. */
    private SourceNode inAxes(SourceNode node) {
        if (node instanceof SourceNode.Mapping mapping) {
            return new SourceNode.Mapping(
                    mapping.place(),
                    mapping.entries()
                            .collect(each ->
                                    new SourceNode.Entry(inAxes(each.key()), each.place(), inAxes(each.value()))));
        }
        if (node instanceof SourceNode.Sequence list) {
            return new SourceNode.Sequence(list.place(), list.items().collect(this::inAxes));
        }
        SourceNode.Scalar scalar = (SourceNode.Scalar) node;
        return new SourceNode.Scalar(scalar.place(), scalar.kind(), inAxes(scalar.text()));
    }

    private String inAxes(String text) {
        ImmutableList<String> axes = kind.axes();
        return AXIS.matcher(text)
                .replaceAll(found -> found.group().equals("across") ? axes.getFirst() : axes.getLast());
    }

    /** The cuts that something may run to, by the words for them. */
    private ImmutableMap<String, Chart.Cut> cuts(boolean acrossFirst) {
        if (form.meeting() != KindForm.Meeting.END_TO_END) {
            return acrossFirst
                    ? Maps.immutable.of(AWAY, Chart.Cut.SECOND_AWAY, BEYOND, Chart.Cut.SECOND_BEYOND)
                    : Maps.immutable.of(AWAY, Chart.Cut.FIRST_AWAY, BEYOND, Chart.Cut.FIRST_BEYOND);
        }
        return acrossFirst
                ? Maps.immutable.empty()
                : Maps.immutable.of(
                        kind.first() + " end", Chart.Cut.FIRST_AWAY, kind.second() + " end", Chart.Cut.SECOND_AWAY);
    }

    /** Where layers of a statement's band end: along the other one. Of a band that there is not, its own fault tells enough. */
    private Optional<FileStatement.Ending> ending(SourceNode statement, Located<String> text) {
        return Optional.of(statement)
                .filter(SourceNode.Mapping.class::isInstance)
                .flatMap(each -> ((SourceNode.Mapping) each).entry("band"))
                .filter(each -> each.value() instanceof SourceNode.Scalar)
                .map(each -> ((SourceNode.Scalar) each.value()).text().strip())
                .filter(kind.bands()::contains)
                .flatMap(band -> end(text, otherThan(band)))
                .map(FileStatement.Ending::new);
    }

    private Measured otherThan(String band) {
        return form.meeting() == KindForm.Meeting.END_TO_END || band.equals(kind.first())
                ? Measured.SECOND
                : Measured.FIRST;
    }

    private Optional<LineRange.End> end(Located<String> text, Measured axis) {
        boolean endToEnd = form.meeting() == KindForm.Meeting.END_TO_END;
        boolean acrossFirst = axis == Measured.FIRST;
        if (text.value().equals(AWAY) && endToEnd && acrossFirst) {
            return end(new Located<>(kind.first() + ".inside - " + INTO_THE_ROOM, text.place()), axis);
        }
        Chart.Cut cut = cuts(acrossFirst).get(text.value());
        if (cut != null) {
            return Optional.of(LineRange.End.cut(cut));
        }
        return measuring(
                        text,
                        axis,
                        endToEnd
                                ? (acrossFirst ? "a line of a band" : "seam, or seam ± a length")
                                : "a line of the " + (acrossFirst ? kind.first() : kind.second()),
                        names().keyValuesView()
                                .select(each -> each.getTwo() == axis)
                                .collect(each -> each.getOne())
                                .toSortedList()
                                .makeString(", "),
                        "give the line it is measured from")
                .map(LineRange.End::at);
    }

    /** One line of an axis, no cut. */
    private Optional<Expression> place(Located<String> text, Measured axis) {
        Optional<LineRange.End> end = end(text, axis);
        if (end.isPresent() && end.get().line().isEmpty()) {
            String key = axis == Measured.FIRST
                    ? kind.axes().getFirst()
                    : kind.axes().getLast();
            faults.add(
                    text.place(),
                    "a line of the " + key + " is needed",
                    '"' + text.value() + '"',
                    "one line, not away or beyond",
                    "write such as " + key + ".outside");
        }
        return end.flatMap(LineRange.End::line);
    }

    private Optional<FileStatement.BandName> band(Located<String> name) {
        ImmutableList<String> bands = kind.bands();
        if (!bands.contains(name.value())) {
            faults.add(
                    name.place(),
                    "a band of this kind is needed",
                    '"' + name.value() + '"',
                    bands.makeString(", "),
                    "paint anything else as a block");
            return Optional.empty();
        }
        return Optional.of(new FileStatement.BandName(name.value(), name.value().equals(kind.first())));
    }

    private Optional<Control> carried(Located<String> text) {
        Optional<Control> control = DrawingNames.CONTROLS.detectOptional(
                each -> DrawingNames.word(each).equals(text.value()));
        if (control.isEmpty()) {
            faults.add(
                    text.place(),
                    "a control layer is needed",
                    '"' + text.value() + '"',
                    "air, water, vapour",
                    "write one of them");
        }
        return control;
    }

    private Optional<Statement.MaterialChoice.Named> sheet(Located<String> text) {
        if (text.value().equals(GROUND)
                || text.value().equals(LINTEL)
                || text.value().startsWith(SAME_AS)) {
            faults.add(
                    text.place(),
                    "a strip is a sheet of its own",
                    '"' + text.value() + '"',
                    "the name of a material that can control what the strip carries",
                    "write such as: material: airtight membrane");
            return Optional.empty();
        }
        return Optional.of(new Statement.MaterialChoice.Named(text.value()));
    }

    private Optional<Statement.MaterialChoice> material(Located<String> text) {
        String word = text.value();
        if (word.equals(GROUND)) {
            return Optional.of(new Statement.MaterialChoice.TheGround());
        }
        if (word.equals(LINTEL)) {
            return Optional.of(new Statement.MaterialChoice.TheLintel());
        }
        if (!word.startsWith(SAME_AS)) {
            return Optional.of(new Statement.MaterialChoice.Named(word));
        }
        int other = word.indexOf(OTHERWISE);
        String layer = word.substring(SAME_AS.length(), other < 0 ? word.length() : other);
        return layer(layer.strip(), text.place(), true)
                .map(each -> new Statement.MaterialChoice.SameAs(
                        each.band().equals(kind.first()),
                        each.band(),
                        each.role().orElseThrow(),
                        other < 0
                                ? Optional.empty()
                                : Optional.of(word.substring(other + OTHERWISE.length())
                                        .strip())));
    }

    private Optional<FileStatement.Level> level(Located<String> text) {
        if (!form.ground()) {
            faults.add(text.place(), "this kind of junction does not stand in the ground", kind.label(), "remove it");
            return Optional.empty();
        }
        return place(text, Measured.FIRST).map(FileStatement.Level::new);
    }

    private Optional<FileStatement.FrameLine> frame(Located<String> text) {
        if (!form.framed()) {
            faults.add(text.place(), "this kind of junction has no frame", kind.label(), "remove it");
            return Optional.empty();
        }
        if (text.value().equals(SET_BACK)) {
            return Optional.of(new FileStatement.FrameLine(Optional.empty()));
        }
        return frameLine(text, form.second() == KindForm.Second.DOOR ? Measured.SECOND : Measured.FIRST)
                .map(line -> new FileStatement.FrameLine(Optional.of(line)));
    }

    private Optional<FileStatement.Sill> sill(Located<String> text) {
        if (form.second() != KindForm.Second.DOOR) {
            faults.add(text.place(), "only a door stands on a sill", kind.label(), "remove it");
            return Optional.empty();
        }
        return frameLine(text, Measured.FIRST).map(FileStatement.Sill::new);
    }

    private Optional<Expression> frameLine(Located<String> text, Measured axis) {
        ImmutableMap<String, Measured> known =
                namesBeforeLines().reject((name, measures) -> name.startsWith("frame.") || name.startsWith("door."));
        Optional<Expression> line = expression(text.value(), text.place(), known);
        if (line.isPresent() && line.get().measures() != axis) {
            faults.add(
                    text.place(),
                    "a line across the wall is needed",
                    '"' + text.value() + '"',
                    "set-back, or such as wall.insulation.outside - 20 mm",
                    "give the line of its outer face");
            return Optional.empty();
        }
        return line;
    }
}
