package coldseam.report.data;

import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.junctions.vertex.VertexResult;
import coldseam.report.words.VertexWords;
import org.eclipse.collections.impl.factory.Lists;

/** Turns the audit's vertices into their data. */
final class ConvertVertices {

    private ConvertVertices() {}

    static VertexData row(VertexRow row) {
        return new VertexData(
                row.corner().name(),
                row.corner().place(),
                Lists.immutable.of(
                        row.corner().at().x(),
                        row.corner().at().y(),
                        row.corner().at().z()),
                row.corner().ends().collect(end -> end.edge().name()),
                row.corner().angles(),
                row.sheet().map(VertexSheet::id),
                VertexWords.status(row));
    }

    static VertexSheetData sheet(VertexSheet sheet) {
        VertexResult result = sheet.result();
        return new VertexSheetData(
                sheet.id(),
                sheet.edges(),
                result.setup().edges().collect(end -> end.detail().id()),
                sheet.chosen(),
                sheet.places(),
                BoundsData.of(result.coupling()),
                BoundsData.of(result.chiExternal()),
                BoundsData.of(result.chiInternal()),
                result.temperatureFactor(),
                Lists.immutable.of(
                        result.coldest().x(),
                        result.coldest().y(),
                        result.coldest().z()),
                sheet.dewPointHumidity(),
                sheet.mouldHumidity(),
                result.solution().unknowns(),
                result.solution().met(),
                result.notes());
    }
}
