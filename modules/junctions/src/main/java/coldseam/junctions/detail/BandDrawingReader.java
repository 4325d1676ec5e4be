package coldseam.junctions.detail;

import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Role;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.SourceNode;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Keys;
import coldseam.junctions.language.LineRange;
import coldseam.junctions.language.Measured;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.eclipse.collections.impl.factory.Sets;

/** Reads the drawing of a junction's detail file. */
final class BandDrawingReader extends TermsReader {

    private static final String AWAY = "away";
    private static final String BEYOND = "beyond";

    /** How far what lies across two bands end to end reaches into the room. */
    private static final String INTO_THE_ROOM = "1 m";

    private static final String SET_BACK = "set-back";
    private static final String OTHERWISE = ", in splash ";
    private static final String PART = "part";

    /** Which layers of a role end somewhere: the nth from the inside, or the outermost, or all. */
    private static final Pattern WHICH = Pattern.compile("(innermost|outermost) (.+)|(.+?)(?: ([1-9][0-9]?))?");

    /** What a part calls the two ranges of whatever kind draws it. */
    private static final Pattern AXIS = Pattern.compile("^(?:across|along)$|\\b(?:across|along)(?=\\.[a-z])");

    /** What may be said of one kind of build only. */
    private static final ImmutableSet<String> PAINTS = Sets.immutable.of("band", "block", "shape", "strip", "clear");

    /** What stands in the place of something faulty until its statement, whose fault is told, is left out. */
    private static final LineRange.End NOWHERE = LineRange.End.cut(Chart.Cut.FIRST_AWAY);

