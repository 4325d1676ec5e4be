package coldseam.junctions.detail;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.envelope.shell.Surface;
import coldseam.files.Default;
import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import coldseam.junctions.language.Statement;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What somebody looks after once a house is built. It follows from what a detail's drawing shows and from its kind, and from the
 * layers that are in sight, by {@code upkeep.yaml}: whatever else is built lies covered, and asks for nothing.
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
            @Default("") ImmutableSet<String> outermost,
            @Default("false") boolean otherwise,
            @Default("false") boolean inside) {}

    /** A rule with its words: of a piece those that its name begins with, of a material those that its name ends with. */
    private record Rule(FileRule file, Pattern drawn, Pattern outermost) {

        boolean asks(Detail detail, ImmutableList<String> pieces) {
            return file.junctions().contains(detail.kind())
                    || file.points().contains(detail.kind())
                    || file.inside() && isInside(detail)
                    || pieces.anySatisfy(name -> drawn.matcher(name).lookingAt());
        }

        private static boolean isInside(Detail detail) {
            return detail.drawing() instanceof BandDrawing drawing
                    && drawing.only().bands().anySatisfy(each -> each.build() == Statement.Build.INSULATED_INSIDE);
        }

        boolean asksOf(Assembly assembly) {
            return outermost
                    .matcher(assembly.layers().getLast().material().name())
                    .find();
        }
    }

    /** As upkeep.yaml writes them. */
    static final ImmutableList<FileRule> FILE = new ResourceFolder("/")
            .read("upkeep.yaml", FileRules.class, Maps.immutable.empty())
            .upkeep();

    private static final ImmutableList<Rule> RULES = FILE.collect(
            file -> new Rule(file, words(file.drawn(), "", "s?\\b"), words(file.outermost(), "\\b", "s?$")));

    private static Pattern words(ImmutableSet<String> words, String before, String after) {
        return Pattern.compile(words.isEmpty() ? "(?!)" : words.makeString(before + "(?:", "|", ")" + after));
    }

    /** All there is, in the order in which it is printed. */
    public static ImmutableList<Upkeep> all() {
        return RULES.collect(Upkeep::of);
    }

    /** What a detail asks for wherever all that it may draw is there; of a section that is drawn by hand only what its kind tells. */
    public static ImmutableList<Upkeep> of(Detail detail) {
        return of(detail, detail.drawing().pieces());
    }

    /**
     * What a detail asks for in one house.
     *
     * @param pieces names of what is drawn there besides layers
     */
    public static ImmutableList<Upkeep> of(Detail detail, ImmutableList<String> pieces) {
        return RULES.select(rule -> rule.asks(detail, pieces)).collect(Upkeep::of);
    }

    /** What a surface's layers ask for; nothing where none are given. */
    public static ImmutableList<Upkeep> of(Surface surface) {
        return surface.assembly().map(built -> of(surface, built)).orElse(Lists.immutable.empty());
    }

    private static ImmutableList<Upkeep> of(Surface surface, Assembly built) {
        boolean inTheOpen = surface.faces(Exposure.Kind.OUTDOORS);
        // Nobody paints boards under a floor, and what lies on them is laid to be walked on.
        boolean boardsInside =
                built.insulatedInside() && surface.use() != Body.Use.FLOOR && surface.use() != Body.Use.OVERHANG;
        ImmutableList<Rule> face = inTheOpen ? RULES.select(rule -> rule.asksOf(built)) : Lists.immutable.empty();
        return RULES.select(rule -> face.contains(rule)
                        || inTheOpen && face.isEmpty() && rule.file().otherwise()
                        || boardsInside && rule.file().inside())
                .collect(Upkeep::of);
    }

    private static Upkeep of(Rule rule) {
        return new Upkeep(rule.file().look(), rule.file().often());
    }
}
