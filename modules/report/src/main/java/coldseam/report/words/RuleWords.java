package coldseam.report.words;

import static coldseam.report.words.Phrases.bare;
import static coldseam.report.words.Phrases.bridge;
import static coldseam.report.words.Phrases.either;
import static coldseam.report.words.Phrases.month;

import coldseam.assemblies.moisture.Condensation;
import coldseam.audit.Breach;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeRow;
import coldseam.audit.JunctionRow;
import coldseam.audit.VertexSheet;
import coldseam.audit.rules.CondensationInsideRule;
import coldseam.audit.rules.ControlLayerMisplacedRule;
import coldseam.audit.rules.ControlLayerMisplacedRule.Misplaced;
import coldseam.audit.rules.ControlLayerUnableRule;
import coldseam.audit.rules.ControlLayerUnableRule.Unable;
import coldseam.audit.rules.ControlLineBrokenRule;
import coldseam.audit.rules.CornerOutOfRangeRule;
import coldseam.audit.rules.CornerUnderLimitRule;
import coldseam.audit.rules.DetailNotChosenRule;
import coldseam.audit.rules.DetailOutOfRangeRule;
import coldseam.audit.rules.FramesApartRule;
import coldseam.audit.rules.HumidityOverLimitRule;
import coldseam.audit.rules.InsulationUnfitRule;
import coldseam.audit.rules.LayerBrokenRule;
import coldseam.audit.rules.LayerNotShownRule;
import coldseam.audit.rules.LightWellFloodsRule;
import coldseam.audit.rules.MouldByMonthRule;
import coldseam.audit.rules.NeckPinchedRule;
import coldseam.audit.rules.OpenEdgeRule;
import coldseam.audit.rules.OpeningOverLimitRule;
import coldseam.audit.rules.OwnPsiBelowComputedRule;
import coldseam.audit.rules.PairUnderLimitRule;
import coldseam.audit.rules.RainNotCountedRule;
import coldseam.audit.rules.SeamsTouchRule;
import coldseam.audit.rules.SurfacePiercedRule;
import coldseam.audit.rules.SurfacePoorlyInsulatedRule;
import coldseam.audit.rules.SurfaceWithoutLayerRule;
import coldseam.audit.rules.TemperatureFactorUnderLimitRule;
import coldseam.audit.rules.TerraceBelowDewPointRule;
import coldseam.audit.rules.TransmittanceOverLimitRule;
import coldseam.audit.rules.WeakestPathRule;
import coldseam.envelope.Control;
import coldseam.envelope.Duty;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.OpenEdge;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.ControlLine;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.pair.PairObstacle;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * What is said of each rule's breach: one entry for each record that rules find.
 *
 * @param found the rule's own record
 * @param title short
 * @param what was found, a sentence without its full stop
 * @param toDo what closes it, likewise
 */
record RuleWords<F extends Evidence>(Class<F> found, Wording<F> title, Wording<F> what, Wording<F> toDo) {

    /** A sentence about what a rule found. */
    @FunctionalInterface
    interface Wording<F> {
        String of(F found, Phrases say);
    }

    /** What the title begins with of what nobody chose; the kind follows. */
    static final String UNCHOSEN = "no detail chosen: ";

    private static String cold(Misplaced layer, Phrases say) {
        String dewPoint = " (the rooms' dew point is " + say.say(layer.dewPoint(), Dimension.TEMPERATURE) + ")";
        return layer.temperature().isPresent()
                ? "and at "
                        + say.say(layer.temperature().getAsDouble(), Dimension.TEMPERATURE)
                        + " in the design state vapour condenses there" + dewPoint
                : "and none outside, so that vapour may condense there in the months in which the ground is cold"
                        + dewPoint;
    }

    /** kg/m², 0.001 lb/ft²; less would be printed as nothing. */
    private static final double SHOWN = 0.005;

