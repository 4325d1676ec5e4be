package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import coldseam.files.SourceNode;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.kind.KindForm;
import coldseam.junctions.language.Condition;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.ExpressionException;
import coldseam.junctions.language.ExpressionParser;
import coldseam.junctions.language.Keys;
import coldseam.junctions.language.LineRange;
import coldseam.junctions.language.Measured;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.eclipse.collections.impl.factory.Sets;

/** Reads the drawing of a detail file; every line and length is checked before any house is at hand. */
final class DrawingReader {

    private static final String AWAY = "away";
    private static final String BEYOND = "beyond";
    private static final String SET_BACK = "set-back";

    /** Which layers of a role end somewhere: the nth from the inside, or the outermost, or all. */
    private static final Pattern WHICH = Pattern.compile("(innermost|outermost) (.+)|(.+?)(?: ([1-9][0-9]?))?");

    private final FileDetail file;
    private final String content;
    private final Faults faults;
    private final JunctionKind kind;
    private final KindForm form;
    private final MutableMap<String, Measured> names;

    DrawingReader(FileDetail file, String content, Faults faults) {
        this.file = file;
        this.content = content;
        this.faults = faults;
        this.kind = file.kind();
        this.form = KindForm.of(kind);
        this.names = DrawingNames.of(kind);
    }

    BandDrawing drawing() {
        MutableList<DetailParameter> parameters = Lists.mutable.empty();
        file.parameters().each(each -> parameter(each).ifPresent(parameters::add));
        MutableMap<String, Measured> beforeLines = Maps.mutable.withMap(names);
        MutableList<BandDrawing.OwnLine> lines = Lists.mutable.empty();
        file.lines().each(each -> line(each).ifPresent(lines::add));
        MutableList<Statement> statements = Lists.mutable.empty();
        file.drawing().each(each -> statement(each, beforeLines).ifPresent(statements::add));
        if (form.framed() && statements.noneSatisfy(Statement.Frame.class::isInstance)) {
            faults.add(file.place(), "the drawing needs its frame", "", "", "add \"- frame: set-back\"");
        }
        return new BandDrawing(
                kind,
                collected(file.needs(), this::need),
                file.angles().map(each -> new BandDrawing.Angles(each.least(), each.most())),
                thicknesses(),
                collected(file.requires(), this::condition),
                parameters.toImmutable(),
                lines.toImmutable(),
                DetailFile.materials(file),
                statements.toImmutable(),
                content);
    }

    private static <T> ImmutableList<T> collected(
            ImmutableList<Located<String>> texts, java.util.function.Function<Located<String>, Optional<T>> reader) {
        MutableList<T> all = Lists.mutable.empty();
        texts.each(each -> reader.apply(each).ifPresent(all::add));
        return all.toImmutable();
    }

    private Optional<DetailParameter> parameter(Named<FileDetail.FileParameter> each) {
        FileDetail.FileParameter own = each.value();
        if (!(own.from() <= own.value() && own.value() <= own.to())) {
            faults.add(
                    each.place(),
                    "the parameter " + each.name() + " is out of its own range",
                    millimetres(own.value()),
                    millimetres(own.from()) + " to " + millimetres(own.to()),
                    "change its value, or its range if you know that the detail still stands");
            return Optional.empty();
        }
        return newName(each.name(), each.place(), Measured.LENGTH)
                ? Optional.of(new DetailParameter(each.name(), own.value(), own.from(), own.to(), own.says(), false))
                : Optional.empty();
    }

    private static String millimetres(double metres) {
        return Math.round(1e4 * metres) / 10.0 + " mm";
    }

    private boolean newName(String name, Position place, Measured measures) {
        if (names.containsKey(name) || name.equals(AWAY) || name.equals(BEYOND)) {
            faults.add(place, "a new name is needed", '"' + name + '"', "a name that is not taken", "choose another");
            return false;
        }
        names.put(name, measures);
        return true;
    }

    private Optional<BandDrawing.OwnLine> line(Named<Located<String>> each) {
        Optional<Expression> line =
                expression(each.value().value(), each.value().place(), names);
        return line.filter(found -> newName(each.name(), each.place(), found.measures()))
                .map(found -> new BandDrawing.OwnLine(each.name(), found));
    }

    private Optional<Expression> expression(String text, Position place, MutableMap<String, Measured> known) {
        try {
            return Optional.of(ExpressionParser.parse(text, known.toImmutable()));
        } catch (ExpressionException bad) {
            faults.add(place, bad.asked(), bad.got(), bad.allowed(), bad.next());
            return Optional.empty();
        }
    }

