package coldseam.junctions.detail;

import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Cautions that several details give, told in one file: {@code cautions.yaml}. */
final class Cautions {

    @Noun("cautions")
    record FileCautions(ImmutableMap<String, String> cautions) {}

    /** Texts by their names. */
    static final ImmutableMap<String, String> BY_NAME = new ResourceFolder("/")
            .read("cautions.yaml", FileCautions.class, Maps.immutable.empty())
            .cautions();

    private Cautions() {}

    /**
     * What a detail cautions of.
     *
     * @param written each the name of a caution of that file, or a text of its own
     */
    static ImmutableList<String> told(ImmutableList<String> written) {
        return written.collect(each -> BY_NAME.getIfAbsentValue(each, each));
    }
}
