package coldseam.audit.rules;

import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Something a house must keep. It finds values; how they are worded is in {@code RuleWords} of the report.
 *
 * <p>A rule is a class here whose name ends in {@code Rule}, its line in {@link Rules}, its sentences in {@code RuleWords} and
 * a house that breaks it in {@code RuleHouses} of the tests; the build fails where one of them is missing, and says which.
 */
public interface Rule {

    /** Unique, in small letters and hyphens: the class's name without its last word. */
    default String id() {
        return getClass()
                .getSimpleName()
                .replaceFirst("Rule$", "")
                .replaceAll("(?<=.)(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
    }

    /** What breaks it; empty where nothing does. */
    ImmutableList<Draft> find(Facts facts);
}
