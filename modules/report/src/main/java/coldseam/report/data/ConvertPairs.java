package coldseam.report.data;

import coldseam.audit.Mould;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.pair.PairResult;
import coldseam.report.words.PairWords;
import org.eclipse.collections.impl.factory.Lists;

/** Turns the audit's pairs of seams into their data. */
final class ConvertPairs {

    private ConvertPairs() {}

    static PairData row(PairRow row, Mould mould) {
        return new PairData(
                Lists.immutable.of(row.pair().one().name(), row.pair().other().name()),
                row.surface().name(),
                row.pair().distance(),
                row.pair().length(),
                row.sheet().map(PairSheet::id),
                PairWords.status(row, mould, UnitSystem.SI));
    }

    static PairSheetData sheet(PairSheet sheet) {
        PairResult result = sheet.result();
        return new PairSheetData(
                sheet.id(),
                Lists.immutable.of(sheet.one().id(), sheet.other().id()),
                Lists.immutable.of(
                        result.setup().one().detail().id(),
                        result.setup().other().detail().id()),
                sheet.chosen(),
                result.setup().distance(),
                sheet.length(),
                sheet.places(),
                BoundsData.of(result.coupling()),
                BoundsData.of(sheet.psi(DimensionSystem.EXTERNAL)),
                BoundsData.of(sheet.psi(DimensionSystem.INTERNAL)),
                BoundsData.of(sheet.interaction()),
                result.temperatureFactor(),
                Lists.immutable.of(result.coldest().x(), result.coldest().y()),
                sheet.dewPointHumidity(),
                sheet.mouldHumidity(),
                result.solution().unknowns(),
                result.solution().met(),
                result.notes());
    }
}
