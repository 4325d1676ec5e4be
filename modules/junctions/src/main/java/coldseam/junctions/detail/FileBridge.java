package coldseam.junctions.detail;

import coldseam.envelope.BridgeKind;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Noun;
import java.util.OptionalDouble;

/** A detail file as it is written, of a junction, a point or a corner. */
@Noun("a detail")
sealed interface FileBridge permits FileDetail, FilePoint, FileCorner {

    /** Its id. */
    Located<String> id();

    BridgeKind kind();

    FileText text();

    /** Its cost; empty where the file gives none. */
    OptionalDouble amount();

    Cost.Per per();

    /** Reads its drawing; adds what is wrong to the faults. */
    DetailDrawing read(String content, Faults faults);
}
