package coldseam.report.data;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;
import static coldseam.report.data.Types.NUMBERS;
import static coldseam.report.data.Types.PLACE;
import static coldseam.report.data.Types.POINT;
import static coldseam.report.data.Types.TEXTS;

import coldseam.audit.Mould;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.Sheet;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.conduction.solid.BodySolution;
import coldseam.envelope.DimensionSystem;
import coldseam.files.JsonForm;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.vertex.VertexResult;
import coldseam.report.words.PairWords;
import coldseam.report.words.VertexWords;
import org.eclipse.collections.impl.factory.Lists;

/** Where seams meet: two that touch, and corners of three or more; with their sheets. */
final class MeetingForms {

    /** Two seams, and what they are judged by. */
    record Touching(PairRow row, Mould mould) {}

    /** A corner, and what it is judged by. */
    record Corner(VertexRow row, Mould mould) {}

    static final JsonForm<Touching> PAIR = JsonForm.<Touching>of("PairData")
            .with(
                    "edges",
                    TEXTS,
                    pair -> Lists.immutable.of(
                            pair.row().pair().one().name(),
                            pair.row().pair().other().name()))
            .says("names of the edges")
            .with("surface", TEXT, pair -> pair.row().surface().name())
            .says("that both are on")
            .with("distance_m", NUMBER, pair -> pair.row().pair().distance())
            .says("between them, on the outer face")
            .with("length_m", NUMBER, pair -> pair.row().pair().length())
            .says("for which they run beside each other")
            .maybe("sheet", TEXT, pair -> pair.row().sheet().map(PairSheet::id))
            .says("id of its sheet; left out where they are not computed in one section")
            .with("status", TEXT, pair -> PairWords.status(pair.row(), pair.mould(), UnitSystem.SI))
            .says("computed, or why not");

    static final JsonForm<PairSheet> PAIR_SHEET = JsonForm.<PairSheet>of("PairSheetData")
            .with("id", TEXT, PairSheet::id)
            .with(
                    "junctionSheets",
                    TEXTS,
                    sheet -> Lists.immutable.of(sheet.one().id(), sheet.other().id()))
            .says("of each of them alone, the first as it lies in the section")
            .with(
                    "details",
                    TEXTS,
                    sheet -> Lists.immutable.of(
                            sheet.result().setup().one().detail().id(),
                            sheet.result().setup().other().detail().id()))
            .says("ids, in the same order")
            .with("chosen", FLAG, PairSheet::chosen)
            .says("whether the house file chose both details")
            .with("distance_m", NUMBER, sheet -> sheet.result().setup().distance())
            .says("between the lines that their sections are drawn from, a floor's being its upper face")
            .with("length_m", NUMBER, PairSheet::length)
            .says("of all places")
            .with("places", TEXTS, PairSheet::places)
            .with("coupling_W_per_mK", BOUNDS, sheet -> sheet.result().coupling())
            .with("psiExternal_W_per_mK", BOUNDS, sheet -> sheet.psi(DimensionSystem.EXTERNAL))
            .says("of both, with external dimensions")
            .with("psiInternal_W_per_mK", BOUNDS, sheet -> sheet.psi(DimensionSystem.INTERNAL))
            .says("of both, with internal dimensions")
            .with("moreThanApart_W_per_mK", BOUNDS, PairSheet::interaction)
            .says("that both lose more than the sum of their psi, which is the same in either dimensions")
            .with("temperatureFactor", NUMBER, PairSheet::temperatureFactor)
            .says("fRsi, an estimate")
            .with("coldest_m", POINT, sheet -> sheet.result().coldest())
            .says("in the section: from the first seam's line along the surface, and out of its inner face")
            .all(humidities(), sheet -> sheet)
            .with("unknowns", WHOLE, sheet -> sheet.result().solution().unknowns())
            .with("met", FLAG, sheet -> sheet.result().solution().met())
            .says("whether the interval is as narrow as asked")
            .with("notes", TEXTS, sheet -> sheet.result().notes());