    private static final ImmutableList<RuleWords<?>> ALL = Lists.immutable.of(
            new RuleWords<>(
                    CondensationInsideRule.Found.class,
                    (found, say) -> (found.accumulates() ? "water collects in \"" : "much water condenses in \"")
                            + found.assembly() + "\"",
                    RuleWords::condensation,
                    (found, say) ->
                            "hold vapour back on the warm side or let it out on the cold side, and have a dynamic"
                                    + " study made before anything is built"),
            new RuleWords<>(
                    ControlLayerMisplacedRule.Found.class,
                    (found, say) -> Phrases.layers(found.layers().collect(Misplaced::control)) + " of \""
                            + found.assembly() + "\" on the wrong side of the insulation",
                    (found, say) -> found.layers()
                            .collect(layer -> "\"" + layer.material()
                                    + (layer.control() == Control.WATER
                                            ? "\" keeps out water on the room side of the insulation only,"
                                                    + " which gets wet"
                                            : "\" holds vapour back on the cold side: "
                                                    + say.say(layer.warm(), Dimension.SHARE)
                                                    + " of what insulates lies inside it, "
                                                    + cold(layer, say)))
                            .makeString("; "),
                    (found, say) -> found.layers().anySatisfy(layer -> layer.control() == Control.WATER)
                            ? "put a layer that sheds water outside the insulation; on a wall it may lie behind boards that each bear"
                                    + " rain, by a source, and drain to a gap with openings behind the cladding"
                            : "put a layer that governs vapour on the warm side, or give the monthly climate and show"
                                    + " that the build-up dries"),
            new RuleWords<>(
                    ControlLayerUnableRule.Found.class,
                    (found, say) -> Phrases.layers(found.layers().collect(Unable::control)) + " of \""
                            + found.assembly() + "\" is a name only",
                    (found, say) -> found.layers()
                            .collect(each -> unable(each, say))
                            .distinct()
                            .makeString("; "),
                    (found, say) -> found.layers().allSatisfy(layer -> layer.control() == Control.HEAT)
                            ? "add a continuous layer that insulates, and name it for heat"
                            : "for " + Phrases.layers(found.layers().collect(Unable::control))
                                    + " name a layer that can, or add one; where this material can, give the source under"
                                    + " controls of the material"),
            new RuleWords<>(
                    ControlLineBrokenRule.Found.class,
                    (found, say) -> Phrases.layers(found.layers())
                            + (found.changesSide() ? " changes sides of the insulation at " : " does not reach across ")
                            + bridge(found.worst()),
                    (found, say) ->
                            found.lines().collect(RuleWords::stopped).distinct().makeString("; "),
                    (found, say) -> found.changesSide()
                            ? "let both surfaces control it on the same side of the insulation"
                            : "draw what joins the two layers; " + say.better(found.worst())),
            new RuleWords<>(
                    CornerOutOfRangeRule.Found.class,
                    (found, say) -> "corner's own detail does not fit",
                    (found, say) -> "it could not be computed: "
                            + bare(found.reasons().collect(say::phrase).makeString("; ")),
                    (found, say) ->
                            "correct the file, or leave it out of corners: the seams' own details may say how they"
                                    + " meet"),
            new RuleWords<>(
                    CornerUnderLimitRule.Found.class,
                    (found, say) -> "cold " + found.worst().kind(),
                    RuleWords::coldCorner,
                    (found, say) ->
                            "carry the insulation past the corner in all three directions, by better details of"
                                    + " the seams that meet there ("
                                    + found.worst().edges().makeString(", ")
                                    + ")"
                                    + found.worst()
                                            .result()
                                            .setup()
                                            .edges()
                                            .collect(end -> end.detail())
                                            .distinctBy(Detail::id)
                                            .flatCollect(detail -> say
                                                    .more(detail)
                                                    .map(more -> ", by more of " + detail.id() + "'s " + more)
                                                    .stream()
                                                    .toList())
                                            .makeString("")
                                    + ", or keep the rooms drier"),
            new RuleWords<>(
                    DetailNotChosenRule.Found.class,
                    (found, say) -> UNCHOSEN + found.rows().getFirst().kindLabel(),
                    RuleWords::notChosen,
                    (found, say) -> found.standIn()
                            .map(sheet ->
                                    "choose a detail for it under " + key(found.rows()) + "; " + say.better(sheet))
                            .orElse("name a detail file of your own for it under " + key(found.rows()))),
            new RuleWords<>(
                    DetailOutOfRangeRule.Found.class,
                    (found, say) ->
                            "detail does not fit: " + found.rows().getFirst().kindLabel(),
                    (found, say) -> extent(found.rows(), say) + " could not be computed: "
                            + bare(found.reasons().collect(say::phrase).makeString("; ")),
                    (found, say) -> "choose another detail for it under " + key(found.rows())
                            + " (which fit there: coldseam catalogue --house HOUSE --kind \""
                            + found.rows().getFirst().kindLabel() + "\"), or change the layers"),
            new RuleWords<>(
                    FramesApartRule.Found.class,
                    (found, say) ->
                            "one frame drawn in two planes: " + found.openings().makeString("\"", "\", \"", "\""),
                    (found, say) -> Format.of(
                            "it is set back %s from the wall's outer face in \"%s\" (%s) and %s in \"%s\" (%s); no frame is both, so"
                                    + " that psi of one or both is of another house",
                            say.say(found.from(), Dimension.THICKNESS),
                            found.outer().result().detail().name(),
                            found.outer().result().detail().id(),
                            say.say(found.to(), Dimension.THICKNESS),
                            found.inner().result().detail().name(),
                            found.inner().result().detail().id()),
                    (found, say) -> "choose details that set it in one plane, or say under openings where it stands"
                            + " (set-back)"),
            new RuleWords<>(
                    HumidityOverLimitRule.Found.class,
                    (found, say) -> "rooms too humid for " + bridge(found.worst()),
                    (found, say) -> Format.of(
                            "its temperature factor fRsi is %s; rooms of %s would need %s at %s outdoors to stay free of mould%s",
                            say.factor(found.worst().temperatureFactor()),
                            say.say(found.humid().humidity(), Dimension.SHARE),
                            say.factor(found.humid().temperatureFactor()),
                            say.say(found.humid().outdoors(), Dimension.TEMPERATURE),
                            found.humid().temperatureFactor() > 1 ? ", more than any surface has" : ""),
                    (found, say) ->
                            "keep the rooms drier, or warm the coldest point; a monthly climate in the file would judge"
                                    + " it month by month; " + say.better(found.worst())),
            new RuleWords<>(
                    InsulationUnfitRule.Found.class,
                    (found, say) -> "insulation that does not bear its place "
                            + (found.seam() ? "at the " + found.where() : "in \"" + found.where() + "\""),
                    (found, say) -> found.unfit()
                            .collect(each -> "no source says that \"" + each.material() + "\" "
                                    + switch (each.duty()) {
                                        case GROUND -> "may lie in the ground";
                                        case SPLASH ->
                                            "may stand within "
                                                    + say.rule(Duty.SPLASH_HEIGHT, Dimension.THICKNESS, UnitSystem.SI)
                                                    + " of the ground, where rain splashes up";
                                        case LOAD -> "carries what stands on it";
                                        case RAIN -> "may lie outside what keeps out rain";
                                    })
                            .makeString("; "),
                    (found, say) -> "use a board that is made for it there, or give the source under bears of the"
                            + " material"),
            new RuleWords<>(
                    LayerBrokenRule.Found.class,
                    (found, say) -> Phrases.layers(found.layers()) + " broken at " + bridge(found.worst()),
                    (found, say) -> Format.of(
                            either(found.worst(), "%1$s ends at \"%2$s\"", "\"%2$s\" leaves %1$s open around it"),
                            Phrases.layers(found.layers()),
                            found.worst().result().detail().name()),
                    (found, say) ->
                            either(found.worst(), "carry it across; ", "seal it; ") + say.better(found.worst())),
            new RuleWords<>(
                    LayerNotShownRule.Found.class,
                    (found, say) -> Phrases.layers(found.layers()) + " not shown at " + bridge(found.worst()),
                    (found, say) -> Format.of(
                            either(
                                    found.worst(),
                                    "\"%s\" does not show what becomes of %s",
                                    "\"%s\" does not show how %s is joined to it"),
                            found.worst().result().detail().name(),
                            Phrases.layers(found.layers())),
                    (found, say) -> "show how it is lapped, taped, sealed or gasketed; " + say.better(found.worst())),
            new RuleWords<>(
                    LightWellFloodsRule.Found.class,
                    (found, say) -> found.undrained().notEmpty()
                            ? "water stays in " + lightWells(found.undrained())
                            : "window close over the floor of " + lightWells(found.shallow()),
                    (found, say) -> Lists.immutable
                            .of(
                                    found.undrained().isEmpty()
                                            ? ""
                                            : "the house file says that no drain leaves "
                                                    + lightWells(found.undrained())
                                                    + ": rain stands before the window, and freezes there",
                                    found.shallow().isEmpty()
                                            ? ""
                                            : "the floor of " + lightWells(found.shallow()) + " lies "
                                                    + say.say(least(found.shallow()), Dimension.THICKNESS)
                                                    + " under the sill, "
                                                    + say.rule(
                                                            LightWellFloodsRule.UPSTAND,
                                                            Dimension.THICKNESS,
                                                            UnitSystem.SI)
                                                    + " at least keep rain, leaves and snow from it")
                            .reject(String::isEmpty)
                            .makeString("; "),
                    (found, say) -> Lists.immutable
                            .of(
                                    found.undrained().isEmpty()
                                            ? ""
                                            : "lead it to the footing drain, a soakaway clear of the house or, by a valve, to the"
                                                    + " sewer, and try it before the ground is filled",
                                    found.shallow().isEmpty() ? "" : "set the light well lower or the sill higher")
                            .reject(String::isEmpty)
                            .makeString("; ")),
            new RuleWords<>(
                    MouldByMonthRule.Found.class,
                    (found, say) -> "mould possible at " + bridge(found.worst()),
                    (found, say) -> Format.of(
                            "its temperature factor fRsi is %s; in %s, at %s indoors, it would have to be %s to stay"
                                    + " free of mould",
                            say.factor(found.worst().temperatureFactor()),
                            month(found.need().month()),
                            say.say(found.need().indoorHumidity(), Dimension.SHARE),
                            say.factor(found.need().temperatureFactor())),
                    (found, say) -> "warm the coldest point, or keep the rooms drier; " + say.better(found.worst())),
            new RuleWords<>(
                    NeckPinchedRule.Found.class,
                    (found, say) -> "insulation pinched at " + bridge(found.worst()),
                    (found, say) -> Format.of(
                            "%s of insulation are left at the narrowest, %s of the thinner neighbour; the limit is %s",
                            say.say(found.line().neck(), Dimension.THICKNESS),
                            say.say(found.line().share(), Dimension.SHARE),
                            say.say(found.limit(), Dimension.SHARE)),
                    (found, say) -> "keep more of the thickness; " + say.better(found.worst())),
            new RuleWords<>(
                    OpenEdgeRule.Found.class,
                    (found, say) -> "a surface is missing",
                    (found, say) -> Format.of(
                            "the shell is open along %s (%s in all), beside %s",
                            found.hole().size() == 1 ? "one edge" : found.hole().size() + " edges",
                            say.say(found.length(), Dimension.LENGTH),
                            found.hole()
                                    .flatCollect(OpenEdge::surfaces)
                                    .distinct()
                                    .makeString(", ")),
                    (found, say) ->
                            "give the missing surface an assembly in the house file, or say what closes the envelope"
                                    + " there"),
            new RuleWords<>(
                    OpeningOverLimitRule.Found.class,
                    (found, say) -> found.openings().size() == 1
                            ? "the "
                                    + Words.word(found.openings().getFirst().kind())
                                    + " \"" + found.openings().getFirst().name() + "\" lets much heat through"
                            : found.openings().size() + " windows and doors let much heat through",
                    (found, say) -> Format.of(
                            "U of \"%s\" is %s, the limit %s",
                            found.openings().getFirst().name(),
                            say.say(found.transmittance(), Dimension.TRANSMITTANCE),
                            limit(found.limit(), found.source(), say)),
                    (found, say) -> "take better glass and frames, or give the limit you build to under limits"),
            new RuleWords<>(
                    OwnPsiBelowComputedRule.Found.class,
                    (found, say) -> "own psi at " + bridge(found.worst()) + " promises more than its detail keeps",
                    (found, say) -> Format.of(
                            "the house file says %s; \"%s\" computed with these layers is proven to lose %s",
                            say.say(found.own(), Dimension.LINEAR_TRANSMITTANCE),
                            found.worst().result().detail().name(),
                            say.say(found.computed(), Dimension.LINEAR_TRANSMITTANCE)),
                    (found, say) -> "leave the own psi out, or name the detail it was computed for"),
            new RuleWords<>(
                    PairUnderLimitRule.Found.class,
                    (found, say) -> "cold between " + found.worst().one().kind() + " and "
                            + found.worst().other().kind(),
                    (found, say) -> Format.of(
                            "%s and %s run beside each other, %s apart; solved in one section fRsi is %.2f, and %.2f is needed,"
                                    + " though each by itself has it; mould may grow from %.0f %% indoor humidity on",
                            found.worst().one().id(),
                            found.worst().other().id(),
                            say.say(
                                    PairWords.measured(
                                            found.worst().result().setup().distance()),
                                    Dimension.LENGTH),
                            found.worst().temperatureFactor(),
                            found.need(),
                            100 * found.worst().mouldHumidity()),
                    (found, say) -> "move them apart, choose better details of both, or keep the rooms drier"),
            new RuleWords<>(
                    RainNotCountedRule.Found.class,
                    (found, say) -> "rain under the insulation of \"" + found.assembly() + "\" not counted",
                    (found, say) ->
                            "its insulation lies over the sheet that keeps water out; rain that runs under it carries heat"
                                    + " away, and no rain is given",
                    (found, say) ->
                            "give rain: {precipitation: 3 mm/d} of the assembly, the mean of the heating season"),
            new RuleWords<>(
                    SeamsTouchRule.Found.class,
                    (found, say) -> "seams touch on \"" + found.surface() + "\"",
                    (found, say) -> Format.of(
                            "%s beside each other, %s apart at the least, for %s; each disturbs the other's heat flow%s."
                                    + " They are not solved in one section, since %s. Each is computed as if it were alone: its interval and fRsi do not hold there,"
                                    + " so H_T is a least value, with no psi of theirs above what the surfaces lose",
                            found.pairs() == 1 ? "two seams run" : found.pairs() + " pairs of seams run",
                            say.say(PairWords.measured(found.distance()), Dimension.LENGTH),
                            say.say(found.length(), Dimension.LENGTH),
                            found.decay() > 0
                                    ? ", a third of it still "
                                            + say.say(PairWords.measured(found.decay()), Dimension.LENGTH) + " away"
                                    : "",
                            found.obstacles().collect(PairWords::why).makeString(", or ")),
                    (found, say) -> found.deckBelowFloor()
                            ? "let the deck's layers end at the floor's height or above it, or give the walls under and over that floor"
                                    + " one build-up, which makes the two one seam, move them apart, or draw both in one section by hand"
                            : (found.lacking() > 0
                                            ? "move them "
                                                    + say.say(PairWords.enough(found.lacking()), Dimension.LENGTH)
                                                    + " farther apart, or make what they draw so much shorter, and they are solved in"
                                                    + " one section; or "
                                            : "move them apart, ")
                                    + "make them one"
                                    + (found.obstacles().contains(PairObstacle.NARROW)
                                            ? found.coupled()
                                                    ? " (frames that are coupled, or stand so near, are one window as large as both)"
                                                    : " (faces of walls that stand so little apart come into one plane with as much more"
                                                            + " or less of a layer)"
                                            : "")
                                    + ", or draw both in one section by hand"),
            new RuleWords<>(
                    SurfacePiercedRule.Found.class,
                    (found, say) -> "insulation of \"" + found.surface() + "\" pierced by "
                            + Phrases.count(found.number(), "point", "points"),
                    (found, say) -> "its layers have a U of " + say.say(found.layers(), Dimension.TRANSMITTANCE)
                            + ", with all that goes through them "
                            + say.say(found.transmittance(), Dimension.TRANSMITTANCE) + "; the limit is "
                            + limit(found.limit(), found.source(), say),
                    (found, say) -> "take fewer of them or break the way their heat takes, or insulate the surface"
                            + " better"),
            new RuleWords<>(
                    SurfacePoorlyInsulatedRule.Found.class,
                    (found, say) -> (found.hardlyThere() ? "hardly any insulation in \"" : "little insulation in \"")
                            + found.assembly() + "\"",
                    RuleWords::poorlyInsulated,
                    (found, say) -> "insulate it better"
                            + found.more()
                                    .map(more -> ": " + say.say(more, Dimension.THICKNESS)
                                            + " more of what insulates it is enough")
                                    .orElse("")
                            + (found.overLimit() ? ", or give the limit you build to under limits" : "")),
            new RuleWords<>(
                    SurfaceWithoutLayerRule.Found.class,
                    (found, say) -> "no " + Words.word(found.control()) + " layer in \"" + found.assembly() + "\"",
                    (found, say) -> Format.of(
                            "no layer of \"%s\" is named for %s control, on %s of %s",
                            found.assembly(),
                            Words.word(found.control()),
                            say.say(found.area(), Dimension.AREA),
                            found.surfaces() == 1 ? "one surface" : found.surfaces() + " surfaces"),
                    (found, say) -> switch (found.control()) {
                        case AIR ->
                            "name the airtight layer of this build-up in the house file, or add one and join it to its"
                                    + " neighbours";
                        case HEAT ->
                            "name the layer that insulates, under controls in the house file, or add a continuous one and"
                                    + " join it to its neighbours";
                        case VAPOUR ->
                            "name the layer that governs vapour in the house file, or add one; check that the build-up can"
                                    + " still dry";
                        case WATER ->
                            "name the layer that keeps rain or ground water out in the house file, or add one with its laps"
                                    + " and flashings"
                                    + (found.roof()
                                            ? "; if these are the layers of a ceiling under a cold loft, say insulated-at:"
                                                    + " ceiling under roof"
                                            : "");
                    }),
            new RuleWords<>(
                    TemperatureFactorUnderLimitRule.Found.class,
                    (found, say) -> "cold inner surface at " + bridge(found.worst()),
                    (found, say) -> Format.of(
                            "%s %s%s, the limit %.2f; at the design temperature mould can grow there from %s indoor"
                                    + " humidity on, and it drips from %s on",
                            either(found.worst(), "its temperature factor fRsi is", "the temperature factor fRsi is"),
                            say.factor(found.worst().temperatureFactor()),
                            either(found.worst(), "", " there"),
                            found.limit(),
                            say.say(found.worst().mouldHumidity(), Dimension.SHARE),
                            say.say(found.worst().dewPointHumidity(), Dimension.SHARE)),
                    (found, say) -> "warm the coldest point; " + say.better(found.worst())),
            new RuleWords<>(
                    TerraceBelowDewPointRule.Found.class,
                    (found, say) -> "terrace deck below the dew point",
                    (found, say) -> TerraceWords.brief(found.terrace(), say),
                    (found, say) ->
                            "put more insulation above the structure, none below it, and keep the room's air away from"
                                    + " it"),
            new RuleWords<>(
                    TransmittanceOverLimitRule.Found.class,
                    (found, say) -> either(found.worst(), "much heat lost at ", "insulation pierced by ")
                            + bridge(found.worst()),
                    (found, say) -> Format.of(
                            either(
                                    found.worst(),
                                    "psi is %1$s in %4$s dimensions, the limit %2$s",
                                    "\"%3$s\" loses %1$s each; the limit is %2$s"),
                            say.say(found.transmittance(), found.worst().dimension()),
                            say.say(found.limit(), found.worst().dimension()),
                            found.worst().result().detail().name(),
                            Words.word(found.system())),
                    (found, say) -> either(found.worst(), "lessen the heat flow; ", "break the way the heat takes; ")
                            + say.better(found.worst())),
            new RuleWords<>(
                    WeakestPathRule.Found.class,
                    (found, say) -> "a short way out at " + bridge(found.worst()),
                    (found, say) -> Format.of(
                            "the weakest path resists %s, %s of the surface beside it; the limit is %s",
                            say.say(found.path().resistance(), Dimension.RESISTANCE),
                            say.say(found.path().ratio(), Dimension.SHARE),
                            say.say(found.limit(), Dimension.SHARE)),
                    (found, say) -> "lengthen the way or put insulation across it; " + say.better(found.worst())));