    private record LayerName(boolean first, String band, Optional<Role> role) {}

    /** {@code wall.insulation}, or {@code wall} where that is allowed. */
    private Optional<LayerName> layer(String text, Position place, boolean roleNeeded) {
        for (String band : KindForm.bands(kind)) {
            boolean first = band.equals(kind.first());
            if (text.equals(band) && !roleNeeded) {
                return Optional.of(new LayerName(first, band, Optional.empty()));
            }
            for (Role role : Role.values()) {
                if (text.equals(band + "." + DrawingNames.word(role))) {
                    return Optional.of(new LayerName(first, band, Optional.of(role)));
                }
            }
        }
        faults.add(
                place,
                "a layer of a band is needed",
                '"' + text + '"',
                KindForm.bands(kind).makeString(", ") + ", each with ." + roles(),
                "write it as wall.insulation");
        return Optional.empty();
    }

    private static String roles() {
        return Lists.immutable.with(Role.values()).collect(DrawingNames::word).makeString(", .");
    }

    private Optional<BandDrawing.Need> need(Located<String> text) {
        return layer(text.value(), text.place(), true)
                .map(each -> new BandDrawing.Need(
                        each.first(), each.band(), each.role().orElseThrow()));
    }

    private ImmutableList<BandDrawing.Thickness> thicknesses() {
        MutableList<BandDrawing.Thickness> all = Lists.mutable.empty();
        for (Named<FileDetail.FileSpan> each : file.thickness()) {
            layer(each.name(), each.place(), false)
                    .ifPresent(layer -> all.add(new BandDrawing.Thickness(
                            layer.first(),
                            layer.band(),
                            layer.role(),
                            each.value().least(),
                            each.value().most())));
        }
        return all.toImmutable();
    }

    private Optional<Condition> condition(Located<String> text) {
        return Condition.read(
                text,
                side -> expression(side, text.place(), names),
                "two lengths, two numbers or two lines of one band",
                faults);
    }

    // Statements.

    private Optional<Statement> statement(SourceNode node, MutableMap<String, Measured> frameNames) {
        ImmutableList<String> words =
                Lists.immutable.of("band", "block", "shape", "clear", "divide", "ground", "frame");
        if (node instanceof SourceNode.Mapping mapping && mapping.entries().notEmpty()) {
            // A later key may have the same word: the range along a seam is called "frame" where a frame meets a wall.
            String first = mapping.entries().getFirst().key();
            if (words.contains(first)) {
                return statement(first, new Keys(mapping, faults), frameNames);
            }
        }
        faults.add(
                node.place(),
                "a drawing statement is needed",
                node.shown(),
                "a mapping that begins with one of the keys " + words.makeString(", "),
                "write it so");
        return Optional.empty();
    }

    private Optional<Statement> statement(String word, Keys keys, MutableMap<String, Measured> frameNames) {
        int before = faults.count();
        Optional<Statement> statement = switch (word) {
            case "band" -> band(keys);
            case "block" -> block(keys);
            case "shape" -> shape(keys);
            case "clear" -> clear(keys);
            case "divide" -> divide(keys);
            case "ground" -> ground(keys);
            default -> frame(keys, frameNames);
        };
        keys.refuseOthers("a " + word + " statement");
        return faults.count() > before ? Optional.empty() : statement;
    }

    private Optional<Statement> band(Keys keys) {
        Keys.Text name = keys.text("band").orElse(null);
        if (name == null) {
            return Optional.empty();
        }
        ImmutableList<String> bands = KindForm.bands(kind);
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
                .toSet()
                .toImmutable();
    }

