package coldseam.report.words;

import static coldseam.files.quantity.Dimension.AREA;
import static coldseam.files.quantity.Dimension.CONDUCTIVITY;
import static coldseam.files.quantity.Dimension.DEGREE_DAYS;
import static coldseam.files.quantity.Dimension.LENGTH;
import static coldseam.files.quantity.Dimension.LINEAR_TRANSMITTANCE;
import static coldseam.files.quantity.Dimension.MASS_PER_AREA;
import static coldseam.files.quantity.Dimension.PRECIPITATION;
import static coldseam.files.quantity.Dimension.RAIN_FACTOR;
import static coldseam.files.quantity.Dimension.RATIO;
import static coldseam.files.quantity.Dimension.RESISTANCE;
import static coldseam.files.quantity.Dimension.SHARE;
import static coldseam.files.quantity.Dimension.TEMPERATURE;
import static coldseam.files.quantity.Dimension.THICKNESS;
import static coldseam.files.quantity.Dimension.TRANSMITTANCE;
import static coldseam.files.quantity.UnitSystem.SI;
import static coldseam.files.quantity.UnitSystem.US;

import coldseam.audit.AsFound;
import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.assumed.AirAndGround;
import coldseam.audit.assumed.Assumption;
import coldseam.audit.assumed.Carrying;
import coldseam.audit.assumed.HouseShape;
import coldseam.audit.assumed.Layering;
import coldseam.audit.assumed.Materials;
import coldseam.audit.assumed.Neighbours;
import coldseam.audit.assumed.OldParts;
import coldseam.audit.assumed.OwnWord;
import coldseam.audit.assumed.Rain;
import coldseam.audit.assumed.Safety;
import coldseam.audit.assumed.Unlisted;
import coldseam.audit.assumed.WindowsAndDoors;
import coldseam.envelope.Assembly;
import coldseam.envelope.Climate;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.PointKind.Service;
import coldseam.envelope.Seam;
import coldseam.envelope.shell.Surface;
import coldseam.files.Words;
import coldseam.files.quantity.Format;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * What is said of each assumption, parts of a sentence: one entry for each, in the order in which they are told.
 *
 * @param of what is assumed
 * @param parts what is said of all that it is taken of
 */
record AssumedWords<E>(Assumption<E> of, BiFunction<ImmutableList<E>, Phrases, ImmutableList<String>> parts) {