    private static final ImmutableMap<Class<?>, RuleWords<?>> BY_FOUND = ALL.groupByUniqueKey(RuleWords::found);

    /** The records that have words, in the table's order. */
    static ImmutableList<Class<?>> worded() {
        return ALL.collect(RuleWords::found);
    }

    static String title(Breach breach, Phrases say) {
        return of(breach).titleOf(breach.evidence(), say);
    }

    static String what(Breach breach, Phrases say) {
        return of(breach).whatOf(breach.evidence(), say);
    }

    static String toDo(Breach breach, Phrases say) {
        return of(breach).toDoOf(breach.evidence(), say);
    }

    private static RuleWords<?> of(Breach breach) {
        RuleWords<?> words = BY_FOUND.get(breach.evidence().getClass());
        if (words == null) {
            throw new IllegalStateException("the rule " + breach.rule() + " has no words: add them to RuleWords");
        }
        return words;
    }

    private String titleOf(Evidence evidence, Phrases say) {
        return title.of(found.cast(evidence), say);
    }

    private String whatOf(Evidence evidence, Phrases say) {
        return what.of(found.cast(evidence), say);
    }

    private String toDoOf(Evidence evidence, Phrases say) {
        return toDo.of(found.cast(evidence), say);
    }

    private static String limit(double most, Optional<String> source, Phrases say) {
        return say.say(most, Dimension.TRANSMITTANCE) + " (" + source.orElse("of the house file") + ")";
    }

