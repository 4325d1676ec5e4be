package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.ControlLine;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.path.ControlLines;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.section.Composition;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Frame walls that keep rain out on what carries, behind boards that drain. */
@Tag("slow")
final class DrainedWallTest {

    /** Roofs that stay, which lose heat over the returned board, but keep rain out as any. */
    private static final Set<String> KEPT =
            Set.of("eaves-inner-boards-return-down-the-wall", "verge-inner-boards-return-down-the-gable");

    private static Assembly with(Assembly assembly, ImmutableList<Layer> layers) {
        return new Assembly(assembly.name(), layers, assembly.fasteners(), assembly.gaps(), assembly.rain());
    }

    private static boolean framed(Assembly assembly) {
        return assembly.layers()
                .anySatisfy(layer ->
                        layer.role() == Role.STRUCTURE && layer.framing().isPresent());
    }

    /** A frame wall with its membrane moved behind its boards; anything else as it is. */
    private static Assembly drained(Assembly assembly) {
        int membrane = assembly.layers()
                .detectIndex(layer ->
                        layer.role() == Role.MEMBRANE && layer.controls().contains(Control.WATER));
        int boards = assembly.layers().detectIndex(layer -> layer.role() == Role.INSULATION);
        if (!framed(assembly) || membrane != boards + 1) {
            return assembly;
        }
        MutableList<Layer> layers = Lists.mutable.withAll(assembly.layers());
        layers.add(boards, layers.remove(membrane));
        return with(assembly, layers.toImmutable());
    }

    private static Assembly drained(JunctionKind kind, int which, Assembly assembly) {
        return kind.faces().get(which) == BridgeKind.Facing.SIDE ? drained(assembly) : assembly;
    }

    private static ControlLine water(Detail detail, JunctionSetup setup) {
        Composition composition = BuiltIn.composed(detail, setup);
        PenLine line = PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                0);
        return ControlLines.of(composition, detail, line).detect(each -> each.control() == Control.WATER);
    }

    @Test
    void theBestOfEachKindLeadWaterOnFromBehindTheBoards() {
        MutableList<String> broken = Lists.mutable.empty();
        int joined = 0;
        for (JunctionKind kind : JunctionKind.all()) {
            for (Detail detail : CatalogueFile.builtIn().options(kind)) {
                JunctionSetup usual = TypicalBuild.FRAME.setup(detail);
                JunctionSetup setup = usual.between(
                        drained(kind, 0, usual.first()), usual.second().map(each -> drained(kind, 1, each)));
                if (detail.rank() != Rank.BEST && !KEPT.contains(detail.id()) || setup.equals(usual)) {
                    continue;
                }
                try {
                    if (water(detail, usual) instanceof ControlLine.Continuous) {
                        joined++;
                        if (!(water(detail, setup) instanceof ControlLine.Continuous)) {
                            broken.add(detail.id());
                        }
                    }
                } catch (DetailDoesNotFit misfit) {
                    // Not for frames.
                }
            }
        }
        assertEquals("", broken.makeString(", "));
        assertTrue(joined > 40, joined + " lead it on");
    }

    @Test
    void cornersLeadWaterOnWhereOneWallAloneIsDrained() {
        for (String id : List.of("outside-corner-unbroken", "inside-corner-boards-tight")) {
            Detail detail = CatalogueFile.builtIn().find(id).orElseThrow();
            JunctionSetup usual = TypicalBuild.FRAME.setup(detail);
            Assembly plain = usual.first();
            Assembly drained = drained(plain);
            assertTrue(drained.keepsWaterOutBehindBoards());
            assertEquals(
                    List.of(),
                    List.of(
                                    usual.between(plain, Optional.of(drained)),
                                    usual.between(drained, Optional.of(plain)),
                                    usual.between(drained, Optional.of(drained)))
                            .stream()
                            .map(setup -> water(detail, setup))
                            .filter(line -> !(line instanceof ControlLine.Continuous))
                            .toList(),
                    id);
        }
    }

    @Test
    void whatIsDrainedMustBearRainAndHaveAGap() {
        Assembly usual = TypicalBuild.FRAME.assemblies().detect(each -> drained(each) != each);
        Assembly drained = drained(usual);
        assertTrue(drained.keepsWaterOutBehindBoards());
        assertFalse(usual.keepsWaterOutBehindBoards(), "outside the boards");

        assertFalse(
                with(drained, drained.layers().reject(layer -> layer.air().isPresent()))
                        .keepsWaterOutBehindBoards(),
                "without a gap");

        Optional<Material> fibres = MaterialLibrary.named("wood fibre insulation board");
        Assembly ofFibres = with(
                drained,
                drained.layers()
                        .collect(layer -> layer.role() == Role.INSULATION
                                ? TypicalSetups.of(layer, fibres.orElseThrow())
                                : layer));
        assertFalse(ofFibres.keepsWaterOutBehindBoards(), "of what no source says may get wet");
    }
}