    private static final ImmutableList<AssumedWords<?>> ALL = Lists.immutable.of(
            of(OwnWord.CALLED)
                    .each((text, say) ->
                            "what \"" + text + "\" promises (neither heat demand nor airtightness is judged)"),
            of(Neighbours.BESIDE_HEATED)
                    .each((heated, say) -> say.say(heated.area(), AREA) + " beside heated neighbours ("
                            + heated.spaces().collect(Exposure::neighbour).makeString(", ") + ")"),
            of(Neighbours.BESIDE_WARM)
                    .each((warm, say) ->
                            say.say(warm.area(), AREA) + " beside unheated spaces said to be warmer than usual ("
                                    + warm.spaces()
                                            .collect(space -> space.neighbour() + " " + say.say(space.factor(), RATIO))
                                            .makeString(", ")
                                    + ")"),
            of(Neighbours.SHELTERED)
                    .each((area, say) -> "that " + say.say(area, AREA)
                            + " of walls, more than half of all, stand beside unheated spaces and out of the rain"),
            of(Neighbours.OUT_OF_RAIN)
                    .each(
                            (area, say) -> "that " + say.say(area, AREA)
                                    + " with nothing against rain, beside spaces said to be as cold as outdoors, stand out of it"),
            of(WindowsAndDoors.INTO_UNHEATED)
                    .all((openings, say) -> "that " + quoted(openings, Opening::name)
                            + (openings.size() == 1 ? " looks" : " look") + " into an unheated space, not outdoors"),
            of(Unlisted.UNREACHED)
                    .all((spaces, say) -> "that nobody goes from the rooms to " + quoted(spaces, space -> space)
                            + " (no door or hatch is listed there)"),
            of(Unlisted.INNER_WALLS)
                    .each((area, say) -> "that no inner wall, stair or joist bay meets " + say.say(area, AREA)
                            + " of walls insulated inside (hardly any is listed under seams)"),
            of(Unlisted.WALLS_ON_SLABS)
                    .all((floors, say) -> "that no inner wall goes down through what insulates "
                            + quoted(floors, Surface::name) + " over its slab (hardly any is listed under seams)"),
            of(Unlisted.PLACES)
                    .all((seams, say) -> "that " + quoted(seams, Seam::name)
                            + (seams.size() == 1 ? " lies" : " lie")
                            + " clear of openings, corners and floors (the file gives no place on the wall)"),
            of(Unlisted.WALLS_BETWEEN_FLOORS)
                    .each((length, say) -> "that no wall goes down between floors where they meet, "
                            + say.say(length, LENGTH) + " (hardly any is listed under seams)"),
            of(Unlisted.SUPPORTS)
                    .each((borne, say) -> "that what bears \""
                            + borne.floor().name() + "\" over open air does not go through its insulation ("
                            + (borne.posts() == 0
                                    ? "no post, beam or wall is"
                                    : Phrases.count(borne.posts(), "post for ", "posts for ")
                                            + say.say(borne.floor().externalArea(), AREA)
                                            + (borne.posts() == 1 ? " is" : " are"))
                            + " listed there)"),
            of(Layering.CAVITY)
                    .each((cavity, say) -> "that "
                            + AssumedWords.outdoorAir(cavity.layer()) + " gets into the "
                            + say.say(cavity.layer().thickness(), THICKNESS) + " of air in \""
                            + cavity.assembly().name() + "\", which lie inside its insulation"),
            of(Carrying.LEAF)
                    .each((leaf, say) -> "that the " + layer(leaf.layer(), say) + " outside the insulation of \""
                            + leaf.assembly().name() + "\" stand on the ground before it or on what is listed ("
                            + (leaf.ledge() > 0 ? say.say(leaf.ledge(), LENGTH) + " of" : "no")
                            + " ledge under seams, "
                            + (leaf.angles() > 0 ? Phrases.count(leaf.angles(), "angle", "angles") : "no angle")
                            + " under points)"),
            of(OwnWord.RELAXED)
                    .all((limits, say) -> (limits.size() == 1 ? "a limit relaxed (" : "limits relaxed (")
                            + limits.collect(AssumedWords::word).makeString(", ") + ")"),
            of(OwnWord.PSI).all((rows, say) -> "psi of " + length(rows, say) + " of seams, the house file's own"),
            of(Materials.OVERRIDE)
                    .all((materials, say) -> "what the house file says that "
                            + materials
                                    .collect(material -> "\"" + material.name() + "\"")
                                    .makeString(", ")
                            + " can do"),
            of(Materials.INSULATES_BY_SOURCE)
                    .each((material, say) -> "that " + material.name() + " counts as insulation at "
                            + say.say(material.conductivity(), CONDUCTIVITY) + " ("
                            + say.say(Material.INSULATES_UP_TO, CONDUCTIVITY) + " count by themselves)"),
            of(Rain.LOW_SILL)
                    .each((sill, say) -> "that the sill of \"" + sill.opening().name() + "\" keeps water out "
                            + say.say(sill.height(), THICKNESS) + " over the "
                            + AssumedWords.lies(sill.before()) + " before it"
                            + (sill.least() < sill.height()
                                    ? ", " + say.say(sill.least(), THICKNESS) + " where that is thickest"
                                    : "")
                            + " (" + say.rule(Rain.UPTURN, THICKNESS, SI) + " are usual)"),
            of(Rain.ENCLOSED)
                    .all((surfaces, say) -> "that rain leaves " + quoted(surfaces, Surface::name)
                            + ", walls or parapets all round (no drain or scupper is listed there)"),
            of(Rain.FEW_DRAINS)
                    .each((few, say) -> "that "
                            + Phrases.count(few.drains(), "drain or scupper takes", "drains or scuppers take")
                            + " the rain off \"" + few.surface().name() + "\", walls or parapets all round"
                            + (few.area() > few.surface().externalArea()
                                    ? ", and off the slopes that fall to it, together " + say.say(few.area(), AREA)
                                    : "")
                            + " ("
                            + Rain.DRAINS
                            + ", one of them an overflow, and one for each " + say.rule(Rain.DRAINED, AREA, SI)
                            + ", are usual)"),
            of(Rain.LEVEL_GUTTER)
                    .all(
                            (rows, say) -> "that rain leaves " + length(rows, say)
                                    + " of level valleys and feet of slopes before walls (no drain or scupper is listed there)"),
            of(Rain.STAIR_FEET)
                    .all((seams, say) ->
                            "that rain leaves the foot of " + quoted(seams, Seam::name) + " by a drain of its own"),
            of(Rain.UNDER_EAVES)
                    .each((under, say) ->
                            "that gutters keep off \"" + under.below().name() + "\" the rain of "
                                    + say.say(under.area(), AREA) + " of slopes whose eaves lie over it"),
            of(Rain.NO_FALLS)
                    .all((surfaces, say) -> "that "
                            + say.say(surfaces.sumOfDouble(Surface::externalArea), AREA)
                            + " of flat roofs and decks fall to where rain leaves them (no layer is cut to falls"
                            + (surfaces.anySatisfy(roof -> Rain.fall(roof) > 0) ? " of 1 % or more)" : ")")),
            of(Rain.SEAMED)
                    .each((seamed, say) -> "that the seams of " + layer(seamed.layer(), say) + " on the level of \""
                            + seamed.surface().name() + "\" hold standing water (falls of 3° or more are usual)"),
            of(Rain.LITTLE_RAIN)
                    .each((assembly, say) -> "that \"" + assembly.name() + "\" is cooled by no more rain than "
                            + say.say(assembly.rain().orElseThrow().precipitation(), PRECIPITATION) + ", at "
                            + say.say(assembly.rain().orElseThrow().factor(), RAIN_FACTOR)),
            of(Layering.LOOSE)
                    .each((loose, say) -> "that neither water nor wind lifts " + layer(loose.board(), say) + " of \""
                            + loose.assembly().name() + "\", over what keeps out water ("
                            + (loose.weight() > 0 ? say.say(loose.weight(), MASS_PER_AREA) + " lie" : "nothing lies")
                            + " on it, "
                            + say.rule(Layering.BALLAST, MASS_PER_AREA, SI) + " are usual)"),
            of(Rain.LOW_PITCH)
                    .each((low, say) -> "that " + layer(low.tiles(), say) + " on \""
                            + low.roof().partOf()
                            + "\" keep driven rain off what lies under them at " + Format.of("%.1f°", low.pitch())
                            + " (20° and more are usual)"),
            of(Rain.SPLASHED)
                    .each((foot, say) ->
                            "that the wood at the foot of \"" + foot.assembly().name() + "\" stays dry, "
                                    + say.say(foot.height(), THICKNESS) + " over the ground ("
                                    + say.rule(2 * Rain.SPLASH, THICKNESS, SI) + " are usual, and "
                                    + say.rule(Rain.SPLASH, THICKNESS, SI) + " over gravel)"),
            of(OwnWord.DRAWN_BY_HAND)
                    .all((rows, say) -> "that " + length(rows, say)
                            + " of seams drawn by hand carry, and control air, water and vapour, as their files say"),
            of(OwnWord.DRAWN_OF_ITS_OWN)
                    .each((region, say) -> "that \"" + region.material() + "\", drawn by hand, conducts "
                            + say.say(region.conductivity(), CONDUCTIVITY) + ", by no source"),
            of(OwnWord.DETAILS)
                    .each((own, say) -> "that " + places(own, say)
                            + " are built, in the order given, and hold, as details of the house's own say"),
            of(OwnWord.IDLE)
                    .all((choices, say) -> "that the house has no "
                            + choices.collect(AssumedWords::meant).distinct().makeString(", no ")
                            + ", for which a detail is chosen"),
            of(OwnWord.BEYOND_ITS_SEAM)
                    .all((rows, say) -> "that what insulates the surfaces beside "
                            + say.say(rows.sumOfDouble(JunctionRow::length), LENGTH)
                            + " of seams, drawn by the house's own files, is built there (psi down to "
                            + say.say(
                                    rows.collectDouble(row -> row.psi().lower()).min(), LINEAR_TRANSMITTANCE)
                            + ", less than the surfaces' layers allow)"),
            of(Carrying.BARE)
                    .each((assembly, say) -> "that \"" + assembly.name() + "\" is carried by "
                            + assembly.structure()
                                    .collect(layer -> layer(layer, say))
                                    .makeString(", ")
                            + " without studs, rafters or joists"),
            of(Carrying.FEW_STUDS)
                    .each((few, say) -> "that studs, plates and what stands round openings take no more than "
                            + say.units().apart(few.share(), few.least(), SHARE) + " of \""
                            + few.assembly().name() + "\" ("
                            + "at least " + say.units().apart(few.least(), few.share(), SHARE) + " are usual)"),
            of(Carrying.FEW_RAFTERS)
                    .each((few, say) -> "that rafters or joists take no more than "
                            + say.units().apart(few.share(), few.least(), SHARE)
                            + " of \"" + few.assembly().name() + "\" (at least "
                            + say.units().apart(few.least(), few.share(), SHARE)
                            + " are usual)"),
            of(Carrying.FEW_FASTENERS)
                    .each((assembly, say) -> "that fasteners of "
                            + assembly.fasteners()
                                    .map(it -> say.say(it.diameter(), THICKNESS))
                                    .orElseThrow()
                            + ", thinner or fewer than usual, hold what insulates \"" + assembly.name() + "\" outside"),
            of(Carrying.FEW_LISTED)
                    .all((assemblies, say) -> "that the fasteners listed for " + quoted(assemblies, Assembly::name)
                            + ", on some surface fewer than usual, hold what insulates outside"),
            of(Layering.PANELS)
                    .all((assemblies, say) -> "that panels of two boards and a core of foam, "
                            + quoted(assemblies, Assembly::name)
                            + ", are joined as tight as the filled bays that their details draw (splines between panels,"
                            + " and their own feet, corners and ridges, are not drawn)"),
            of(Carrying.VAULT)
                    .all((assemblies, say) -> "that masonry alone spans rooms in " + quoted(assemblies, Assembly::name)
                            + " (as a vault, or with steel in it)"),
            of(Carrying.SLENDER_SPAN)
                    .each((thin, say) -> "that walls or beams indoors bear \""
                            + thin.surface().name() + "\", "
                            + say.say(thin.layer().thickness(), THICKNESS) + " of "
                            + thin.layer()
                                    .framing()
                                    .map(members -> members.material().name() + " members")
                                    .orElse(thin.layer().material().name())
                            + " across " + say.say(thin.span(), LENGTH)),
            of(Carrying.LAID)
                    .all((assemblies, say) -> "that walls stand on footings of their own, not on "
                            + quoted(assemblies, Assembly::name) + " of masonry, which is laid"),
            of(Carrying.WOOD_IN_GROUND)
                    .all((assemblies, say) -> "that no damp of the ground reaches the wood of "
                            + quoted(assemblies, Assembly::name) + ", then or later"),
            of(HouseShape.RAISED)
                    .each((raised, say) -> "that fill bears \"" + raised.floor().name() + "\", "
                            + say.say(raised.height(), LENGTH) + " over the ground beside it"),
            of(HouseShape.BURIED)
                    .all((walls, say) -> "that no ground touches " + quoted(walls, Surface::name)
                            + ", which face outdoors below the level that the ground is said to have"),
            of(HouseShape.DRAWN_GROUND)
                    .each((ground, say) -> "that the ground lies " + say.say(ground.drawn(), THICKNESS)
                            + " under the floor's top, as " + Phrases.listed(ground.sheets())
                            + (ground.sheets().size() == 1 ? " draws it" : " draw it")
                            + " (\"plinth\" of the detail), not "
                            + say.say(Math.abs(ground.said()), THICKNESS)
                            + (ground.said() < 0 ? " over it" : "") + ", as the house file has it"),
            of(HouseShape.SLOTS)
                    .each((slot, say) -> "that \"" + slot.one().name() + "\" and \""
                            + slot.other().name()
                            + "\" are built and kept in a slot of " + say.say(slot.width(), THICKNESS)
                            + " between them"),
            of(HouseShape.IN_GROUND_WATER)
                    .each((sunk, say) ->
                            "that no ground water stands at \"" + sunk.floor().name() + "\", "
                                    + say.say(sunk.depth(), LENGTH) + " under the ground beside it"),
            of(Layering.WETTED)
                    .each((wetted, say) ->
                            "that " + layer(wetted.layer(), say) + ", outside of what keeps water out of \""
                                    + wetted.assembly().name() + "\", never get wet"),
            of(Layering.NAKED)
                    .each((assembly, say) -> "that " + layer(assembly.layers().getLast(), say) + ", outermost on \""
                            + assembly.name() + "\", stand sun and wind"),
            of(Layering.UNLINED)
                    .each((assembly, say) -> "that " + layer(assembly.layers().getFirst(), say) + ", innermost in \""
                            + assembly.name() + "\", is lined against knocks and fire (no layer is listed before it)"),
            of(HouseShape.TALL)
                    .all((walls, say) ->
                            "that no floor meets " + say.say(walls.sumOfDouble(Surface::internalArea), AREA)
                                    + " of walls higher indoors than one storey"),
            of(OldParts.PLATFORM)
                    .all((rows, say) ->
                            "that old studs stop at the floors, " + length(rows, say) + " (no balloon-frame is said)"),
            of(OldParts.SLABS)
                    .all((rows, say) -> "that floors in old masonry are of concrete, " + length(rows, say)
                            + " (\"floor\" of the storey, joists or slab, is not said)"),
            of(OldParts.LINTELS)
                    .all((rows, say) -> "that lintels in old masonry are of concrete, " + length(rows, say)
                            + " (\"lintel\" of the opening is not said; arches and timber lose less)"),
            of(WindowsAndDoors.NO_LINTEL)
                    .all((rows, say) -> "that walls span openings by themselves, " + length(rows, say)
                            + " (no lintel or header is drawn there)"),
            of(OldParts.JOIST_ENDS)
                    .all((storeys, say) -> "that joists in masonry stay dry and sound under "
                            + quoted(storeys, storey -> storey) + " (no joist end is listed under points)"),
            of(OldParts.FEW_JOIST_ENDS)
                    .each((joists, say) -> "that no more than "
                            + Phrases.count(joists.ends(), "joist ends", "joists end") + " in "
                            + say.say(joists.length(), LENGTH) + " of \""
                            + joists.wall().name() + "\""),
            of(OldParts.BUILT_ROUND)
                    .all((rows, say) -> "that nothing old comes down for " + length(rows, say)
                            + " of seams by details of its own (they take " + AssumedWords.down(rows) + ")"),
            of(OldParts.NO_OVERHANG)
                    .all((rows, say) -> "that the old flat roof stands out nowhere past its walls, " + length(rows, say)
                            + " (an overhang that stays has details of its own)"),
            of(OldParts.ON_NEW_INSULATION)
                    .each((floor, say) -> "that insulation comes to lie under \"" + floor.name()
                            + "\", which stays (built-new does not name it)"),
            of(WindowsAndDoors.BETTER_THAN_BEST)
                    .all((openings, say) -> "that "
                            + Phrases.count(
                                    openings.size(),
                                    "window or door, or its frame, loses",
                                    "windows or doors, or their frames, lose")
                            + " less than the best usual ones, U from "
                            + say.say(
                                    openings.collectDouble(WindowsAndDoors::least)
                                            .min(),
                                    TRANSMITTANCE)),
            of(WindowsAndDoors.BETTER_GLASS)
                    .all((openings, say) -> "that the glass of " + quoted(openings, Opening::name)
                            + " has a U of less than "
                            + say.rule(WindowsAndDoors.BEST_GLASS, TRANSMITTANCE, SI) + " (three panes have more)"),
            of(WindowsAndDoors.UPRIGHT)
                    .all((openings, say) -> "that the U of " + quoted(openings, Opening::name)
                            + (openings.size() == 1 ? " is that of its slope" : " are those of their slopes")
                            + ", where glass loses more than upright, as U are declared (EN 673, from memory)"),
            of(WindowsAndDoors.LAPPED_GLASS)
                    .each((lapped, say) -> "that no board lies before the glass of \""
                            + lapped.opening().name() + "\" (a lap of " + say.say(lapped.lap(), THICKNESS)
                            + " on a frame of " + say.say(lapped.frame(), THICKNESS) + ")"),
            of(WindowsAndDoors.HIGH_SILL)
                    .each((door, say) -> "that the door \"" + door.name() + "\" has its sill "
                            + say.say(door.sill(), LENGTH) + " over the floor"),
            of(WindowsAndDoors.HELD_BY_NOTHING)
                    .all((openings, say) -> "that what holds the light "
                            + (openings.size() == 1 ? "well" : "wells") + " of " + quoted(openings, Opening::name)
                            + " does not go through the boards (no point is listed there)"),
            of(WindowsAndDoors.LOW_IN_WELL)
                    .all((openings, say) -> "that no leaves or snow in a light well reach the "
                            + (openings.size() == 1 ? "sill" : "sills") + " of " + quoted(openings, Opening::name)
                            + ", less than " + say.rule(WindowsAndDoors.OVER_WELL, THICKNESS, SI) + " over its floor"),
            of(Safety.NO_WAY_OUT)
                    .all((openings, say) -> "that nobody must get out by " + quoted(openings, Opening::name)
                            + " (a light well that is a way out takes "
                            + say.rule(Safety.WAY_OUT, THICKNESS, US) + " before the wall and "
                            + say.rule(Safety.WAY_OUT_AREA, AREA, US) + ", by the local code)"),
            of(WindowsAndDoors.LARGE)
                    .each((opening, say) -> "that \"" + opening.name() + "\" is " + say.say(opening.width(), LENGTH)
                            + " wide and " + say.say(opening.height(), LENGTH) + " high"),
            of(Layering.THIN_FALLS)
                    .each((thin, say) -> "that \"" + thin.surface().name() + "\", cut to falls, may have a U of "
                            + say.say(thin.transmittance(), TRANSMITTANCE) + " where it is thinnest"),
            of(WindowsAndDoors.SLIM_FRAME)
                    .each((opening, say) -> "that the frame of \"" + opening.name() + "\", or the edge of its glass, is"
                            + " slimmer or loses less than usual ("
                            + opening.rating()
                                    .match(
                                            whole -> "",
                                            it -> say.say(it.frameWidth(), THICKNESS) + ", "
                                                    + say.say(it.edge(), LINEAR_TRANSMITTANCE))
                            + ")"),
            of(WindowsAndDoors.THICK_LID)
                    .all((hatches, say) -> "that " + quoted(hatches, Opening::name)
                            + (hatches.size() == 1 ? " loses" : " lose")
                            + " less than as much of the ceiling round it"),
            of(WindowsAndDoors.THIN_FRAME)
                    .each((frame, say) -> "that the frame of \""
                            + frame.opening().name() + "\", "
                            + say.say(frame.opening().frameDepth(), THICKNESS) + " deep, has a U of "
                            + say.say(frame.opening().frameTransmittance(), TRANSMITTANCE) + ", as if it were of "
                            + say.say(frame.conductivity(), CONDUCTIVITY)),
            of(WindowsAndDoors.DARK)
                    .each((dark, say) -> "that " + say.say(dark.windows(), AREA) + " of windows light "
                            + say.say(dark.floor(), AREA) + " of floor"),
            of(OldParts.PROPPED)
                    .all((walls, say) -> "that what stays is held up while " + quoted(walls, Surface::name)
                            + (walls.size() == 1 ? " is built" : " are built") + " new under it"),
            of(OldParts.LOADED)
                    .all((walls, say) -> "that " + quoted(walls, Surface::name) + ", and what "
                            + (walls.size() == 1 ? "it stands on, bears" : "they stand on, bear")
                            + " what is built new over " + (walls.size() == 1 ? "it" : "them")),
            of(OldParts.PUT_BACK)
                    .all((roofs, say) -> "that what carries " + quoted(roofs, Surface::name)
                            + " comes down and goes up again (built-new does not name it)"),
            of(OldParts.BUILT_NEW)
                    .all((assemblies, say) -> "that " + quoted(assemblies, assembly -> assembly.name())
                            + (assemblies.size() == 1 ? " is built" : " are built")
                            + " new, though of an old house's material (no retrofit is said)"),
            of(OldParts.REMOVED)
                    .each((removed, say) -> "that of \"" + removed.found().name() + "\" "
                            + Phrases.listed(removed.layers().collect(layer -> layer(layer, say)))
                            + (removed.layers().size() == 1 ? " comes off" : " come off")),
            of(AirAndGround.WARM_CRAWL_SPACE)
                    .each((space, say) -> "that the crawl space's walls have a U of "
                            + say.say(space.wallTransmittance(), TRANSMITTANCE)
                            + ", and what insulates its ground an R of "
                            + say.say(space.groundResistance(), RESISTANCE)),
            of(AirAndGround.WARM_SLAB_EDGE)
                    .each((edge, say) -> "that " + say.say(edge.thickness(), THICKNESS)
                            + " of board along a slab's edge reach " + say.say(edge.extent(), LENGTH)),
            of(HouseShape.UNUSUAL_FLOORS)
                    .each((floor, say) ->
                            "that a floor between two storeys is " + say.say(floor, THICKNESS) + " thick"),
            of(HouseShape.HIGH_PARAPET)
                    .each((height, say) -> "that a parapet " + say.say(height, LENGTH)
                            + " high stands in the wind on what its seam is made of"),
            of(HouseShape.LONG).each((length, say) -> "that the house is " + say.say(length, LENGTH) + " long"),
            of(AirAndGround.DRY_ROOMS)
                    .each((site, say) -> "that the rooms have no more than " + say.say(site.indoorHumidity(), SHARE)
                            + " of humidity " + (AirAndGround.isOfAllYear(site) ? "all year" : "in winter")),
            of(AirAndGround.COOL_ROOMS)
                    .each((site, say) ->
                            "that the rooms are kept no warmer than " + say.say(site.indoorTemperature(), TEMPERATURE)),
            of(AirAndGround.MILD)
                    .each((site, say) ->
                            "that it is no colder outdoors than " + say.say(site.outdoorTemperature(), TEMPERATURE)),
            of(AirAndGround.SHORT_WINTER)
                    .each((winter, say) ->
                            "that a year whose coldest days have " + say.say(winter.coldest(), TEMPERATURE)
                                    + " has no more than " + say.say(winter.days(), DEGREE_DAYS) + " ("
                                    + say.say(winter.usual(), DEGREE_DAYS) + " are usual)"),
            of(AirAndGround.DRY_GROUND)
                    .each((site, say) -> "that the ground conducts " + say.say(site.groundConductivity(), CONDUCTIVITY)
                            + ", less than clay or silt"),
            of(AirAndGround.EVEN_YEAR).each((climate, say) -> "that the months are all alike"),
            of(AirAndGround.DRY_WINTER).each((climate, say) -> "that the air of cold months is dry outdoors"),
            of(AirAndGround.AIRED)
                    .each((climate, say) -> "that the rooms are as dry as "
                            + (climate.indoors() == Climate.Indoors.STORAGE
                                    ? "a store's"
                                    : "those of a house known to be well ventilated")),
            of(Materials.STILL_AIR)
                    .each((material, say) -> "that \"" + material.name() + "\" conducts "
                            + say.say(material.conductivity(), CONDUCTIVITY)
                            + ", less than boards without a vacuum do"),
            of(Materials.GASEOUS)
                    .each((material, say) -> "that \"" + material.name() + "\" conducts "
                            + say.say(material.conductivity(), CONDUCTIVITY)
                            + ", less than fibres and foams open to air do"),
            of(Materials.UNLIKE)
                    .each((unlike, say) -> "that \"" + unlike.material().name() + "\" conducts "
                            + say.say(unlike.material().conductivity(), CONDUCTIVITY) + " ("
                            + say.say(unlike.usual(), CONDUCTIVITY) + " are usual)"),
            of(Materials.CARRIES_LIGHTLY)
                    .each((material, say) -> "that \"" + material.name() + "\" carries and conducts "
                            + say.say(material.conductivity(), CONDUCTIVITY) + ", less than "
                            + (material.carries() == Material.Carries.SPANS
                                    ? "concrete does (\"carries: stands\" says that it is masonry)"
                                    : "filled blocks do")),
            of(Materials.VACUUM)
                    .each((material, say) -> "that no panel of \"" + material.name()
                            + "\" is cut, drilled or screwed through, then or later"),
            of(WindowsAndDoors.OPENINGS)
                    .all((missing, say) -> "that the house has "
                            + missing.collect(none -> "no " + Words.word(none.kind())
                                            + (none.other() ? " that one comes in by" : ""))
                                    .makeString(" and ")),
            of(Safety.GUARDS)
                    .each((deck, say) ->
                            "that nobody falls off \"" + deck.surface().name() + "\" ("
                                    + (deck.posts() == 0
                                            ? "no posts, brackets or parapet are listed there)"
                                            : Phrases.count(deck.posts(), "post or bracket", "posts and brackets")
                                                    + " along " + say.say(deck.length(), LENGTH) + ")")),
            of(Safety.STEPPED_THROUGH)
                    .all((openings, say) -> "that nobody steps on or falls through " + quoted(openings, Opening::name)
                            + ", where people walk"),
            of(Safety.FALLS)
                    .all((openings, say) -> "that nobody falls out of " + quoted(openings, Opening::name)
                            + " (no deck, stair, balcony or guard is listed there)"),
            of(Carrying.UNFASTENED)
                    .all((assemblies, say) -> "that no fastener goes through what insulates "
                            + quoted(assemblies, Assembly::name) + " outside (none is listed)"),
            of(Layering.CLOSED)
                    .each((closed, say) -> "that "
                            + AssumedWords.outdoorAir(closed.layer()) + " gets into " + layer(closed.layer(), say)
                            + " of \""
                            + closed.assembly().name() + "\", outside its insulation (it counts as "
                            + Words.word(ventilation(closed.layer())) + ")"),
            of(Layering.NARROW)
                    .each((gap, say) -> "that outdoor air rises in " + layer(gap.layer(), say) + " of \""
                            + gap.assembly().name() + "\" (" + say.rule(Layering.AIRED, THICKNESS, SI)
                            + " are little for it)"),
            of(Layering.CUT)
                    .each((cut, say) -> "that " + layer(cut.layer(), say) + " and more of \""
                            + cut.assembly().name() + "\" are cut to falls, though no rain runs off over them"),
            of(Layering.SHUT)
                    .each((shut, say) -> "that the wood in \"" + shut.assembly().name() + "\" stays dry: its outside "
                            + (Double.isInfinite(shut.outside())
                                    ? "lets no vapour through, its inside slows it like air of "
                                    : "slows vapour as " + say.say(shut.outside(), LENGTH)
                                            + " of air do, its inside as ")
                            + say.say(shut.inside(), LENGTH)
                            + " (no climate is given to judge it by)"),
            of(Layering.BAGGED)
                    .each((bagged, say) ->
                            "that the masonry of \"" + bagged.assembly().name()
                                    + "\" is dry when it is shut in: what lies inside it slows vapour as "
                                    + AssumedWords.slows(bagged.inside(), say) + ", what lies outside as "
                                    + AssumedWords.slows(bagged.outside(), say)),
            of(Layering.METAL)
                    .each((bridged, say) -> "that "
                            + bridged.layer().framing().orElseThrow().material().name() + " through "
                            + layer(bridged.layer(), say) + " of \""
                            + bridged.assembly().name()
                            + "\" takes no more heat along than its share (ISO 6946 does not count it so for metal)"),
            of(Layering.BRIGHT)
                    .each((bright, say) -> "that a face of " + layer(bright.layer(), say) + " of \""
                            + bright.assembly().name() + "\" stays bright (an emissivity of "
                            + say.say(bright.layer().air().orElseThrow().lowEmissivity(), SHARE) + ")"),
            of(AirAndGround.LEFT_OUT)
                    .all((left, say) -> "that "
                            + Phrases.listed(left.collect(each -> AssumedWords.word(each, say)))
                            + " (the house file does not say)"),
            of(Unlisted.SERVICES)
                    .all((missing, say) -> missing.containsAllIterable(Unlisted.EVERY_HOUSE)
                            ? "that nothing that serves the house goes through the insulation"
                            : "that nothing of its own goes through the insulation for "
                                    + Phrases.listed(missing.collect(AssumedWords::word))),
            of(Unlisted.MANY)
                    .each((many, say) -> "that the house has " + many.number() + " points of the kind "
                            + many.kind().label() + " ("
                            + many.kind().atMost().orElseThrow() + " are many)"),
            of(Materials.WITHOUT_PRODUCT)
                    .each((values, say) -> (values.generic() == values.all() && values.all() > 1
                                    ? "all " + values.all()
                                    : values.generic() + " of " + values.all())
                            + (values.all() == 1 ? " conductivity" : " conductivities")
                            + ", generic ones without a product's source"),
            of(WindowsAndDoors.WITHOUT_SOURCE)
                    .all((openings, say) -> "the U of "
                            + Phrases.count(openings.size(), "window or door", "windows and doors")
                            + " without a product's source"),
            of(WindowsAndDoors.FOUND_WITHOUT_SOURCE)
                    .all((openings, say) -> "the U of "
                            + Phrases.count(openings.size(), "window or door", "windows and doors")
                            + " as found without a source"),
            of(OldParts.FOUND_BY_ITS_OWN)
                    .all((seams, say) -> "what "
                            + say.say(seams.sumOfDouble(AsFound.Seam::length), LENGTH)
                            + " of seams lost as they were found, by details of its own"));

