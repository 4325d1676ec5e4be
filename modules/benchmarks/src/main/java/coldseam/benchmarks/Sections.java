package coldseam.benchmarks;

import coldseam.conduction.Section;
import coldseam.junctions.hand.Drawn;
import coldseam.junctions.hand.DrawnSection;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The eight junction sections that are timed: files of {@code modules/benchmarks/sections}; read in the project's folder. */
final class Sections {

    private static final Path FOLDER = Path.of("modules", "benchmarks", "sections");

    private static final ImmutableList<String> NAMES = Lists.immutable.of(
            "slab-through-insulation",
            "roof-edge",
            "steel-plates",
            "iso-10211-case-2",
            "flashing",
            "window-jamb",
            "slab-on-ground",
            "parapet");

    private Sections() {}

    /** All eight. */
    static ImmutableList<Section> all() {
        return NAMES.collect(Sections::of);
    }

    /** One by its name. */
    static Section of(String name) {
        return ((DrawnSection) Drawn.load(FOLDER.resolve(name + ".yaml"))).section();
    }
}
