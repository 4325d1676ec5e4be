package coldseam.junctions.detail;

import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Role;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Position;
import coldseam.files.SourceNode;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Keys;
import coldseam.junctions.language.LineRange;
import coldseam.junctions.language.Measured;
import coldseam.junctions.language.Statement;
import java.util.Map;
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

    /** What may be said of one kind of build only. */
    private static final ImmutableSet<String> PAINTS = Sets.immutable.of("band", "block", "shape", "strip", "clear");

    private final FileDetail file;
    private final JunctionKind kind;
    private final KindForm form;

    BandDrawingReader(FileDetail file, String content, Faults faults) {
        super(file, content, faults, DrawingNames.of(file.kind()));
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
        ImmutableList<BandDrawing.Contrast> contrasts = form.twoSurfaces()
                ? file.where()
                        .flatCollect(each ->
                                BandDrawing.Contrast.of(each.value()).stream().toList())
                : Lists.immutable.empty();
        return new BandDrawing.Only(
                file.where()
                        .reject(each -> contrasts.anySatisfy(one -> one.words().equals(each.value())))
                        .flatCollect(each ->
                                built(each.value(), each.place()).stream().toList()),
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

    /** {@code wall.insulation}, or {@code wall} where that is allowed. */
    @Override
    Optional<LayerName> layer(String text, Position place, boolean roleNeeded) {
        for (String band : kind.bands()) {
            if (text.equals(band) && !roleNeeded) {
                return Optional.of(new LayerName(band, Optional.empty()));
            }
            for (Role role : Role.values()) {
                if (text.equals(band + "." + DrawingNames.word(role))) {
                    return Optional.of(new LayerName(band, Optional.of(role)));
                }
            }
        }
        faults.add(
                place,
                "a layer of a band is needed",
                '"' + text + '"',
                kind.bands().makeString(", ") + ", each with ." + words().makeString(", ."),
                "write it as wall.insulation");
        return Optional.empty();
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
        Optional<Keys.Text> name = keys.text(PART);
        keys.refuseOthers("a part");
        ImmutableList<String> known = SharedParts.names();
        if (name.isEmpty() || !known.contains(name.get().text())) {
            name.ifPresent(text -> faults.add(
                    text.place(),
                    "a part that comes with the catalogue is needed",
                    '"' + text.text() + '"',
                    known.makeString(", "),
                    "draw anything else as a block"));
            return Lists.immutable.empty();
        }
        return SharedParts.statements(name.get().text()).collect(this::inAxes);
    }

    /** A part's statement with this kind's names of its ranges for {@code across} and {@code along}. */
    private SourceNode inAxes(SourceNode statement) {
        if (!(statement instanceof SourceNode.Mapping mapping)) {
            return statement;
        }
        Map<String, String> axes =
                Map.of("across", kind.axes().getFirst(), "along", kind.axes().getLast());
        return new SourceNode.Mapping(
                mapping.place(),
                mapping.entries()
                        .collect(each -> new SourceNode.Entry(
                                axes.getOrDefault(each.key(), each.key()), each.place(), each.value())));
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
        Optional<Statement> statement = switch (word) {
            case "band" -> band(keys);
            case "block" -> block(keys);
            case "shape" -> shape(keys);
            case "strip" -> strip(keys);
            case "clear" -> clear(keys);
            case "divide" -> divide(keys);
            case "ground" -> ground(keys);
            default -> frame(keys);
        };
        if (PAINTS.contains(word)) {
            statement = where(keys, statement);
        }
        keys.refuseOthers("a " + word + " statement");
        return faults.count() > before ? Optional.empty() : statement;
    }

    /** Such as {@code where: wall framed}. */
    private Optional<Statement> where(Keys keys, Optional<Statement> statement) {
        Optional<Keys.Text> text = keys.text("where");
        if (text.isEmpty()) {
            return statement;
        }
        return built(text.get().text(), text.get().place())
                .flatMap(built -> statement.map(each -> new Statement.Where(built.first(), built.build(), each)));
    }

    /** Such as {@code wall framed}. */
    private Optional<BandDrawing.Built> built(String text, Position place) {
        for (String band : kind.bands()) {
            for (Statement.Build build : Statement.Build.values()) {
                if (text.equals(band + " " + build.words())) {
                    return Optional.of(new BandDrawing.Built(band, band.equals(kind.first()), build));
                }
            }
        }
        faults.add(
                place,
                "a band's build is needed",
                '"' + text + '"',
                kind.bands().makeString(", ") + ", followed by one of: " + Statement.Build.choice(),
                "write such as: where: wall framed");
        return Optional.empty();
    }

    private Optional<Statement> band(Keys keys) {
        Keys.Text name = keys.text("band").orElse(null);
        if (name == null) {
            return Optional.empty();
        }
        ImmutableList<String> bands = kind.bands();
        if (!bands.contains(name.text())) {
            faults.add(
                    name.place(),
                    "a band of this kind is needed",
                    '"' + name.text() + '"',
                    bands.makeString(", "),
                    "paint anything else as a block");
            return Optional.empty();
        }
        boolean first = name.text().equals(kind.first());
        Measured other = form.meeting() == KindForm.Meeting.END_TO_END || first ? Measured.SECOND : Measured.FIRST;
        Optional<LineRange.End> to = keys.text("to").flatMap(text -> end(text, other));
        Optional<LineRange.End> from = keys.text("from").flatMap(text -> end(text, other));
        MutableMap<Statement.Which, LineRange.End> ends = Maps.mutable.empty();
        keys.mapping("ends")
                .forEach(entry -> which(entry, ends)
                        .ifPresent(which -> Keys.textOf(entry.value(), faults)
                                .flatMap(text -> end(text, other))
                                .ifPresent(end -> ends.put(which, end))));
        ImmutableSet<Role> only = roles(keys.texts("only"));
        ImmutableSet<Role> without = roles(keys.texts("without"));
        ImmutableSet<Role> painted = (only.isEmpty() ? Sets.immutable.with(Role.values()) : only).difference(without);
        return Optional.of(new Statement.PaintBand(name.text(), first, to, from, ends.toImmutable(), painted));
    }

    private ImmutableSet<Role> roles(ImmutableList<Keys.Text> texts) {
        return texts.collect(each -> role(each.text(), each.place()))
                .select(Optional::isPresent)
                .collect(Optional::get)
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

    private Optional<LineRange.End> end(Keys.Text text, Measured axis) {
        boolean endToEnd = form.meeting() == KindForm.Meeting.END_TO_END;
        boolean acrossFirst = axis == Measured.FIRST;
        if (text.text().equals(AWAY) && endToEnd && acrossFirst) {
            return end(new Keys.Text(kind.first() + ".inside - " + INTO_THE_ROOM, text.place()), axis);
        }
        if (text.text().equals(AWAY) && !endToEnd) {
            return Optional.of(LineRange.End.cut(acrossFirst ? Chart.Cut.SECOND_AWAY : Chart.Cut.FIRST_AWAY));
        }
        if (text.text().equals(BEYOND) && !endToEnd) {
            return Optional.of(LineRange.End.cut(acrossFirst ? Chart.Cut.SECOND_BEYOND : Chart.Cut.FIRST_BEYOND));
        }
        if (endToEnd && !acrossFirst && text.text().equals(kind.first() + " end")) {
            return Optional.of(LineRange.End.cut(Chart.Cut.FIRST_AWAY));
        }
        if (endToEnd && !acrossFirst && text.text().equals(kind.second() + " end")) {
            return Optional.of(LineRange.End.cut(Chart.Cut.SECOND_AWAY));
        }
        Optional<Expression> line = expression(text.text(), text.place());
        if (line.isPresent() && line.get().measures() != axis) {
            String wanted = endToEnd
                    ? (acrossFirst ? "a line of a band" : "seam, or seam ± a length")
                    : "a line of the " + (acrossFirst ? kind.first() : kind.second());
            faults.add(
                    text.place(),
                    wanted + " is needed",
                    '"' + text.text() + "\", " + line.get().measures().noun(),
                    names().keyValuesView()
                            .select(each -> each.getTwo() == axis)
                            .collect(each -> each.getOne())
                            .toSortedList()
                            .makeString(", "),
                    "give the line it is measured from");
            return Optional.empty();
        }
        return line.map(LineRange.End::at);
    }

    private Optional<LineRange> range(Keys keys, String key, Measured axis) {
        ImmutableList<Keys.Text> two = keys.texts(key);
        if (two.size() != 2) {
            faults.add(
                    keys.place(),
                    "the range " + key + " is needed",
                    two.size() + " ends",
                    "[from, to]",
                    "add it: " + key + ": [" + key + ".inside, " + key + ".outside]");
            return Optional.empty();
        }
        Optional<LineRange.End> from = end(two.getFirst(), axis);
        Optional<LineRange.End> to = end(two.getLast(), axis);
        return from.isPresent() && to.isPresent() ? Optional.of(new LineRange(from.get(), to.get())) : Optional.empty();
    }

    private Optional<Statement> block(Keys keys) {
        ImmutableList<String> axes = kind.axes();
        Optional<LineRange> across = range(keys, axes.getFirst(), Measured.FIRST);
        Optional<LineRange> along = range(keys, axes.getLast(), Measured.SECOND);
        Optional<Statement.MaterialChoice> material = material(keys);
        Optional<Role> role = keys.text("role").flatMap(text -> role(text.text(), text.place()));
        boolean drawnOnly = keys.flag("drawn-only");
        Optional<Keys.Text> what = keys.text("block");
        if (across.isEmpty() || along.isEmpty() || material.isEmpty() || what.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Statement.PaintBlock(
                what.get().text(), across.get(), along.get(), material.get(), role, drawnOnly));
    }

    private Optional<Statement> shape(Keys keys) {
        ImmutableList<Statement.Corner> corners = corners(keys, 3);
        Optional<Statement.MaterialChoice> material = material(keys);
        Optional<Role> role = keys.text("role").flatMap(text -> role(text.text(), text.place()));
        boolean drawnOnly = keys.flag("drawn-only");
        Optional<Keys.Text> what = keys.text("shape");
        if (material.isEmpty() || what.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Statement.PaintShape(what.get().text(), corners, material.get(), role, drawnOnly));
    }

    private Optional<Statement> strip(Keys keys) {
        ImmutableList<Statement.Corner> corners = corners(keys, 2);
        ImmutableSet<Control> carries = carried(keys);
        Optional<Statement.MaterialChoice> material = material(keys);
        if (material.isPresent() && !(material.get() instanceof Statement.MaterialChoice.Named)) {
            faults.add(
                    keys.place(),
                    "a strip is a sheet of its own",
                    keys.text("material").map(text -> '"' + text.text() + '"').orElse(""),
                    "the name of a material that can control what the strip carries",
                    "write such as: material: airtight membrane");
        }
        return keys.text("strip")
                .flatMap(what -> material.filter(Statement.MaterialChoice.Named.class::isInstance)
                        .map(sheet -> new Statement.PaintStrip(
                                what.text(), carries, corners, (Statement.MaterialChoice.Named) sheet)));
    }

    private ImmutableSet<Control> carried(Keys keys) {
        MutableSet<Control> carries = Sets.mutable.empty();
        ImmutableList<Keys.Text> texts = keys.texts("carries");
        for (Keys.Text text : texts) {
            DrawingNames.CONTROLS
                    .detectOptional(each -> DrawingNames.word(each).equals(text.text()))
                    .ifPresentOrElse(
                            carries::add,
                            () -> faults.add(
                                    text.place(),
                                    "a control layer is needed",
                                    '"' + text.text() + '"',
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
            ImmutableList<Keys.Text> two = Keys.textsOf(item, faults);
            if (two.size() != 2) {
                faults.add(
                        item, "a corner is needed", "[" + kind.axes().makeString(" line, ") + " line]", "write it so");
                continue;
            }
            Optional<LineRange.End> across = end(two.getFirst(), Measured.FIRST);
            Optional<LineRange.End> along = end(two.getLast(), Measured.SECOND);
            if (across.isPresent() && along.isPresent()) {
                corners.add(new Statement.Corner(across.get(), along.get()));
            }
        }
        if (items.size() < least) {
            faults.add(
                    keys.place(), "it needs corners", String.valueOf(items.size()), least + " or more", "add corners");
        }
        return corners.toImmutable();
    }

    private Optional<Statement.MaterialChoice> material(Keys keys) {
        Optional<Keys.Text> text = keys.text("material");
        if (text.isEmpty()) {
            faults.add(
                    keys.place(),
                    "a material is needed",
                    "",
                    "add it: material: softwood, or material: same as wall.insulation");
            return Optional.empty();
        }
        String word = text.get().text();
        if (word.equals("ground")) {
            return Optional.of(new Statement.MaterialChoice.TheGround());
        }
        if (word.startsWith("same as ")) {
            int other = word.indexOf(OTHERWISE);
            String layer = word.substring("same as ".length(), other < 0 ? word.length() : other);
            return layer(layer.strip(), text.get().place(), true)
                    .map(each -> new Statement.MaterialChoice.SameAs(
                            each.band().equals(kind.first()),
                            each.band(),
                            each.role().orElseThrow(),
                            other < 0
                                    ? Optional.empty()
                                    : Optional.of(word.substring(other + OTHERWISE.length())
                                            .strip())));
        }
        return Optional.of(new Statement.MaterialChoice.Named(word));
    }

    private Optional<Statement> clear(Keys keys) {
        ImmutableList<String> axes = kind.axes();
        keys.text("clear");
        Optional<LineRange> across = range(keys, axes.getFirst(), Measured.FIRST);
        Optional<LineRange> along = range(keys, axes.getLast(), Measured.SECOND);
        return across.isPresent() && along.isPresent()
                ? Optional.of(new Statement.Clear(across.get(), along.get()))
                : Optional.empty();
    }

    private Optional<Statement> divide(Keys keys) {
        ImmutableList<String> axes = kind.axes();
        keys.text("divide");
        Optional<Expression> across = place(keys, axes.getFirst(), Measured.FIRST);
        Optional<Expression> along = place(keys, axes.getLast(), Measured.SECOND);
        return across.isPresent() && along.isPresent()
                ? Optional.of(new Statement.Divide(across.get(), along.get()))
                : Optional.empty();
    }

    /** One line of an axis. */
    private Optional<Expression> place(Keys keys, String key, Measured axis) {
        Optional<Keys.Text> text = keys.text(key);
        Optional<Expression> line = text.flatMap(each -> end(each, axis)).flatMap(LineRange.End::line);
        if (line.isEmpty()) {
            faults.add(
                    text.map(Keys.Text::place).orElse(keys.place()),
                    "a line of the " + key + " is needed",
                    text.map(each -> '"' + each.text() + '"').orElse(""),
                    "one line, not away or beyond",
                    "add it: " + key + ": " + key + ".outside");
        }
        return line;
    }

    private Optional<Statement> ground(Keys keys) {
        Optional<Keys.Text> level = keys.text("ground");
        if (!form.ground()) {
            faults.add(keys.place(), "this kind of junction does not stand in the ground", kind.label(), "remove it");
            return Optional.empty();
        }
        return level.flatMap(text -> end(text, Measured.FIRST))
                .flatMap(LineRange.End::line)
                .map(Statement.Ground::new);
    }

    private Optional<Statement> frame(Keys keys) {
        if (!form.framed()) {
            faults.add(keys.place(), "this kind of junction has no frame", kind.label(), "remove it");
            return Optional.empty();
        }
        boolean door = form.second() == KindForm.Second.DOOR;
        Optional<Keys.Text> outside = keys.text("frame");
        Optional<Expression> line = outside.filter(text -> !text.text().equals(SET_BACK))
                .flatMap(text -> frameLine(text, door ? Measured.SECOND : Measured.FIRST));
        Optional<Expression> sill =
                door ? keys.text("sill").flatMap(text -> frameLine(text, Measured.FIRST)) : Optional.empty();
        return outside.map(each -> new Statement.Frame(line, sill));
    }

    private Optional<Expression> frameLine(Keys.Text text, Measured axis) {
        ImmutableMap<String, Measured> known =
                namesBeforeLines().reject((name, measures) -> name.startsWith("frame.") || name.startsWith("door."));
        Optional<Expression> line = expression(text.text(), text.place(), known);
        if (line.isPresent() && line.get().measures() != axis) {
            faults.add(
                    text.place(),
                    "a line across the wall is needed",
                    '"' + text.text() + '"',
                    "set-back, or such as wall.insulation.outside - 20 mm",
                    "give the line of its outer face");
            return Optional.empty();
        }
        return line;
    }
}
