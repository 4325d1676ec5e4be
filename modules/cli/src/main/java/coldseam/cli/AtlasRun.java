package coldseam.cli;

import coldseam.conduction.Accuracy;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.quantity.UnitSystem;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;

final class AtlasRun {
    AtlasRun(Terminal terminal, Layers layers, UnitSystem units, Accuracy accuracy) {}

    void write(ImmutableList<JunctionKind> kinds, Path folder) {
        throw new IllegalStateException();
    }
}
