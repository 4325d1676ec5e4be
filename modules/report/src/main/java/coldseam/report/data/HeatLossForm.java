package coldseam.report.data;

import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;
import static coldseam.report.data.Types.WORD;

import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.OpeningCorners;
import coldseam.audit.engine.InputUncertainty;
import coldseam.files.JsonForm;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.HeatLossWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.UncertaintyWords;

/** The heat-loss coefficient and its parts. */
final class HeatLossForm {

    /** One input among all. */
    private record In(InputUncertainty all, InputUncertainty.Input input) {}

    private static final JsonForm<In> INPUT = JsonForm.<In>of("InputData")
            .with("material", TEXT, in -> UncertaintyWords.name(in.input(), in.all(), UnitSystem.SI))
            .with("within", NUMBER, in -> in.input().within())
            .says("share of the input that it may be off by, to either side")
            .with("effect_W_per_K", NUMBER, in -> in.input().effect())
            .says("what H_T moves by then")
            .with("share", NUMBER, in -> in.all().share(in.input()))
            .says("0 to 1, of the variance of H_T");

    /** A line of a table. */
    private record LineOf(HeatLoss.Line line, HeatLoss all) {}

    private static final JsonForm<LineOf> LINE = JsonForm.<LineOf>of("LineData")
            .with("group", WORD, of -> of.line().group())
            .with("name", TEXT, of -> HeatLossWords.name(of.line().part(), of.all()))
            .with("size", NUMBER, of -> of.line().size())
            .with(
                    "sizeUnit",
                    TEXT,
                    of -> of.line()
                            .group()
                            .size()
                            .map(size -> size == Dimension.AREA ? "m2" : "m")
                            .orElse(""))
            .says("m2, m or empty for a count")
            .with("transmittance", BOUNDS, of -> of.line().transmittance())
            .says("W/(m2K), W/(mK) or W/K, by the size's unit")
            .with("temperatureFactor", NUMBER, of -> of.line().factor())
            .says("1 where psi holds those of its surfaces")
            .with("loss_W_per_K", BOUNDS, of -> of.line().loss());

    private static final JsonForm<HeatLoss> SUMS = JsonForm.<HeatLoss>of("")
            .with("surfaces_W_per_K", NUMBER, HeatLoss::surfaces)
            .with("ground_W_per_K", NUMBER, HeatLoss::ground)
            .with("unheated_W_per_K", NUMBER, HeatLoss::unheated)
            .with("positiveJunctions_W_per_K", BOUNDS, HeatLoss::positiveJunctions)
            .with("negativeJunctions_W_per_K", BOUNDS, HeatLoss::negativeJunctions)
            .with("pairs_W_per_K", BOUNDS, HeatLoss::pairs)
            .says("what seams that touch lose more than each alone, as far as they are computed in one section")
            .with("points_W_per_K", BOUNDS, HeatLoss::points)
            .with("vertices_W_per_K", BOUNDS, HeatLoss::vertices)
            .says("corners where three or more edges meet, as far as they are computed")
            .with("junctionShare", BOUNDS, HeatLoss::junctionShare)
            .says("0 to 1; may be negative")
            .with("otherDimensionsTotal_W_per_K", BOUNDS, HeatLoss::otherSystemTotal)
            .with("vertexRemainder_W_per_K", BOUNDS, HeatLoss::vertexRemainder)
            .says("of this system minus the other: corners that are not computed")
            .with("correctionRemainder_W_per_K", NUMBER, HeatLoss::correctionRemainder)
            .says("the rest of that difference: corrections of U that no section holds")
            .maybeNumber("ventilation_W_per_K", HeatLoss::ventilation)
            .with("designLoad_W", BOUNDS, HeatLoss::designLoad)
            .says("of what has a value")
            .maybeNumber("annualLoss_kWh", HeatLoss::annualLoss)
            .says("of what has a value")
            .with("lines", LINE.list(), loss -> loss.lines().collect(line -> new LineOf(line, loss)))
            .says("their sum is the total");

    /** An audit's, with what is told of it. */
    private record Told(HeatLoss loss, HonestWords honest, InputUncertainty inputs, OpeningCorners corners) {

        static Told of(Audit audit) {
            return new Told(
                    audit.heatLoss(),
                    new HonestWords(audit, UnitSystem.SI),
                    InputUncertainty.of(audit),
                    OpeningCorners.of(audit));
        }
    }

    private static final JsonForm<Told> TOLD = JsonForm.<Told>of("HeatLossData")
            .with("total_W_per_K", BOUNDS, told -> told.loss().total())
            .says("H_T; where notKnown is given, the sum of what has a value, and no bound of H_T")
            .maybe("notKnown", TEXT, told -> told.honest().unknown())
            .says("why H_T is not known; missing where it is")
            .maybeNumber("atLeast_W_per_K", told -> told.honest().least())
            .says("H_T at least, whatever is built where something has no value; given with notKnown")
            .with(
                    "totalAsInputsAreKnown_W_per_K",
                    BOUNDS,
                    told -> told.inputs().range(told.loss().total()))
            .says("total_W_per_K where each input is off by its share, independently, to first order")
            .with(
                    "inputs",
                    INPUT.list(),
                    told -> told.inputs().largestFirst().collect(each -> new In(told.inputs(), each)))
            .says("each input's effect on H_T, the largest first")
            .with("openingCorners", WHOLE, told -> told.corners().number())
            .says("where head, sill or threshold meet the jambs of windows and doors; no sum here has them")
            .with("openingCornersLapped_W_per_K", BOUNDS, told -> told.corners().lapped())
            .says("what all would add were each frame lapped by boards, by cases worked out in walls; no bounds")
            .with(
                    "openingCornersUnlapped_W_per_K",
                    BOUNDS,
                    told -> told.corners().unlapped())
            .says("the same were none lapped")
            .all(SUMS, Told::loss);

    static final coldseam.files.JsonType<Audit> HEAT_LOSS = TOLD.from(Told::of);

    private HeatLossForm() {}
}
