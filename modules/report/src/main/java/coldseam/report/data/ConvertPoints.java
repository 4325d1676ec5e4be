package coldseam.report.data;

import coldseam.audit.BridgeSheet;
import coldseam.audit.PointRow;
import coldseam.junctions.PointResult;
import coldseam.report.words.SourceWords;

/** Turns the audit's points into their data. */
final class ConvertPoints {

    private ConvertPoints() {}

    static PointData row(PointRow row) {
        return new PointData(
                row.points().name(),
                row.kind().label(),
                row.surface().name(),
                row.number(),
                row.sheet().map(BridgeSheet::id),
                BoundsData.of(row.chi()),
                row.factor(),
                BoundsData.of(row.loss()),
                SourceWords.kind(row.source()),
                SourceWords.of(row.source()),
                !row.source().known());
    }

    private static PointSheetData.OptionPoint option(PointResult option) {
        return new PointSheetData.OptionPoint(
                option.detail().id(),
                option.detail().name(),
                Convert.word(option.detail().rank()),
                BoundsData.of(option.chi()),
                option.temperatureFactor(),
                option.detail()
                        .cost()
                        .map(cost -> new PointSheetData.CostOfPoint(cost.amount(), cost.currency(), cost.source())));
    }

    static PointSheetData sheet(BridgeSheet<PointResult> sheet) {
        PointResult result = sheet.result();
        return new PointSheetData(
                sheet.id(),
                result.detail().kind().label(),
                result.detail().id(),
                result.detail().name(),
                sheet.chosen(),
                sheet.places(),
                (int) sheet.size(),
                result.setup().host().name(),
                result.transmittance(),
                result.area(),
                BoundsData.of(result.coupling()),
                BoundsData.of(result.chi()),
                result.temperatureFactor(),
                sheet.dewPointHumidity(),
                sheet.mouldHumidity(),
                Convert.connections(result.detail()),
                sheet.best()
                        .map(best -> new PointSheetData.BestPoint(
                                best.detail().id(),
                                best.detail().name(),
                                BoundsData.of(best.chi()),
                                best.temperatureFactor())),
                sheet.options().collect(ConvertPoints::option),
                Convert.parameters(result.detail()),
                result.solution().unknowns(),
                result.solution().met(),
                result.notes());
    }
}
