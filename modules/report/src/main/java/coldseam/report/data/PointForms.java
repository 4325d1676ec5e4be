package coldseam.report.data;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;
import static coldseam.report.data.Types.TEXTS;
import static coldseam.report.data.Types.WORD;

import coldseam.audit.BridgeSheet;
import coldseam.audit.PointRow;
import coldseam.files.JsonForm;
import coldseam.junctions.PointResult;
import coldseam.report.words.SourceWords;

/** Points and their sheets. */
final class PointForms {

    static final JsonForm<PointRow> POINT = JsonForm.<PointRow>of("PointData")
            .with("name", TEXT, row -> row.points().name())
            .says("in the house file")
            .with("kind", TEXT, row -> row.kind().label())
            .says("of thing that goes through")
            .with("surface", TEXT, row -> row.surface().name())
            .with("number", WHOLE, PointRow::number)
            .maybe("sheet", TEXT, row -> row.sheet().map(BridgeSheet::id))
            .says("id of its point sheet; left out where nothing could be computed")
            .with("chi_W_per_K", BOUNDS, PointRow::chi)
            .says("of one, for the whole difference to the far side")
            .with("temperatureFactor", NUMBER, PointRow::factor)
            .says("that weighs it")
            .with("loss_W_per_K", BOUNDS, PointRow::loss)
            .says("number times chi times temperature factor")
            .with("source", TEXT, row -> SourceWords.kind(row.source()))
            .says("of chi: computed, stand-in or none")
            .with("sourceSays", TEXT, row -> SourceWords.of(row.source()))
            .says("the same in words")
            .with("unknown", FLAG, row -> !row.source().known())
            .says("whether its chi is a stand-in");

    private static final JsonForm<PointResult> OPTION = JsonForm.<PointResult>of("OptionPoint")
            .all(JunctionForms.NAMED, result -> result)
            .with("rank", WORD, result -> result.detail().rank())
            .with("chi_W_per_K", BOUNDS, PointResult::chi)
            .with("temperatureFactor", NUMBER, PointResult::temperatureFactor)
            .maybe(
                    "cost",
                    JunctionForms.cost("CostOfPoint", "amount_each"),
                    result -> result.detail().cost());

    private static final JsonForm<PointResult> BEST = JsonForm.<PointResult>of("BestPoint")
            .all(JunctionForms.NAMED, result -> result)
            .with("chi_W_per_K", BOUNDS, PointResult::chi)
            .with("temperatureFactor", NUMBER, PointResult::temperatureFactor);

    static final JsonForm<BridgeSheet<PointResult>> SHEET = JsonForm.<BridgeSheet<PointResult>>of("PointSheetData")
            .with("id", TEXT, BridgeSheet::id)
            .all(JunctionForms.detail("of thing that goes through"), sheet -> sheet)
            .with("points", TEXTS, BridgeSheet::places)
            .says("names of sets of points")
            .with("number", WHOLE, sheet -> (int) sheet.size())
            .says("of all of them")
            .with("assembly", TEXT, sheet -> sheet.result().setup().host().name())
            .says("it goes through")
            .with("transmittance_W_per_m2K", NUMBER, sheet -> sheet.result().transmittance())
            .says("of the surface as drawn")
            .with("discArea_m2", NUMBER, sheet -> sheet.result().area())
            .says("of the disc or square that was computed")
            .with("coupling_W_per_K", BOUNDS, sheet -> sheet.result().coupling())
            .says("thermal coupling coefficient L3D of it")
            .with("chi_W_per_K", BOUNDS, sheet -> sheet.result().chi())
            .with("temperatureFactor", NUMBER, sheet -> sheet.result().temperatureFactor())
            .says("with a surface resistance of 0.25 m2K/W; an estimate")
            .all(JunctionForms.humidities(), sheet -> sheet)
            .with(
                    "connections",
                    TEXT.byName(),
                    sheet -> JunctionForms.connections(sheet.result().detail()))
            .says("how air, water and vapour control pass")
            .maybe("best", BEST, BridgeSheet::best)
            .says("the best option of the catalogue; left out where it is this one")
            .with("options", OPTION.list(), BridgeSheet::options)
            .says("all of the catalogue that fit the surface, from worst to best")
            .with(
                    "parameters",
                    NUMBER.byName(),
                    sheet -> JunctionForms.parameters(sheet.result().detail()))
            .says("lengths of the detail that the house file sets, m")
            .with("unknowns", WHOLE, sheet -> sheet.result().solution().unknowns())
            .says("of both solved systems")
            .with("accuracyMet", FLAG, sheet -> sheet.result().solution().met())
            .says("whether the interval is as narrow as asked")
            .with("notes", TEXTS, sheet -> sheet.result().notes());

    private PointForms() {}
}