    private static <E> Told<E> of(Assumption<E> assumption) {
        return new Told<>(assumption);
    }

    /** An assumption before its words. */
    private record Told<E>(Assumption<E> of) {

        /** A part for each that it is taken of. */
        AssumedWords<E> each(BiFunction<E, Phrases, String> part) {
            return new AssumedWords<>(
                    of, (all, say) -> all.collect(one -> part.apply(one, say)).distinct());
        }

        /** One part for all of them. */
        AssumedWords<E> all(BiFunction<ImmutableList<E>, Phrases, String> part) {
            return new AssumedWords<>(
                    of,
                    (all, say) -> all.isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(part.apply(all, say)));
        }
    }

    /** Those that have words, in the order in which they are told. */
    static ImmutableList<Assumption<?>> worded() {
        return ALL.collect(AssumedWords::of);
    }

    /** All that is said of one audit. */
    static ImmutableList<String> of(Audit audit, Phrases say) {
        return ALL.flatCollect(words -> words.in(audit, say));
    }

    private ImmutableList<String> in(Audit audit, Phrases say) {
        return parts.apply(of.in(audit), say);
    }

    private static <T> String quoted(ImmutableList<T> those, Function<T, String> name) {
        return Phrases.listed(those.collect(each -> "\"" + name.apply(each) + "\""));
    }

