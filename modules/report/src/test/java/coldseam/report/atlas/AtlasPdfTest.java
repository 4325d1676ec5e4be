package coldseam.report.atlas;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.atlas.Atlas;
import coldseam.junctions.atlas.AtlasCurve;
import coldseam.junctions.atlas.Sweep;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.path.WeakestPaths;
import coldseam.report.pdf.Paper;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The atlas read back. */
@Tag("slow")
class AtlasPdfTest {

    @Test
    void oneKindStandsOnOnePageWithItsOptionsNumbersAndMisfits() throws Exception {
        ImmutableList<AtlasCurve> curves = Atlas.compute(
                Sweep.of(TypicalBuild.MASONRY.setup(JunctionKind.OUTSIDE_CORNER), "at the south corner"),
                Sweep.thicknesses(UnitSystem.SI),
                setup -> CatalogueFile.builtIn()
                        .options(setup.kind())
                        .select(detail -> TypicalBuild.MASONRY.setup(detail).equals(setup)),
                BridgeComputers.measuring(new Accuracy(1e-2, 20_000), Conduction::solve, WeakestPaths::of),
                (done, of) -> {});
        byte[] bytes = AtlasPdf.bytes(curves, "typical build-ups", UnitSystem.SI, Paper.A4, "coldseam test");
        assertArrayEquals(bytes, AtlasPdf.bytes(curves, "typical build-ups", UnitSystem.SI, Paper.A4, "coldseam test"));
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertEquals(2, document.getNumberOfPages());
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(2);
            String text = stripper.getText(document);
            assertTrue(text.contains("Outside corner"), text);
            curves.forEach(curve -> assertTrue(
                    text.contains(curve.detail().id()), curve.detail().id()));
            assertTrue(text.contains("400 mm"), text);
            assertTrue(text.replaceAll("\\s+", " ").contains("In the house: at the south corner."), text);
            boolean misfits = curves.anySatisfy(
                    curve -> curve.points().anySatisfy(point -> point.measures().isEmpty()));
            assertEquals(misfits, text.contains("not fit at 0 mm"), text);
        }
        String inches = new PDFTextStripper()
                .getText(Loader.loadPDF(
                        AtlasPdf.bytes(curves, "typical build-ups", UnitSystem.US, Paper.LETTER, "coldseam test")));
        assertTrue(inches.contains("Btu/(h·ft·°F)"), inches);
        assertTrue(inches.contains("from nothing to 15 3/4 in"), inches);
    }
}