    private Optional<Role> role(String word, Position place) {
        Optional<Role> role = Lists.immutable
                .with(Role.values())
                .detectOptional(each -> DrawingNames.word(each).equals(word));
        if (role.isEmpty()) {
            faults.add(
                    place,
                    "a role is needed",
                    '"' + word + '"',
                    Lists.immutable
                            .with(Role.values())
                            .collect(DrawingNames::word)
                            .makeString(", "),
                    "write one of them");
        }
        return role;
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
        Optional<Expression> line = expression(text.text(), text.place(), names);
        if (line.isPresent() && line.get().measures() != axis) {
            String wanted = endToEnd
                    ? (acrossFirst ? "a line of a band" : "seam, or seam ± a length")
                    : "a line of the " + (acrossFirst ? kind.first() : kind.second());
            faults.add(
                    text.place(),
                    wanted + " is needed",
                    '"' + text.text() + "\", " + line.get().measures().noun(),
                    names.keyValuesView()
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
        ImmutableList<String> axes = KindForm.axes(kind);
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
        MutableList<Statement.Corner> corners = Lists.mutable.empty();
        ImmutableList<SourceNode> items = keys.list("corners");
        for (SourceNode item : items) {
            ImmutableList<Keys.Text> two = Keys.textsOf(item, faults);
            if (two.size() != 2) {
                faults.add(
                        item.place(),
                        "a corner is needed",
                        item.shown(),
                        "[" + KindForm.axes(kind).makeString(" line, ") + " line]",
                        "write it so");
                continue;
            }
            Optional<LineRange.End> across = end(two.getFirst(), Measured.FIRST);
            Optional<LineRange.End> along = end(two.getLast(), Measured.SECOND);
            if (across.isPresent() && along.isPresent()) {
                corners.add(new Statement.Corner(across.get(), along.get()));
            }
        }
        if (items.size() < 3) {
            faults.add(keys.place(), "a shape needs corners", String.valueOf(items.size()), "3 or more", "add corners");
        }
        Optional<Statement.MaterialChoice> material = material(keys);
        Optional<Role> role = keys.text("role").flatMap(text -> role(text.text(), text.place()));
        boolean drawnOnly = keys.flag("drawn-only");
        Optional<Keys.Text> what = keys.text("shape");
        if (material.isEmpty() || what.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Statement.PaintShape(what.get().text(), corners.toImmutable(), material.get(), role, drawnOnly));
    }

    private Optional<Statement.MaterialChoice> material(Keys keys) {
        Optional<Keys.Text> text = keys.text("material");
        if (text.isEmpty()) {
            faults.add(
                    keys.place(),
                    "a material is needed",
                    "",
                    "",
                    "add it: material: softwood, or material: same as wall.insulation");
            return Optional.empty();
        }
        String word = text.get().text();
        if (word.equals("ground")) {
            return Optional.of(new Statement.MaterialChoice.TheGround());
        }
        if (word.startsWith("same as ")) {
            return layer(word.substring("same as ".length()).strip(), text.get().place(), true)
                    .map(each -> new Statement.MaterialChoice.SameAs(
                            each.first(), each.band(), each.role().orElseThrow()));
        }
        return Optional.of(new Statement.MaterialChoice.Named(word));
    }

    private Optional<Statement> clear(Keys keys) {
        ImmutableList<String> axes = KindForm.axes(kind);
        keys.text("clear");
        Optional<LineRange> across = range(keys, axes.getFirst(), Measured.FIRST);
        Optional<LineRange> along = range(keys, axes.getLast(), Measured.SECOND);
        return across.isPresent() && along.isPresent()
                ? Optional.of(new Statement.Clear(across.get(), along.get()))
                : Optional.empty();
    }

    private Optional<Statement> divide(Keys keys) {
        ImmutableList<String> axes = KindForm.axes(kind);
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
            faults.add(
                    keys.place(), "this kind of junction does not stand in the ground", kind.label(), "", "remove it");
            return Optional.empty();
        }
        return level.flatMap(text -> end(text, Measured.FIRST))
                .flatMap(LineRange.End::line)
                .map(Statement.Ground::new);
    }

    private Optional<Statement> frame(Keys keys, MutableMap<String, Measured> frameNames) {
        if (!form.framed()) {
            faults.add(keys.place(), "this kind of junction has no frame", kind.label(), "", "remove it");
            return Optional.empty();
        }
        boolean door = form.second() == KindForm.Second.DOOR;
        Optional<Keys.Text> outside = keys.text("frame");
        Optional<Expression> line = outside.filter(text -> !text.text().equals(SET_BACK))
                .flatMap(text -> frameLine(text, door ? Measured.SECOND : Measured.FIRST, frameNames));
        Optional<Expression> sill = door
                ? keys.text("sill").flatMap(text -> frameLine(text, Measured.FIRST, frameNames))
                : Optional.empty();
        return outside.map(each -> new Statement.Frame(line, sill));
    }

    private Optional<Expression> frameLine(Keys.Text text, Measured axis, MutableMap<String, Measured> frameNames) {
        MutableMap<String, Measured> known =
                frameNames.reject((name, measures) -> name.startsWith("frame.") || name.startsWith("door."));
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