    private static String layer(Layer layer, Phrases say) {
        return say.say(layer.thickness(), THICKNESS) + " of " + layer.material().name();
    }

    private static String slows(double air, Phrases say) {
        return Double.isInfinite(air) ? "metal and glass do" : say.say(air, LENGTH) + " of air do";
    }

    private static String lies(Surface before) {
        return switch (before.use()) {
            case TERRACE -> "deck";
            case ROOF -> "roof";
            default -> "ground";
        };
    }

    private static String down(ImmutableList<JunctionRow> rows) {
        ImmutableList<String> parts = rows.flatCollect(row -> row.sheet()
                        .map(sheet -> sheet.result().detail().suits().takesDown())
                        .orElseThrow())
                .distinct();
        return parts.isEmpty() ? "nothing down" : "down nothing but the " + Phrases.listed(parts);
    }

    private static String length(ImmutableList<JunctionRow> rows, Phrases say) {
        return say.say(rows.sumOfDouble(JunctionRow::length), LENGTH);
    }

    private static String places(OwnWord.Details own, Phrases say) {
        MutableList<String> places = Lists.mutable.empty();
        if (own.length() > 0) {
            places.add(say.say(own.length(), LENGTH) + " of seams");
        }
        if (own.points() > 0) {
            places.add(Phrases.count(own.points(), "point", "points"));
        }
        if (own.corners() > 0) {
            places.add(Phrases.count(own.corners(), "corner", "corners"));
        }
        return places.makeString(" and ");
    }

