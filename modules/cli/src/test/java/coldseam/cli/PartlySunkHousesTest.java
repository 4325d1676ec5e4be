package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import java.io.IOException;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Houses of which a part lies deeper than the rest. */
@Tag("slow")
class PartlySunkHousesTest {

    /** Under the higher floor's edge, too, there is a detail that fits. */
    @Test
    void everyChosenDetailFits() throws IOException {
        for (String house : Lists.immutable.of("split-level", "part-cellar")) {
            Audit audit = HouseAudit.of(
                            CommittedReport.ROOT.resolve("fixtures/houses/shapes/" + house + ".yaml"), Bench.SHARED)
                    .compute();
            assertEquals(
                    Lists.immutable.empty(),
                    audit.findings().select(each -> each.rule().equals("detail-out-of-range")),
                    house);
        }
    }
}
