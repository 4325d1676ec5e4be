package coldseam.junctions.language;

import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Expressions as the trade says them: {@code wall.insulation.outside} is the outer face of the wall's insulation. */
final class Spoken {

    private static final String NAME = "([a-z][a-z ]*)";

    /** One way of writing, and what is said for it. */
    private record Turn(Pattern written, String said) {

        Turn(String written, String said) {
            this(Pattern.compile(written), said);
        }
    }

    /** In this order: what is said of a difference before what is said of its parts. */
    private static final ImmutableList<Turn> TURNS = Lists.immutable.of(
            // A length with a name of its own, alone.
            new Turn("^" + NAME + "$", "the $1"),
            new Turn(NAME + "\\." + NAME + "\\.outside - \\1\\.\\2\\.inside", "the thickness of the $1's $2"),
            new Turn(NAME + "\\.outside - \\1\\.inside", "the thickness of the $1"),
            new Turn(NAME + "\\.far - \\1\\.near", "the thickness of the $1"),
            new Turn(NAME + "\\." + NAME + "\\.inside", "the inner face of the $1's $2"),
            new Turn(NAME + "\\." + NAME + "\\.outside", "the outer face of the $1's $2"),
            new Turn(NAME + "\\.inside", "the inner face of the $1"),
            new Turn(NAME + "\\.outside", "the outer face of the $1"),
            new Turn("storey floor\\.near", "the underside of the storey floor"),
            new Turn("storey floor\\.far", "the upper face of the storey floor"),
            new Turn("ground\\.top", "the top of the ground"),
            new Turn(NAME + "\\." + NAME, "the $2 of the $1"),
            new Turn("halfway\\(([^(),]*), ([^(),]*)\\)", "halfway between $1 and $2"),
            new Turn("max\\(([^(),]*), ([^(),]*)\\)", "the greater of $1 and $2"),
            new Turn("min\\(([^(),]*), ([^(),]*)\\)", "the lesser of $1 and $2"),
            new Turn(" - ", " less "),
            new Turn(" \\+ ", " plus "),
            new Turn(" \\* ", " times "));

    private Spoken() {}

    static String of(String expression) {
        return TURNS.injectInto(
                expression, (said, turn) -> turn.written().matcher(said).replaceAll(turn.said()));
    }
}