    static final JsonForm<Corner> VERTEX = JsonForm.<Corner>of("VertexData")
            .with("name", TEXT, each -> each.row().corner().name())
            .with("place", TEXT, each -> each.row().corner().place())
            .with("at_m", PLACE, each -> each.row().corner().at())
            .says("on the outer shell: east, north, up")
            .with(
                    "edges",
                    TEXTS,
                    each -> each.row().corner().ends().collect(end -> end.edge().name()))
            .says("names of the edges, one that goes on past it twice")
            .with("angles_deg", NUMBERS, each -> each.row().corner().angles())
            .says("between the surfaces of each, measured indoors")
            .maybe("sheet", TEXT, each -> each.row().sheet().map(VertexSheet::id))
            .says("id of its sheet; left out where it is not computed")
            .with("status", TEXT, each -> VertexWords.status(each.row(), each.mould(), UnitSystem.SI))
            .says("computed, or why not");

    static final JsonForm<VertexSheet> VERTEX_SHEET = JsonForm.<VertexSheet>of("VertexSheetData")
            .with("id", TEXT, VertexSheet::id)
            .with("junctionSheets", TEXTS, VertexSheet::edges)
            .says("of its edges")
            .with(
                    "details",
                    TEXTS,
                    sheet -> sheet.result()
                            .setup()
                            .edges()
                            .collect(end -> end.detail().id()))
            .says("ids, in the same order")
            .maybe(
                    "ownDetail",
                    TEXT,
                    sheet -> sheet.result().corner().map(own -> own.detail().id()))
            .says(
                    "id of the corner's own detail, by which it is built; left out where its edges' details say all of it")
            .with("chosen", FLAG, VertexSheet::chosen)
            .says("whether the house file chose all of its edges' details")
            .with("places", TEXTS, VertexSheet::places)
            .maybe("coupling_W_per_K", BOUNDS, sheet -> sheet.result().heat().map(VertexResult.Heat::coupling))
            .says("of what is drawn; left out on the ground, where the floor's U holds its corners")
            .maybe("chiExternal_W_per_K", BOUNDS, sheet -> sheet.result().heat().map(VertexResult.Heat::chiExternal))
            .says("with external dimensions; likewise")
            .maybe("chiInternal_W_per_K", BOUNDS, sheet -> sheet.result().heat().map(VertexResult.Heat::chiInternal))
            .says("with internal dimensions; likewise")
            .with("temperatureFactor", NUMBER, VertexSheet::temperatureFactor)
            .says("fRsi, an estimate")
            .with(
                    "coldest_m",
                    NUMBERS,
                    sheet -> Lists.immutable.of(
                            sheet.result().coldest().x(),
                            sheet.result().coldest().y(),
                            sheet.result().coldest().z()))
            .says("from where the inner faces meet, along the three outward normals, the last upright")
            .all(humidities(), sheet -> sheet)
            .with("unknowns", WHOLE, sheet -> solution(sheet).unknowns())
            .with("met", FLAG, sheet -> solution(sheet).met())
            .says("whether the interval is as narrow as asked")
            .with(
                    "notes",
                    TEXTS,
                    sheet -> sheet.result().notes().newWithAll(sheet.result().inDoubt()));

    private MeetingForms() {}

    /** From which humidity a sheet's coldest point is wet. */
    private static JsonForm<Sheet> humidities() {
        return JsonForm.<Sheet>of("")
                .with("dewPointHumidity", NUMBER, Sheet::dewPointHumidity)
                .says("indoors, at which the coldest point reaches the dew point")
                .with("mouldHumidity", NUMBER, Sheet::mouldHumidity)
                .says("indoors, from which mould may grow");
    }

    private static BodySolution solution(VertexSheet sheet) {
        return sheet.result()
                .heat()
                .map(VertexResult.Heat::solution)
                .orElse(sheet.result().surface());
    }
}
