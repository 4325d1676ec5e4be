package coldseam.junctions.point;

import coldseam.envelope.Role;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.detail.FileDetail;
import coldseam.junctions.language.Condition;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.ExpressionException;
import coldseam.junctions.language.ExpressionParser;
import coldseam.junctions.language.Measured;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/** Reads the drawing of a point file; every line and length is checked before any house is at hand. */
final class PointReader {

    static final String INSIDE = "inside";
    static final String OUTSIDE = "outside";

    /** The key under {@code thickness} that means the whole build-up. */
    private static final String SURFACE = "surface";

    private static final String SAME_AS = "same as ";

    private final FilePoint file;
    private final String content;
    private final Faults faults;
    private final MutableMap<String, Measured> names = Maps.mutable.empty();

    PointReader(FilePoint file, String content, Faults faults) {
        this.file = file;
        this.content = content;
        this.faults = faults;
        names.put(INSIDE, Measured.DEPTH);
        names.put(OUTSIDE, Measured.DEPTH);
        for (Role role : Role.values()) {
            names.put(word(role) + "." + INSIDE, Measured.DEPTH);
            names.put(word(role) + "." + OUTSIDE, Measured.DEPTH);
        }
    }

    static String word(Role role) {
        return role.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    PointDrawing drawing() {
        ImmutableList<PointDrawing.Parameter> parameters = collected(file.parameters(), this::parameter);
        ImmutableList<PointDrawing.OwnLine> lines = collected(file.lines(), this::line);
        if (file.drawing().isEmpty()) {
            faults.add(file.point().place(), "the drawing needs a body", "none", "1 or more", "draw what goes through");
        }
        return new PointDrawing(
                collected(file.needs(), each -> role(each.value(), each.place())),
                collected(file.thickness(), this::thickness),
                collected(file.requires(), this::condition),
                parameters,
                lines,
                DetailFile.materials(file.materials()),
                collected(file.drawing(), this::body),
                content);
    }

    private static <S, T> ImmutableList<T> collected(ImmutableList<S> of, Function<S, Optional<T>> reader) {
        MutableList<T> all = Lists.mutable.empty();
        of.each(each -> reader.apply(each).ifPresent(all::add));
        return all.toImmutable();
    }

    private Optional<PointDrawing.Parameter> parameter(Named<FileDetail.FileParameter> each) {
        FileDetail.FileParameter own = each.value();
        PointDrawing.Parameter parameter =
                new PointDrawing.Parameter(each.name(), own.value(), own.from(), own.to(), own.says());
        if (!parameter.allows(own.value())) {
            faults.add(
                    each.place(),
                    "the parameter " + each.name() + " is out of its own range",
                    millimetres(own.value()),
                    millimetres(own.from()) + " to " + millimetres(own.to()),
                    "change its value, or its range if you know that the detail still stands");
            return Optional.empty();
        }
        return newName(each.name(), each.place(), Measured.LENGTH) ? Optional.of(parameter) : Optional.empty();
    }

    private static String millimetres(double metres) {
        return Math.round(1e4 * metres) / 10.0 + " mm";
    }

    private boolean newName(String name, Position place, Measured measures) {
        if (names.containsKey(name)) {
            faults.add(place, "a new name is needed", '"' + name + '"', "a name that is not taken", "choose another");
            return false;
        }
        names.put(name, measures);
        return true;
    }

    private Optional<PointDrawing.OwnLine> line(Named<Located<String>> each) {
        return expression(each.value())
                .filter(found -> newName(each.name(), each.place(), found.measures()))
                .map(found -> new PointDrawing.OwnLine(each.name(), found));
    }

    private Optional<Expression> expression(Located<String> text) {
        return expression(text.value(), text.place());
    }

    private Optional<Expression> expression(String text, Position place) {
        try {
            return Optional.of(ExpressionParser.parse(text, names.toImmutable()));
        } catch (ExpressionException bad) {
            faults.add(place, bad.asked(), bad.got(), bad.allowed(), bad.next());
            return Optional.empty();
        }
    }

    private Optional<Expression> measuring(Located<String> text, Measured wanted, String example) {
        Optional<Expression> found = expression(text);
        if (found.isPresent() && found.get().measures() != wanted) {
            faults.add(
                    text.place(),
                    wanted.noun() + " is needed",
                    '"' + text.value() + "\", " + found.get().measures().noun(),
                    example,
                    wanted == Measured.DEPTH ? "give the line it is measured from" : "write a length");
            return Optional.empty();
        }
        return found;
    }

    private Optional<Role> role(String word, Position place) {
        ImmutableList<Role> roles = Lists.immutable.with(Role.values());
        Optional<Role> role = roles.detectOptional(each -> word(each).equals(word));
        if (role.isEmpty()) {
            faults.add(
                    place,
                    "a role is needed",
                    '"' + word + '"',
                    roles.collect(PointReader::word).makeString(", "),
                    "write one of them");
        }
        return role;
    }

    private Optional<PointDrawing.Thickness> thickness(Named<FileDetail.FileSpan> each) {
        double least = each.value().least();
        double most = each.value().most();
        if (each.name().equals(SURFACE)) {
            return Optional.of(new PointDrawing.Thickness(Optional.empty(), least, most));
        }
        return role(each.name(), each.place()).map(role -> new PointDrawing.Thickness(Optional.of(role), least, most));
    }

    private Optional<Condition> condition(Located<String> text) {
        return Condition.read(
                text, side -> expression(side, text.place()), "two lengths, two numbers or two lines", faults);
    }

    private Optional<PointDrawing.Turned> body(FilePoint.FileBody each) {
        String length = "a length, such as 8 mm or 2 * radius";
        String line = "a line, such as structure.outside or outside + 150 mm";
        Optional<Expression> diameter = measuring(each.diameter(), Measured.LENGTH, length);
        Optional<Expression> hole = each.hole().flatMap(text -> measuring(text, Measured.LENGTH, length));
        Optional<Expression> from = measuring(each.from(), Measured.DEPTH, line);
        Optional<Expression> to = measuring(each.to(), Measured.DEPTH, line);
        Optional<PointDrawing.Filling> filling = filling(each.material());
        boolean whole = hole.isPresent() == each.hole().isPresent();
        if (!whole || diameter.isEmpty() || from.isEmpty() || to.isEmpty() || filling.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PointDrawing.Turned(
                each.body(), filling.get(), diameter.get(), hole, from.get(), to.get(), each.drawnOnly()));
    }

    private Optional<PointDrawing.Filling> filling(Located<String> text) {
        if (text.value().startsWith(SAME_AS)) {
            return role(text.value().substring(SAME_AS.length()).strip(), text.place())
                    .map(role -> new PointDrawing.Filling(Optional.empty(), Optional.of(role)));
        }
        return Optional.of(new PointDrawing.Filling(Optional.of(text.value()), Optional.empty()));
    }
}
