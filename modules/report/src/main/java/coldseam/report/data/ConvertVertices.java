package coldseam.report.data;

import coldseam.audit.Mould;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.conduction.solid.BodySolution;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.vertex.VertexResult;
import coldseam.report.words.VertexWords;
import org.eclipse.collections.impl.factory.Lists;

/** Turns the audit's vertices into their data. */
final class ConvertVertices {

    private ConvertVertices() {}

    static VertexData row(VertexRow row, Mould mould) {
        return new VertexData(
                row.corner().name(),
                row.corner().place(),
                Convert.point(row.corner().at()),
                row.corner().ends().collect(end -> end.edge().name()),
                row.corner().angles(),
                row.sheet().map(VertexSheet::id),
                VertexWords.status(row, mould, UnitSystem.SI));
    }

    static VertexSheetData sheet(VertexSheet sheet) {
        VertexResult result = sheet.result();
        BodySolution solution = result.heat().map(VertexResult.Heat::solution).orElse(result.surface());
        return new VertexSheetData(
                sheet.id(),
                sheet.edges(),
                result.setup().edges().collect(end -> end.detail().id()),
                result.corner().map(own -> own.detail().id()),
                sheet.chosen(),
                sheet.places(),
                result.heat().map(heat -> BoundsData.of(heat.coupling())),
                result.heat().map(heat -> BoundsData.of(heat.chiExternal())),
                result.heat().map(heat -> BoundsData.of(heat.chiInternal())),
                result.temperatureFactor(),
                Lists.immutable.of(
                        result.coldest().x(),
                        result.coldest().y(),
                        result.coldest().z()),
                sheet.dewPointHumidity(),
                sheet.mouldHumidity(),
                solution.unknowns(),
                solution.met(),
                result.notes());
    }
}
