package coldseam.junctions.detail;

import coldseam.envelope.BridgeKind;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Noun;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A detail file as it is written, of a junction, a point or a corner. */
@Noun("a detail")
sealed interface FileBridge permits FileDetail, FilePoint, FileCorner {

    Located<String> id();

    BridgeKind kind();

    /** Other kinds for which its drawing is the same; none where there are none. */
    default ImmutableList<? extends BridgeKind> alsoFor() {
        return Lists.immutable.empty();
    }

    FileText text();

    /** What it costs for each metre of a junction, or for each point or corner; empty where the file does not say. */
    OptionalDouble cost();

    /** Reads its drawing; adds what is wrong to the faults. */
    DetailDrawing read(String content, Faults faults);
}
