package coldseam.envelope.file.house;

import coldseam.files.Faults;
import coldseam.files.SourceNode;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Says of a file of another sort what it is, once, instead of finding fault with each of its keys. */
public final class OtherFile {

    private static final String DETAIL = "a detail's file";
    private static final String NAME_IT = "name it in a house file, under junctions, points or corners";

    /** What a file is by a key that it begins with, and what is to be done with it. */
    private record Sort(String key, String what, String next) {}

    private static final ImmutableList<Sort> SORTS = Lists.immutable.of(
            new Sort("house", "a house file", "give it to coldseam check or audit, or name another file"),
            new Sort("section", "a section file", "give it to coldseam section, or " + NAME_IT),
            new Sort("detail", DETAIL, NAME_IT),
            new Sort("point", DETAIL, NAME_IT),
            new Sort("corner", DETAIL, NAME_IT));

    private OtherFile() {}

    /**
     * Whether a file is of another sort than the one that is needed, which is then told.
     *
     * @param needed as messages name it
     * @param keys by any of which a file is of that sort
     */
    public static boolean isRefused(SourceNode file, String needed, ImmutableList<String> keys, Faults faults) {
        if (!(file instanceof SourceNode.Mapping mapping)
                || keys.anySatisfy(key -> mapping.entry(key).isPresent())) {
            return false;
        }
        return SORTS.detectOptional(sort -> mapping.entry(sort.key()).isPresent())
                .map(sort -> {
                    faults.add(file.place(), needed + " is needed", sort.what(), sort.next());
                    return true;
                })
                .orElse(false);
    }
}
