package coldseam.junctions.detail;

import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialChecks;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import coldseam.files.quantity.UnreadableException;
import coldseam.junctions.language.Condition;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.ExpressionParser;
import coldseam.junctions.language.Measured;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MapIterable;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Reads the terms of a detail file's drawing, and whatever lines, lengths and roles it is written in; all are checked before
 * any house is at hand.
 */
abstract class TermsReader {

    /** What a filling begins with that is that of a layer. */
    static final String SAME_AS = "same as ";

    private final FileText file;
    private final String content;
    private final MutableMap<String, Measured> names;
    private ImmutableMap<String, Measured> beforeLines;

    private final String noun;
    private final ImmutableList<String> bands;

    final Faults faults;

    /**
     * @param names that the drawing may use from the start, with what they measure
     * @param noun of what has layers, such as "a band"
     * @param bands all there are, by their names in the drawing
     */
    TermsReader(
            FileBridge bridge,
            String content,
            Faults faults,
            MutableMap<String, Measured> names,
            String noun,
            ImmutableList<String> bands) {
        this.noun = noun;
        this.bands = bands;
        this.file = bridge.text();
        this.content = content;
        this.faults = faults;
        this.names = names;
        this.beforeLines = names.toImmutable();
    }

    /**
     * A layer of a band, or the whole of it.
     *
     * @param band its name in the drawing
     * @param role of the layer; empty for the whole
     */
    record LayerName(String band, Optional<Role> role) {}

    /** {@code wall.insulation}, or {@code wall} where that is allowed; adds a fault where a text means no layer. */
    Optional<LayerName> layer(String text, Position place, boolean roleNeeded) {
        for (String band : bands) {
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
                "a layer of " + noun + " is needed",
                '"' + text + '"',
                bands.makeString(", ") + ", each with ." + words().makeString(", ."),
                "write it as " + bands.getFirst() + ".insulation");
        return Optional.empty();
    }

    /** {@code wall framed}; adds a fault where a text means no build. */
    Optional<BandDrawing.Built> built(Located<String> text) {
        for (String band : bands) {
            for (Statement.Build build : Statement.Build.values()) {
                if (text.value().equals(band + " " + build.words())) {
                    return Optional.of(new BandDrawing.Built(band, band.equals(bands.getFirst()), build));
                }
            }
        }
        faults.add(
                text.place(),
                noun + "'s build is needed",
                '"' + text.value() + '"',
                bands.makeString(", ") + ", followed by one of: " + Statement.Build.choice(),
                "write such as: where: " + bands.getFirst() + " framed");
        return Optional.empty();
    }

    /** What the two sides of a condition may be, in words. */
    abstract String alike();

    /** Whether a name may not be given to a line or parameter. */
    boolean isTaken(String name) {
        return names.containsKey(name);
    }

    DrawingTerms terms() {
        ImmutableList<DetailParameter> parameters = collected(file.parameters(), this::parameter);
        beforeLines = names.toImmutable();
        ImmutableList<DrawingTerms.OwnLine> lines = collected(file.lines(), this::line);
        file.materials()
                .forEach(own -> MaterialChecks.like(own.name(), own.value().conductivity(), own.place(), faults));
        return new DrawingTerms(
                collected(
                        file.needs(),
                        each -> layer(each.value(), each.place(), true)
                                .map(layer -> new DrawingTerms.Need(
                                        layer.band(), layer.role().orElseThrow()))),
                collected(
                        file.thickness(),
                        each -> layer(each.name(), each.place(), false)
                                .map(layer -> new DrawingTerms.Thickness(
                                        layer.band(),
                                        layer.role(),
                                        each.value().least(),
                                        each.value().most()))),
                collected(
                        file.requires(),
                        each -> Condition.read(each, side -> expression(side, each.place()), alike(), faults)),
                parameters,
                lines,
                file.materials()
                        .toImmutableMap(Named::name, each -> each.value().named(each.name())),
                content);
    }

    static <S, T> ImmutableList<T> collected(ImmutableList<S> of, Function<S, Optional<T>> reader) {
        MutableList<T> all = Lists.mutable.empty();
        of.each(each -> reader.apply(each).ifPresent(all::add));
        return all.toImmutable();
    }

    private Optional<DetailParameter> parameter(Named<FileText.FileParameter> each) {
        FileText.FileParameter own = each.value();
        DetailParameter parameter =
                new DetailParameter(each.name(), own.value(), own.from(), own.to(), own.says(), own.insulates(), false);
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
        if (isTaken(name)) {
            faults.add(place, "a new name is needed", '"' + name + '"', "a name that is not taken", "choose another");
            return false;
        }
        names.put(name, measures);
        return true;
    }

    private Optional<DrawingTerms.OwnLine> line(Named<Located<String>> each) {
        return expression(each.value().value(), each.value().place())
                .filter(found -> newName(each.name(), each.place(), found.measures()))
                .map(found -> new DrawingTerms.OwnLine(each.name(), found));
    }

    /**
     * A line or a length in the names known so far.
     *
     * @param wanted what it must measure
     * @param needed what is told where it measures something else, with an example and what to do
     */
    final Optional<Expression> measuring(
            Located<String> text, Measured wanted, String needed, String example, String next) {
        Optional<Expression> found = expression(text.value(), text.place());
        if (found.isPresent() && found.get().measures() != wanted) {
            faults.add(
                    text.place(),
                    needed + " is needed",
                    '"' + text.value() + "\", " + found.get().measures().noun(),
                    example,
                    next);
            return Optional.empty();
        }
        return found;
    }

    /** The names known so far. */
    ImmutableMap<String, Measured> names() {
        return names.toImmutable();
    }

    /** The names known before the drawing's own lines. */
    ImmutableMap<String, Measured> namesBeforeLines() {
        return beforeLines;
    }

    /** A line, length or number in the names known so far. */
    Optional<Expression> expression(String text, Position place) {
        return expression(text, place, names);
    }

    Optional<Expression> expression(String text, Position place, MapIterable<String, Measured> known) {
        try {
            return Optional.of(ExpressionParser.parse(text, known));
        } catch (UnreadableException bad) {
            faults.add(place, bad.asked(), bad.got(), bad.allowed(), bad.next());
            return Optional.empty();
        }
    }

    Optional<Role> role(String word, Position place) {
        Optional<Role> role = named(word);
        if (role.isEmpty()) {
            faults.add(place, "a role is needed", '"' + word + '"', words().makeString(", "), "write one of them");
        }
        return role;
    }

    static Optional<Role> named(String word) {
        return Lists.immutable
                .with(Role.values())
                .detectOptional(each -> DrawingNames.word(each).equals(word));
    }

    /** The words for the roles. */
    static ImmutableList<String> words() {
        return Lists.immutable.with(Role.values()).collect(DrawingNames::word);
    }
}