    private static String poorlyInsulated(SurfacePoorlyInsulatedRule.Found found, Phrases say) {
        String start = "its U is " + say.say(found.transmittance(), Dimension.TRANSMITTANCE);
        return found.overLimit()
                ? start + ", the limit " + limit(found.limit(), found.source(), say)
                : start + ", "
                        + Format.of(
                                "%.1f", found.transmittance() / found.others().orElseThrow())
                        + " times the "
                        + say.say(found.others().orElseThrow(), Dimension.TRANSMITTANCE)
                        + " it would have in proportion to the house's other surfaces (each against a minimum code for"
                        + " its use)";
    }

    private static String unable(Unable layer, Phrases say) {
        return "\"" + layer.material() + "\" is named for " + Words.word(layer.control()) + " control, "
                + switch (layer.why()) {
                    case AIRED -> "but it is ventilated or lies outside a ventilated air layer";
                    case SHEDS ->
                        "yet it only sheds water, and in the ground, on a deck or on a roof of less than 10° water stands";
                    case UPRIGHT ->
                        "yet a render keeps rain off walls alone: on a slope it stays wet, cracks and freezes off";
                    case THIN ->
                        "yet " + say.say(layer.thickness(), Dimension.THICKNESS)
                                + " of it are no covering of a deck or of a roof of less than 10°";
                    case MATERIAL ->
                        layer.known()
                                ? "which that material cannot do there"
                                : "yet no source says that that material can do it";
                };
    }

