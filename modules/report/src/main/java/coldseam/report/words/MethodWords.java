package coldseam.report.words;

import coldseam.assemblies.moisture.Condensation;
import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.Note;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Site;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** How an audit was made, and what to be careful about. */
public final class MethodWords {

    private MethodWords() {}

    /** What was computed how, and its limits. */
    public static ImmutableList<String> method(Audit audit, UnitSystem units) {
        Site site = audit.house().site();
        HeatLoss loss = audit.heatLoss();
        String dimensions = loss.system() == DimensionSystem.EXTERNAL ? "external" : "overall internal";
        return Lists.immutable
                .of(
                        "The shell is built from the house file and closed exactly: every edge is shared by two surfaces or listed"
                                + " as open.",
                        "Transmittances follow ISO 6946:2017, the mean of the upper and the lower limit, in the direction of the heat"
                                + " flow; membranes, and what lies outside a well ventilated air layer, are left out. Floors on the ground"
                                + " and over crawl spaces follow ISO 13370:2017. Formulas of standards count as exact here, though they"
                                + " are not.",
                        "Each junction is a two-dimensional section of the house's own layers, computed by finite elements from both"
                                + " sides: a temperature field bounds the heat flow from above, a stream function from below. The true"
                                + " value of the section as drawn lies between the two numbers; the interval says nothing of how the"
                                + " section was simplified or how it is built.",
                        "psi = L2D - sum of U l (ISO 10211:2017), lengths in " + dimensions
                                + " dimensions; compare it with values of the same convention only. An own psi of the house file goes"
                                + " before the computed one.",
                        "Psi limits are for " + dimensions
                                + " dimensions; the psi of the other system is printed and not judged. Where"
                                + " surfaces meet at "
                                + (loss.system() == DimensionSystem.EXTERNAL ? "more" : "less")
                                + " than 180° measured indoors, geometry alone makes this psi the larger one, and it has a limit of"
                                + " its own ("
                                + units.format(audit.house().limits().geometryPsi(), Dimension.LINEAR_TRANSMITTANCE)
                                + "; judgement where the house file says nothing). So have windows and doors. The psi of a skylight's"
                                + " shaft holds its whole wall, which no surface counts; it may be larger by what such a wall loses"
                                + " at the largest U a wall may have (judgement).",
                        "fRsi is computed with an inner surface resistance of "
                                + units.format(0.25, Dimension.RESISTANCE)
                                + " (ISO 13788:2012), of "
                                + units.format(0.13, Dimension.RESISTANCE)
                                + " on frames and doors, which are not judged themselves: at an opening it is sought on the wall"
                                + " and where it meets the frame. The edge of the glass is not computed. It is an estimate, not"
                                + " bounded. Mould may grow where the air at a surface"
                                + " stays above 80 % relative humidity. The standard means monthly means of the outdoor air,"
                                + " since mould takes days to grow; the design temperature is a cold spell, so the humidities"
                                + " that are given for it are on the safe side and are pointed out, not held against a junction.",
                        mould(site),
                        inside(site),
                        "H_T follows ISO 13789:2017: surfaces, junctions, ground and unheated spaces by their temperature factor b;"
                                + " party walls to heated neighbours count as 0. Each line is rounded to "
                                + PrintedLoss.STEP + " " + units.label(Dimension.HEAT_LOSS_COEFFICIENT)
                                + " before it is added: exact values to the nearest, intervals outwards. So the table adds up as"
                                + " printed.",
                        "The two dimension systems give the same heat loss up to the vertices, where three edges meet, and up to the"
                                + " corrections of U for fasteners, gaps and rain, which no section holds, and for the ground at"
                                + " corners and steps in it, which are drawn without; both remainders are stated. Both use"
                                + " the same U of the ground.",
                        "The annual loss is gross: degree days times H, without gains from sun, people or appliances, and without"
                                + " set-back. It is for comparing seams, not for sizing or for a bill.",
                        "The pen line and its neck are found in the insulation as drawn; materials count as insulation up to "
                                + units.format(0.065, Dimension.CONDUCTIVITY)
                                + " unless the house file says otherwise. The weakest path is a way through the section as"
                                + " drawn; the least resistance may be up to one per cent lower. Air, water and"
                                + " vapour control at a junction are what its detail says, not what was found on site.",
                        "Loss against the best option: of those of the catalogue of which least would be found (an unbroken pen line, unbroken"
                                + " lines of air, water and vapour, limits kept) the one with the least psi for the"
                                + " same layers. Options that are neither built nor the best are bounded ten times as wide: within a"
                                + " thousandth of their coupling, a point's within a ten-thousandth.")
                .newWithAll(audit.notes().collect(note -> words(note, units)))
                .newWithAll(points(audit));
    }

