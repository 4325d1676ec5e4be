package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Digests;
import coldseam.audit.Finding;
import coldseam.audit.engine.Altered;
import coldseam.audit.engine.Auditor;
import coldseam.audit.engine.Progress;
import coldseam.audit.engine.Sample;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The psi of the house file's dimension system is held to the limit, however small that of the other is. */
class PsiOfTheSystemTest {

    private static final String LIMITS = "limits: {psi: 0.05 W/(m·K), geometry-psi: 0.05 W/(m·K)}\n";

    @ParameterizedTest
    @CsvSource({
        "external, 0.094, 0.034, true",
        "external, 0.034, 0.094, false",
        "internal, 0.034, 0.094, true",
        "internal, 0.094, 0.034, false"
    })
    void theOtherSystemsPsiIsNotJudged(String system, double external, double internal, boolean over) {
        House house = Sample.house(Sample.yaml().replace("dimensions: external", "dimensions: " + system) + LIMITS);
        BridgeComputer computer = Sample.computer((detail, setup) -> result(detail, setup, external, internal));
        ImmutableList<Finding> findings = new Auditor(Sample.catalogue(Sample.good()), computer, "test")
                .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT)
                .findings();
        assertEquals(over ? 1 : 0, findings.size(), findings::toString);
        if (over) {
            TransmittanceOverLimitRule.Found found = (TransmittanceOverLimitRule.Found)
                    findings.getOnly().breaches().getOnly().evidence();
            assertEquals(DimensionSystem.valueOf(system.toUpperCase(Locale.ROOT)), found.system());
            assertTrue(found.transmittance().contains(0.094), () -> "held to the limit: " + found.transmittance());
            assertEquals(0.05, found.limit());
        }
    }

    /** What geometry makes the larger one has the larger limit; the other has its own, however large that is for the first. */
    @ParameterizedTest
    @CsvSource({
        "external, 0.094, 0.034, false",
        "external, 0.094, 0.194, true",
        "internal, 0.034, 0.094, false",
        "internal, 0.194, 0.094, true"
    })
    void theLargerByGeometryHasALimitOfItsOwn(String system, double external, double internal, boolean over) {
        House house = Sample.house(Sample.yaml().replace("dimensions: external", "dimensions: " + system)
                + LIMITS.replace("geometry-psi: 0.05", "geometry-psi: 0.1"));
        BridgeComputer computer = Sample.computer((detail, setup) -> result(detail, setup, external, internal));
        assertEquals(
                over ? 1 : 0,
                new Auditor(Sample.catalogue(Sample.good()), computer, "test")
                        .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT)
                        .findings()
                        .size());
    }

    /** What the made-up details give, but for the corners. */
    private static JunctionResult result(Detail detail, JunctionSetup setup, double external, double internal) {
        JunctionResult made = Sample.computer().compute(detail, setup);
        boolean corner = setup.kind() == JunctionKind.OUTSIDE_CORNER;
        return new Altered(made).withPsi(Interval.of(corner ? external : -0.2), Interval.of(corner ? internal : -0.2));
    }
}