    private static String stopped(ControlLine line) {
        String word = Words.word(line.control()) + " control";
        return line instanceof ControlLine.ChangesSide changes
                ? Format.of(
                        "%s lies %s the insulation in one surface and %s it in the other, and nothing that is drawn joins the"
                                + " two",
                        word, Words.word(changes.first()), Words.word(changes.second()))
                : "no tape or lap along the joints of the drawing joins the two layers of " + word;
    }

    private static String coldCorner(CornerUnderLimitRule.Found found, Phrases say) {
        VertexSheet worst = found.worst();
        return Format.of(
                "where its seams meet the temperature factor fRsi is %s; %s %s; at the design temperature mould can grow"
                        + " there from %s indoor humidity on, and it drips from %s on",
                say.factor(worst.temperatureFactor()),
                found.month()
                        .map(need -> month(need.month()) + ", at " + say.say(need.indoorHumidity(), Dimension.SHARE)
                                + " indoors, asks for")
                        .or(() -> found.humid()
                                .map(humid -> "rooms of " + say.say(humid.humidity(), Dimension.SHARE) + ", at "
                                        + say.say(humid.outdoors(), Dimension.TEMPERATURE) + " outdoors, ask for"))
                        .orElse("the limit is"),
                say.factor(found.need()),
                say.say(worst.mouldHumidity(), Dimension.SHARE),
                say.say(worst.dewPointHumidity(), Dimension.SHARE));
    }

