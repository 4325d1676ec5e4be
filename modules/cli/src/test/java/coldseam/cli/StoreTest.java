package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.Keeping;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.store.KeptFolder;
import coldseam.junctions.store.PathStore;
import coldseam.junctions.store.SolutionStore;
import coldseam.report.DetailSvg;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet drawn from the store is the sheet that was drawn when it was solved, to the byte. */
@Tag("slow")
class StoreTest {

    private static final Accuracy COARSE = new Accuracy(1e-3, 100_000);

    @TempDir
    Path folder;

    @Test
    void keptSectionsDrawTheSame() throws IOException {
        String solved = drawing(BridgeComputers.computer(COARSE));
        assertEquals(solved, drawing(keeping()));
        try (Stream<Path> kept = Files.walk(folder)) {
            assertTrue(kept.anyMatch(Files::isRegularFile), "nothing was kept");
        }
        assertEquals(solved, drawing(keeping()));
    }

    private BridgeComputer keeping() {
        KeptFolder kept = KeptFolder.in(folder);
        return BridgeComputers.computer(
                COARSE,
                new SolutionStore(kept, Conduction::solve),
                BodySolver::solve,
                new PathStore(kept, WeakestPaths::of),
                Keeping.NOTHING);
    }

    private static String drawing(BridgeComputer computer) {
        Detail detail = CatalogueFile.builtIn().find("terrace-edge-boards-meet").orElseThrow();
        return DetailSvg.text(
                computer.compute(detail, TypicalBuild.MASONRY.setup(JunctionKind.TERRACE_EDGE)),
                Lists.immutable.empty(),
                UnitSystem.SI);
    }
}