    private static String words(Note note, UnitSystem units) {
        return note.match(
                floor -> "A floor on the ground without an exposed edge loses nothing by ISO 13370; "
                        + floor.floor().name() + " counts as such.",
                wall ->
                        "ISO 13370 has no formula for a wall in the ground that stands on no floor on the ground or reaches no"
                                + " deeper than it; " + wall.wall().name()
                                + " counts with its U as if outdoors, without the ground, which"
                                + " overstates what it loses.",
                edge ->
                        "The edge insulation of the slab is drawn in the sections of the slab's edge and counts in their psi, not in"
                                + " the floor's U; a section drawn by hand and an own psi must hold it themselves.",
                crawlSpace -> Format.of(
                        "The crawl space was not described: %s high, walls of %s, vents of %s, wind of %s, average shielding,"
                                + " bare ground (common practice, no source).",
                        units.format(crawlSpace.as().height(), Dimension.LENGTH),
                        units.format(crawlSpace.as().wallTransmittance(), Dimension.TRANSMITTANCE),
                        units.format(crawlSpace.as().vents(), Dimension.OPENING_PER_LENGTH),
                        units.format(crawlSpace.as().windSpeed(), Dimension.SPEED)),
                transmittance -> transmittance.warning().text(),
                corner -> "The house file names " + corner.detail()
                        + " under corners; no corner of the house that could be computed has the edges, with the details, that"
                        + " it is for, so it is built into none.",
                wells ->
                        "Walls behind light wells face open air, as deep as those are; the walls beside and below them keep U of"
                                + " ISO 13370 for the mean depth of the floor. What the sides of a light well and the air in it keep warm,"
                                + " and how much colder the ground is that it lets the frost into, is not computed.");
    }

    /** How points were computed; nothing where there are none. */
    private static ImmutableList<String> points(Audit audit) {
        return audit.points().isEmpty()
                ? Lists.immutable.empty()
                : Lists.immutable.of(
                        "Each point is a body of revolution through the surface's own layers, bounded from both sides like a"
                                + " junction; chi = L3D - U A of a disc or square that reaches at least 1 m past it (ISO 10211:2017, from"
                                + " memory). What is square is drawn round or as boxes in three dimensions, as its sheet says. The points are those the house"
                                + " file lists, no others; fasteners counted in U by ISO 6946 are not among them.");
    }

    private static String mould(Site site) {
        return site.climate().isPresent()
                ? "Junctions are held to the temperature factor that the month asks for which asks for most, among those at least"
                        + " 5 K colder than indoors (judgement), at the wetter of the climate's rooms and the site's own indoor"
                        + " humidity; and to the limit for fRsi whatever the months say."
                : "Mould was not judged by months, since the house file gives no monthly climate (site: climate): junctions are"
                        + " held to the limit for fRsi alone.";
    }

    private static String inside(Site site) {
        return site.climate().isPresent()
                ? "Condensation inside assemblies goes by monthly means (ISO 13788:2012, from memory), between framing where there"
                        + " is some, towards outdoors only. " + Condensation.CAUTION
                : "Condensation inside assemblies was not checked, since the house file gives no monthly climate (site: climate).";
    }

    /** To be printed with every audit. */
    public static ImmutableList<String> cautions() {
        return Lists.immutable.of(
                "This audit is arithmetic on what the house file says. It is no engineering design and no approval; the law, the"
                        + " local code and the inspector decide. Have it checked by those who are licensed for it where that is"
                        + " required.",
                "Structure: loads on slabs, terraces and parapets, ledgers, guards, cut rafters, undermined footings, wind, snow and"
                        + " earthquake, and the weight of paving or soil need an engineer. Hidden rot under terraces has brought"
                        + " balconies down.",
                "Boards under load: use long-term strength, not the strength at 10 % strain; mind creep.",
                "Fire: foam needs a thermal barrier indoors; ventilated cavities, party walls, garages, chimneys and flues have rules"
                        + " and clearances of their own.",
                "Moisture: new layers change how a wall dries. Let wet wood dry below 19 % first; do not close both sides tight; the"
                        + " steady-state check knows no rain, no air leakage, no built-in water and no storage.",
                "Air: a tight house needs planned ventilation. Test flues for draught, fit carbon monoxide alarms, measure radon"
                        + " before and after.",
                "Hazards: old paint may hold lead; old boards, sidings and ducts asbestos; old sealants PCB. Shore trenches, secure"
                        + " heights, keep clear of the electric service.",
                "Insects: strips for inspection and local termite rules go before insulation in the ground.",
                "Electricity: do not bury open old wiring; meters and service lines are for the utility.",
                "Boundaries: added thickness may need leave from neighbours, heritage or planning authorities.",
                "Two-dimensional psi leaves out where three planes meet, and workmanship. Replace built-in conductivities by your"
                        + " products' design values, aged where foam ages.",
                "Photographs and signatures are the signer's own statements; keep people's privacy in mind.");
    }
}