    private static String condensation(CondensationInsideRule.Found found, Phrases say) {
        String most = Format.of(
                "by diffusion up to %s condense, most by the end of %s at %s",
                say.say(found.year().most(), Dimension.MASS_PER_AREA),
                month(found.year().wettest().month()),
                found.year().wettestPlane());
        return found.accumulates()
                ? most + ", and after a year " + (found.year().left() < SHOWN ? "less than " : "")
                        + say.say(Math.max(SHOWN, found.year().left()), Dimension.MASS_PER_AREA) + " are left"
                : most + "; " + say.say(Condensation.MOST, Dimension.MASS_PER_AREA)
                        + " is the most that is usually allowed (DIN 4108-3, from memory)";
    }

    /**
     * Of a seam or point for which nobody chose and something stands in, what is not the same of all of them; empty of any other breach.
     */
    static Optional<FindingWords.Unchosen> unchosen(Breach breach, Phrases say) {
        return breach.evidence() instanceof DetailNotChosenRule.Found found
                ? found.standIn()
                        .map(sheet -> new FindingWords.Unchosen(
                                "\"" + sheet.result().detail().name() + "\", "
                                        + say.transmittance(sheet, sheet.external()),
                                say.best(sheet)))
                : Optional.empty();
    }

    private static String notChosen(DetailNotChosenRule.Found found, Phrases say) {
        boolean many = !(found.rows().getFirst() instanceof JunctionRow)
                && Math.round(found.rows().sumOfDouble(BridgeRow::size)) > 1;
        String start = "nobody chose how " + extent(found.rows(), say) + (many ? " are built" : " is built");
        if (found.standIn().isPresent()) {
            var sheet = found.standIn().get();
            return start + "; the worst option stands in, \""
                    + sheet.result().detail().name() + "\" with " + say.transmittance(sheet, sheet.external());
        }
        ImmutableList<Phrase> misfits =
                found.rows().flatCollect(BridgeRow::misfits).distinct();
        if (misfits.notEmpty()) {
            return start + "; nothing stands in for it: " + Phrases.bare(say.phrase(misfits.getFirst()));
        }
        return found.rows().anySatisfy(row -> !row.source().known())
                ? start + "; nothing stands in for it, since no detail of the catalogue is for it"
                : start + "; its psi is given, yet not how the layers pass";
    }

    /** How much of the house some bridges are: "8.42 m", or "4 of them". */
    private static String extent(ImmutableList<BridgeRow> rows, Phrases say) {
        double size = rows.sumOfDouble(BridgeRow::size);
        return rows.getFirst() instanceof JunctionRow
                ? new Print(say.units()).length(size)
                : Math.round(size) + (size == 1 ? " of it" : " of them");
    }

    /** The key of the house file under which a detail is chosen. */
    private static String key(ImmutableList<BridgeRow> rows) {
        return rows.getFirst() instanceof JunctionRow ? "junctions" : "points";
    }

    private static String lightWells(ImmutableList<Opening> windows) {
        return (windows.size() == 1 ? "the light well of " : "the light wells of ")
                + windows.collect(window -> "\"" + window.name() + "\"").makeString(", ");
    }

    /** m, of a light well's floor under its sill. */
    private static double least(ImmutableList<Opening> windows) {
        return windows.collectDouble(window -> window.lightWell().orElseThrow().belowSill())
                .min();
    }
}
