package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Houses of which a part lies deeper than the rest. */
@Tag("slow")
class PartlySunkHousesTest {

    /** Under the higher floor's edge, too, there is a detail that fits. */
    @Test
    void everyChosenDetailFits() {
        for (String house : Lists.immutable.of("split-level", "part-cellar")) {
            Audit audit = Bench.shared("shapes/" + house);
            assertEquals(
                    Lists.immutable.empty(),
                    audit.findings().select(each -> each.rule().equals("detail-out-of-range")),
                    house);
        }
    }
}