    private static String word(AirAndGround.Left left, Phrases say) {
        return switch (left.usual()) {
            case INDOOR_HUMIDITY -> "the rooms have " + say.say(left.site().indoorHumidity(), SHARE) + " of humidity";
            case HUMIDITY_BY_MONTHS -> "the rooms are as humid through the year as a dwelling's";
            case GROUND -> "the ground is " + left.site().groundName();
        };
    }

    private static String word(Service service) {
        return switch (service) {
            case VENT_OF_WASTE_PIPES -> "the vent of waste pipes";
            case LAMP_OUTDOORS -> "a lamp outdoors";
            case TAP_OUTDOORS -> "a tap outdoors";
            default -> Words.word(service);
        };
    }

    private static String outdoorAir(Layer air) {
        return (ventilation(air) == Layer.Ventilation.UNVENTILATED ? "no" : "little") + " outdoor air";
    }

    private static Layer.Ventilation ventilation(Layer air) {
        return air.air().orElseThrow().ventilation();
    }

    private static String meant(JunctionChoice choice) {
        String kinds = choice.which()
                .kinds()
                .collect(JunctionKind::label)
                .toSortedList()
                .makeString(" or ");
        return (kinds.isEmpty() ? "seam" : kinds)
                + (choice.which().surfaces().isEmpty()
                        ? ""
                        : " at " + quoted(choice.which().surfaces(), name -> name));
    }

    private static String word(OwnWord.Limit limit) {
        return switch (limit) {
            case NECK -> "neck";
            case PATH -> "weakest path";
            case PSI -> "psi";
            case OPENING_PSI -> "psi at openings";
            case CHI -> "chi";
            case TEMPERATURE_FACTOR -> "fRsi";
            case MEAN -> "against the mean";
            case WALLS -> "U of walls";
            case ROOFS -> "U of roofs";
            case FLOORS -> "U of floors";
            case GROUND -> "U in the ground";
            case WINDOWS -> "U of windows";
            case DOORS -> "U of doors";
        };
    }
}
