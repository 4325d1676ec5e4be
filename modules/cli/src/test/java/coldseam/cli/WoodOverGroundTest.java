package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.assumed.Rain;
import coldseam.audit.house.HouseAudit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How far over the ground the wood of frame walls stands, where the house file leaves the ground at the floor's level. */
@Tag("slow")
class WoodOverGroundTest {

    @TempDir
    Path folder;

    private ImmutableList<Double> heights(String raft) throws IOException {
        String larch = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/larch-house.yaml"));
        Path file = Files.writeString(
                folder.resolve("house.yaml"), larch.replaceFirst("set back: 80 mm", "set back: 80 mm" + raft));
        return Rain.SPLASHED.in(HouseAudit.of(file, Bench.SHARED).compute()).collect(Rain.Splashed::height);
    }

    /** 150 mm are drawn at the raft and the threshold unless the file says otherwise. */
    @Test
    void theGroundLiesWhereTheDetailDrawsIt() throws IOException {
        assertEquals(Lists.immutable.empty(), heights(""));
        assertEquals(Lists.immutable.of(0.05), heights(", plinth: 50 mm"));
    }
}