    private static final LineRange NO_RANGE = new LineRange(NOWHERE, NOWHERE);
    private static final Statement NOTHING = new Statement.Clear(NO_RANGE, NO_RANGE);

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
        MutableList<Statement> statements = Lists.mutable.empty();
        file.drawing().flatCollect(this::parts).each(each -> statement(each).ifPresent(statements::add));
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
                statements.toImmutable());
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

    /** What stands in a drawing's place of a part that many drawings have; anything else as it is. */
    private ImmutableList<SourceNode> parts(SourceNode node) {
        Optional<SourceNode.Entry> named =
                node instanceof SourceNode.Mapping mapping ? mapping.entry(PART) : Optional.empty();
        if (named.isEmpty()) {
            return Lists.immutable.of(node);
        }
        Keys keys = new Keys((SourceNode.Mapping) node, faults);
        Optional<Located<String>> name = keys.text(PART);
        keys.refuseOthers("a part");
        ImmutableList<String> known = SharedParts.names();
        if (name.isEmpty() || !known.contains(name.get().value())) {
            name.ifPresent(text -> faults.add(
                    text.place(),
                    "a part that comes with the catalogue is needed",
                    '"' + text.value() + '"',
                    known.makeString(", "),
                    "draw anything else as a block"));
            return Lists.immutable.empty();
        }
        return SharedParts.statements(name.get().value()).collect(this::inAxes).flatCollect(this::parts);
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

    private Optional<Statement> statement(SourceNode node) {
        ImmutableList<String> words =
                Lists.immutable.of("band", "block", "shape", "strip", "clear", "divide", "ground", "frame", PART);
        if (node instanceof SourceNode.Mapping mapping && mapping.entries().notEmpty()) {
            // A later key may have the same word: the range along a seam is called "frame" where a frame meets a wall.
            String first = mapping.entries().getFirst().key();
            if (words.contains(first)) {
                return statement(first, new Keys(mapping, faults));
            }
        }
        faults.add(
                node,
                "a drawing statement is needed",
                "a mapping that begins with one of the keys " + words.makeString(", "),
                "write it so");
        return Optional.empty();
    }

    private Optional<Statement> statement(String word, Keys keys) {
        int before = faults.count();
        Statement statement = switch (word) {
            case "band" -> band(keys);
            case "block" ->
                new Statement.PaintBlock(
                        what(keys, word), across(keys), along(keys), material(keys), role(keys), drawnOnly(keys));
            case "shape" ->
                new Statement.PaintShape(
                        what(keys, word), corners(keys, 3), material(keys), role(keys), drawnOnly(keys));
            case "strip" -> strip(keys);
            case "clear" -> {
                what(keys, word);
                yield new Statement.Clear(across(keys), along(keys));
            }
            case "divide" -> divide(keys);
            case "ground" -> ground(keys);
            default -> frame(keys);
        };
        if (PAINTS.contains(word)) {
            statement = where(keys, statement);
        }
        keys.refuseOthers("a " + word + " statement");
        return faults.count() > before ? Optional.empty() : Optional.of(statement);
    }

    /** What something is, for drawings. */
    private static String what(Keys keys, String word) {
        return keys.text(word).map(Located::value).orElse("");
    }

    private static boolean drawnOnly(Keys keys) {
        return keys.flag("drawn-only");
    }

    private Optional<Role> role(Keys keys) {
        return keys.text("role").flatMap(text -> role(text.value(), text.place()));
    }

    /** Such as {@code where: wall framed}, or {@code where: [floor framed, wall masonry]}, of which all must hold. */
    private Statement where(Keys keys, Statement statement) {
        return collected(keys.oneOrMore("where"), this::built)
                .injectInto(statement, (inner, built) -> new Statement.Where(built.first(), built.build(), inner));
    }

    private Statement band(Keys keys) {
        Located<String> name = keys.text("band").orElse(null);
        if (name == null) {
            return NOTHING;
        }
        ImmutableList<String> bands = kind.bands();
        if (!bands.contains(name.value())) {
            faults.add(
                    name.place(),
                    "a band of this kind is needed",
                    '"' + name.value() + '"',
                    bands.makeString(", "),
                    "paint anything else as a block");
            return NOTHING;
        }
        boolean first = name.value().equals(kind.first());
        Measured other = form.meeting() == KindForm.Meeting.END_TO_END || first ? Measured.SECOND : Measured.FIRST;
        Optional<LineRange.End> to = keys.text("to").map(text -> end(text, other));
        Optional<LineRange.End> from = keys.text("from").map(text -> end(text, other));
        MutableMap<Statement.Which, LineRange.End> ends = Maps.mutable.empty();
        keys.mapping("ends")
                .forEach(entry -> which(entry, ends)
                        .ifPresent(which -> Keys.textOf(entry.value(), faults)
                                .ifPresent(text -> ends.put(which, end(text, other)))));
        ImmutableSet<Role> only = roles(keys, "only");
        ImmutableSet<Role> without = roles(keys, "without");
        ImmutableSet<Role> painted = (only.isEmpty() ? Sets.immutable.with(Role.values()) : only).difference(without);
        return new Statement.PaintBand(name.value(), first, to, from, ends.toImmutable(), painted);
    }

    private ImmutableSet<Role> roles(Keys keys, String key) {
        return collected(keys.texts(key), each -> role(each.value(), each.place()))
                .toImmutableSet();
    }

    /** {@code insulation}, {@code outermost insulation}, {@code innermost insulation} or {@code insulation 2}. */
    private Optional<Statement.Which> which(SourceNode.Entry entry, MutableMap<Statement.Which, LineRange.End> taken) {
        Matcher match = WHICH.matcher(entry.key());
        boolean named = match.matches();
        String side = named ? match.group(1) : null;
        String number = named ? match.group(4) : null;
        String word = !named ? entry.key() : side == null ? match.group(3) : match.group(2);
        Optional<Statement.Which> which = role(word, entry.place()).map(role -> {
            if (side != null) {
                return new Statement.Which(role, side.equals("innermost") ? 1 : Statement.Which.OUTERMOST);
            }
            return number == null ? Statement.Which.all(role) : new Statement.Which(role, Integer.parseInt(number));
        });
        if (which.map(taken::containsKey).orElse(false)) {
            faults.add(
                    entry.place(),
                    "each layer ends once",
                    '"' + entry.key() + '"',
                    "one key for a layer; innermost is the first",
                    "remove one of the two");
            return Optional.empty();
        }
        return which;
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

    private LineRange.End end(Located<String> text, Measured axis) {
        boolean endToEnd = form.meeting() == KindForm.Meeting.END_TO_END;
        boolean acrossFirst = axis == Measured.FIRST;
        if (text.value().equals(AWAY) && endToEnd && acrossFirst) {
            return end(new Located<>(kind.first() + ".inside - " + INTO_THE_ROOM, text.place()), axis);
        }
        Chart.Cut cut = cuts(acrossFirst).get(text.value());
        if (cut != null) {
            return LineRange.End.cut(cut);
        }
        Optional<Expression> line = expression(text.value(), text.place());
        if (line.isPresent() && line.get().measures() != axis) {
            String wanted = endToEnd
                    ? (acrossFirst ? "a line of a band" : "seam, or seam ± a length")
                    : "a line of the " + (acrossFirst ? kind.first() : kind.second());
            faults.add(
                    text.place(),
                    wanted + " is needed",
                    '"' + text.value() + "\", " + line.get().measures().noun(),
                    names().keyValuesView()
                            .select(each -> each.getTwo() == axis)
                            .collect(each -> each.getOne())
                            .toSortedList()
                            .makeString(", "),
                    "give the line it is measured from");
            return NOWHERE;
        }
        return line.map(LineRange.End::at).orElse(NOWHERE);
    }

    private LineRange across(Keys keys) {
        return range(keys, kind.axes().getFirst(), Measured.FIRST);
    }

    private LineRange along(Keys keys) {
        return range(keys, kind.axes().getLast(), Measured.SECOND);
    }

    private LineRange range(Keys keys, String key, Measured axis) {
        ImmutableList<Located<String>> two = keys.texts(key);
        if (two.size() != 2) {
            faults.add(
                    keys.place(),
                    "the range " + key + " is needed",
                    two.size() + " ends",
                    "[from, to]",
                    "add it: " + key + ": [" + key + ".inside, " + key + ".outside]");
            return NO_RANGE;
        }
        return new LineRange(end(two.getFirst(), axis), end(two.getLast(), axis));
    }

    private Statement strip(Keys keys) {
        ImmutableList<Statement.Corner> corners = corners(keys, 2);
        ImmutableSet<Control> carries = carried(keys);
        String what = what(keys, "strip");
        if (material(keys) instanceof Statement.MaterialChoice.Named sheet) {
            return new Statement.PaintStrip(what, carries, corners, sheet);
        }
        faults.add(
                keys.place(),
                "a strip is a sheet of its own",
                keys.text("material").map(text -> '"' + text.value() + '"').orElse(""),
                "the name of a material that can control what the strip carries",
                "write such as: material: airtight membrane");
        return NOTHING;
    }

    private ImmutableSet<Control> carried(Keys keys) {
        MutableSet<Control> carries = Sets.mutable.empty();
        ImmutableList<Located<String>> texts = keys.texts("carries");
        for (Located<String> text : texts) {
            DrawingNames.CONTROLS
                    .detectOptional(each -> DrawingNames.word(each).equals(text.value()))
                    .ifPresentOrElse(
                            carries::add,
                            () -> faults.add(
                                    text.place(),
                                    "a control layer is needed",
                                    '"' + text.value() + '"',
                                    "air, water, vapour",
                                    "write one of them"));
        }
        if (texts.isEmpty()) {
            faults.add(
                    keys.place(), "a strip carries a control layer", "", "air, water, vapour", "add: carries: [air]");
        }
        return carries.toImmutable();
    }

    private ImmutableList<Statement.Corner> corners(Keys keys, int least) {
        MutableList<Statement.Corner> corners = Lists.mutable.empty();
        ImmutableList<SourceNode> items = keys.list("corners");
        for (SourceNode item : items) {
            ImmutableList<Located<String>> two = Keys.textsOf(item, faults);
            if (two.size() != 2) {
                faults.add(
                        item, "a corner is needed", "[" + kind.axes().makeString(" line, ") + " line]", "write it so");
                continue;
            }
            corners.add(new Statement.Corner(end(two.getFirst(), Measured.FIRST), end(two.getLast(), Measured.SECOND)));
        }
        if (items.size() < least) {
            faults.add(
                    keys.place(), "it needs corners", String.valueOf(items.size()), least + " or more", "add corners");
        }
        return corners.toImmutable();
    }

    private Statement.MaterialChoice material(Keys keys) {
        Optional<Located<String>> text = keys.text("material");
        if (text.isEmpty()) {
            faults.add(
                    keys.place(),
                    "a material is needed",
                    "",
                    "add it: material: softwood, or material: same as wall.insulation");
        }
        String word = text.map(Located::value).orElse("");
        if (word.equals("ground")) {
            return new Statement.MaterialChoice.TheGround();
        }
        if (word.equals("lintel")) {
            return new Statement.MaterialChoice.TheLintel();
        }
        Statement.MaterialChoice named = new Statement.MaterialChoice.Named(word);
        if (!word.startsWith(SAME_AS)) {
            return named;
        }
        int other = word.indexOf(OTHERWISE);
        String layer = word.substring(SAME_AS.length(), other < 0 ? word.length() : other);
        return layer(layer.strip(), text.get().place(), true)
                .<Statement.MaterialChoice>map(each -> new Statement.MaterialChoice.SameAs(
                        each.band().equals(kind.first()),
                        each.band(),
                        each.role().orElseThrow(),
                        other < 0
                                ? Optional.empty()
                                : Optional.of(word.substring(other + OTHERWISE.length())
                                        .strip())))
                .orElse(named);
    }

    private Statement divide(Keys keys) {
        what(keys, "divide");
        Optional<Expression> across = place(keys, kind.axes().getFirst(), Measured.FIRST);
        Optional<Expression> along = place(keys, kind.axes().getLast(), Measured.SECOND);
        return across.isPresent() && along.isPresent() ? new Statement.Divide(across.get(), along.get()) : NOTHING;
    }

    /** One line of an axis. */
    private Optional<Expression> place(Keys keys, String key, Measured axis) {
        Optional<Located<String>> text = keys.text(key);
        Optional<Expression> line = text.map(each -> end(each, axis)).flatMap(LineRange.End::line);
        if (line.isEmpty()) {
            faults.add(
                    text.map(Located::place).orElse(keys.place()),
                    "a line of the " + key + " is needed",
                    text.map(each -> '"' + each.value() + '"').orElse(""),
                    "one line, not away or beyond",
                    "add it: " + key + ": " + key + ".outside");
        }
        return line;
    }

    private Statement ground(Keys keys) {
        Optional<Located<String>> level = keys.text("ground");
        if (!form.ground()) {
            faults.add(keys.place(), "this kind of junction does not stand in the ground", kind.label(), "remove it");
            return NOTHING;
        }
        return level.map(text -> end(text, Measured.FIRST))
                .flatMap(LineRange.End::line)
                .<Statement>map(Statement.Ground::new)
                .orElse(NOTHING);
    }

    private Statement frame(Keys keys) {
        if (!form.framed()) {
            faults.add(keys.place(), "this kind of junction has no frame", kind.label(), "remove it");
            return NOTHING;
        }
        boolean door = form.second() == KindForm.Second.DOOR;
        Optional<Expression> line = keys.text("frame")
                .filter(text -> !text.value().equals(SET_BACK))
                .flatMap(text -> frameLine(text, door ? Measured.SECOND : Measured.FIRST));
        Optional<Expression> sill =
                door ? keys.text("sill").flatMap(text -> frameLine(text, Measured.FIRST)) : Optional.empty();
        return new Statement.Frame(line, sill);
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
