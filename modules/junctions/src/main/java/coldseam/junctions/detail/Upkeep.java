package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.files.Default;
import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import coldseam.junctions.language.Statement;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What somebody looks after once a detail is built. It follows from what the drawing shows and from the kind, by {@code upkeep.yaml}:
 * whatever else is drawn lies covered, and asks for nothing.
 *
 * @param look what to do
 * @param often when
 */
public record Upkeep(String look, String often) {

    @Noun("upkeep")
    record FileRules(ImmutableList<FileRule> upkeep) {}

    /** One rule as it is written: where any of what it names is. */
    @Noun("a rule of upkeep")
    record FileRule(
            String look,
            String often,
            @Default("") ImmutableSet<String> drawn,
            @Default("") ImmutableSet<JunctionKind> junctions,
            @Default("") ImmutableSet<PointKind> points,
            @Default("false") boolean inside) {}

    private record Rule(FileRule file, Pattern drawn) {

        boolean asks(Detail detail) {
            return file.junctions().contains(detail.kind())
                    || file.points().contains(detail.kind())
                    || file.inside() && isInside(detail)
                    || detail.drawing()
                            .pieces()
                            .anySatisfy(name -> drawn.matcher(name).find());
        }

        private static boolean isInside(Detail detail) {
            return detail.drawing() instanceof BandDrawing drawing
                    && drawing.only().bands().anySatisfy(each -> each.build() == Statement.Build.INSULATED_INSIDE);
        }
    }

    private static final ImmutableList<Rule> RULES = new ResourceFolder("/")
            .read("upkeep.yaml", FileRules.class, Maps.immutable.empty())
            .upkeep()
            .collect(file -> new Rule(
                    file,
                    file.drawn().isEmpty()
                            ? Pattern.compile("(?!)")
                            : Pattern.compile(file.drawn().makeString("\\b(?:", "|", ")s?\\b"))));

    /** All there is, in the order in which it is printed. */
    public static ImmutableList<Upkeep> all() {
        return RULES.collect(Upkeep::of);
    }

    /** Words of names of pieces that ask for something. */
    static ImmutableList<String> words() {
        return RULES.flatCollect(rule -> rule.file().drawn());
    }

    /** What a detail asks for; nothing where nothing of it wears in sight, or where its section is drawn by hand. */
    public static ImmutableList<Upkeep> of(Detail detail) {
        return RULES.select(rule -> rule.asks(detail)).collect(Upkeep::of);
    }

    private static Upkeep of(Rule rule) {
        return new Upkeep(rule.file().look(), rule.file().often());
    }
}
