package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Point;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan.Origin;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A house's set-back places the frame in every detail, or the detail says that it cannot stand there. */
class SetBackTest {

    private static JunctionKind kind(String label) {
        return JunctionKind.of(label);
    }

    private static JunctionSetup setup(JunctionKind kind, double setBack) {
        JunctionSetup sample = Samples.setup(kind);
        Opening window = sample.opening().orElseThrow();
        return new JunctionSetup(
                kind,
                sample.first(),
                sample.second(),
                sample.angle(),
                sample.firstExposure(),
                sample.secondExposure(),
                java.util.Optional.of(new Opening(
                        window.name(),
                        window.kind(),
                        window.surface(),
                        window.width(),
                        window.height(),
                        window.left(),
                        window.sill(),
                        window.rating(),
                        window.frameDepth(),
                        OptionalDouble.of(setBack))),
                sample.floorThickness(),
                sample.upstand(),
                sample.ground(),
                20,
                -5);
    }

    private static Composition composed(Detail detail, double setBack) {
        return Composer.compose(detail, setup(detail.junction(), setBack));
    }

    private static ImmutableList<Detail> fitting(JunctionKind kind, double setBack) {
        return CatalogueFile.builtIn().options(kind).select(detail -> {
            try {
                composed(detail, setBack);
                return true;
            } catch (DetailDoesNotFit e) {
                return false;
            }
        });
    }

    /** Of the sample wall: 15 plaster, 215 brick, 160 board, 10 render. */
    @ParameterizedTest
    @CsvSource({
        "jamb, 0.25, inner-bare",
        "jamb, 0.17, flush-lapped",
        "jamb, 0.08, middle-lapped",
        "jamb, 0.01, mid-depth",
        "head, 0.25, inner-bare",
        "head, 0.17, flush-lapped",
        "head, 0.08, middle-lapped",
        "sill, 0.25, inner-bare",
        "sill, 0.17, flush-lapped",
        "sill, 0.08, middle-on-board"
    })
    void theFrameStandsWhereTheHouseSays(String label, double setBack, String fits) {
        JunctionKind kind = kind(label);
        double thickness = Samples.setup(kind).first().thickness();
        ImmutableList<Detail> options = fitting(kind, setBack);
        assertTrue(
                options.anySatisfy(each -> each.id().contains(fits)),
                () -> options.collect(Detail::id).makeString(", "));
        for (Detail detail : options) {
            ImmutableList<Point> frame = composed(detail, setBack)
                    .plan()
                    .pieces()
                    .detect(piece -> piece.origin() instanceof Origin.OfFrame)
                    .outline()
                    .corners();
            double outside = kind == JunctionKind.JAMB
                    ? frame.collectDouble(Point::y).max()
                    : frame.collectDouble(Point::x).max();
            assertEquals(thickness - setBack, outside, 1e-9, detail.id());
            assertEquals(setBack, composed(detail, setBack).frameSetBack().orElseThrow(), 1e-9, detail.id());
        }
    }

    /** In the brick no detail with a frame in the board fits: its psi would be another building's. */
    @Test
    void aFrameInTheBrickIsNotOneInTheBoard() {
        assertEquals(
                Lists.immutable.of("jamb-inner-bare-reveal", "jamb-reveal-lined"),
                fitting(JunctionKind.JAMB, 0.25).collect(Detail::id));
    }

    @ParameterizedTest
    @ValueSource(strings = {"head", "jamb", "sill"})
    void aFrameInTheRoomIsRefused(String label) {
        JunctionKind kind = kind(label);
        Detail detail = CatalogueFile.builtIn()
                .options(kind)
                .select(TypicalSetups::usual)
                .getFirst();
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> composed(detail, 0.35));
        assertTrue(
                refused.reasons()
                        .collect(Phrase::toString)
                        .anySatisfy(each -> each.contains("set back 350 mm") && each.contains("400 mm")),
                refused::getMessage);
    }
}
