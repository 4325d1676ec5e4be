package coldseam.junctions;

import coldseam.envelope.Material;
import java.util.Optional;
import java.util.function.Function;

/** The materials details may name in tests. */
public final class BuiltIn {

    private BuiltIn() {}

    public static final Function<String, Optional<Material>> LIBRARY =
            coldseam.envelope.file.house.MaterialLibrary::named;
}
