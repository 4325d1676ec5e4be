package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Section;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.PenLines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What lines a garage or a loft stands outside of all that carries: whatever it is called, it ends where a cladding does. */
final class OuterLiningTest {

    private static final Layer BOARD = Samples.layer("gypsum plasterboard", 0.25, 16, Role.FINISH);

    /** A surface with a board on its outer face, instead of a cladding and what airs it. */
    private static Assembly lined(Assembly plain, Role role) {
        Layer board = new Layer(
                BOARD.material(),
                BOARD.thickness(),
                role,
                BOARD.framing(),
                BOARD.air(),
                BOARD.taper(),
                BOARD.controls());
        return new Assembly(
                plain.name(),
                plain.layers()
                        .reject(layer -> layer.role() == Role.CLADDING || layer.role() == Role.AIR_LAYER)
                        .newWith(board),
                plain.fasteners(),
                plain.gaps(),
                plain.rain());
    }

    private static JunctionSetup lined(Detail detail, Role role) {
        JunctionSetup plain = TypicalBuild.FRAME.setup(detail);
        return plain.between(lined(plain.first(), role), plain.second().map(second -> lined(second, role)));
    }

    private static Section section(Detail detail, Role role) {
        return BuiltIn.composed(detail, lined(detail, role)).heatFlow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"wall under an overhang", "overhang edge", "unheated neighbour", "outside corner"})
    void endsWhereACladdingDoes(String kind) {
        CatalogueFile.builtIn()
                .options(JunctionKind.of(kind))
                .each(detail ->
                        assertEquals(section(detail, Role.CLADDING), section(detail, Role.FINISH), detail.id()));
    }

    @Test
    void doesNotCutABoardOffTheOneItMeets() {
        Detail detail = CatalogueFile.builtIn()
                .find("wall-under-overhang-lapped", JunctionKind.of("wall under an overhang"))
                .orElseThrow();
        Composition composition = BuiltIn.composed(detail, lined(detail, Role.FINISH));
        PenLine line = PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                0);
        assertTrue(line.unbroken());
    }
}
