package coldseam.report.words;

import coldseam.audit.Assumed;
import coldseam.audit.Audit;
import coldseam.audit.HeldByMemory;
import coldseam.audit.JunctionRow;
import coldseam.audit.Rain;
import coldseam.audit.Sheet;
import coldseam.audit.Unlikely;
import coldseam.audit.engine.InputUncertainty;
import coldseam.audit.engine.Unknown;
import coldseam.envelope.Climate;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.Site;
import coldseam.envelope.SurfaceLimits;
import coldseam.envelope.shell.Surface;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** What stands beside the verdict so that nobody takes it for more than it is: what it rests on, and what it was held to. */
public final class HonestWords {

    private static final Pattern MEASURE = Pattern.compile("\\d+(\\.\\d+)? (m|ft)²?(?![²\\w])");

    private final Audit audit;
    private final UnitSystem units;

    /** Words about an audit in some units. */
    public HonestWords(Audit audit, UnitSystem units) {
        this.audit = audit;
        this.units = units;
    }

    /** What was taken on somebody's word, a sentence; empty where nothing was. */
    public Optional<String> assumed() {
        return sentence("Of it assumed: ", parts());
    }

    /** What was taken on somebody's word and was not in another house, a sentence; empty where nothing was. */
    public Optional<String> assumedBeside(Audit other) {
        ImmutableList<String> there = new HonestWords(other, units).parts().collect(HonestWords::unmeasured);
        return sentence("Of it assumed besides: ", parts().reject(part -> there.contains(unmeasured(part))));
    }

    /** Without its lengths and areas, which another thickness moves. */
    private static String unmeasured(String part) {
        return MEASURE.matcher(part).replaceAll("");
    }

    private static Optional<String> sentence(String first, ImmutableList<String> parts) {
        return parts.isEmpty() ? Optional.empty() : Optional.of(first + parts.makeString("; ") + ".");
    }

    private ImmutableList<String> parts() {
        Assumed assumed = Assumed.of(audit);
        MutableList<String> parts = Lists.mutable.empty();
        if (assumed.besideHeated() > 0) {
            parts.add(say(assumed.besideHeated(), Dimension.AREA) + " beside heated neighbours");
        }
        if (assumed.warm().notEmpty()) {
            parts.add(say(assumed.besideWarm(), Dimension.AREA)
                    + " beside unheated spaces said to be warmer than usual ("
                    + assumed.warm()
                            .collect(space -> space.neighbour() + " " + say(space.factor(), Dimension.RATIO))
                            .makeString(", ")
                    + ")");
        }
        if (assumed.sheltered() > 0) {
            parts.add("that " + say(assumed.sheltered(), Dimension.AREA)
                    + " of walls, more than half of all, stand beside unheated spaces and out of the rain");
        }
        if (assumed.open() > 0) {
            parts.add("that " + say(assumed.open(), Dimension.AREA)
                    + " with nothing against rain, beside spaces said to be as cold as outdoors, stand out of it");
        }
        if (assumed.shut().notEmpty()) {
            parts.add("that nobody goes from the rooms to "
                    + Phrases.listed(assumed.shut().collect(space -> "\"" + space + "\""))
                    + " (no door or hatch is listed there)");
        }
        if (assumed.nothingMeets() > 0) {
            parts.add("that no inner wall, stair or joist bay meets " + say(assumed.nothingMeets(), Dimension.AREA)
                    + " of walls insulated inside (hardly any is listed under seams)");
        }
        if (assumed.unparted() > 0) {
            parts.add("that no wall goes down between floors where they meet, "
                    + say(assumed.unparted(), Dimension.LENGTH) + " (hardly any is listed under seams)");
        }
        assumed.cavities()
                .forEach(cavity -> parts.add("that no outdoor air gets into the "
                        + say(cavity.air().thickness(), Dimension.THICKNESS) + " of air in \""
                        + cavity.assembly().name() + "\", which lie inside its insulation"));
        assumed.leaves()
                .forEach(leaf -> parts.add("that the " + say(leaf.layer().thickness(), Dimension.THICKNESS) + " of "
                        + leaf.layer().material().name() + " outside the insulation of \""
                        + leaf.assembly().name() + "\" stand on the ground before it or on what is listed ("
                        + (leaf.ledge() > 0
                                ? say(leaf.ledge(), Dimension.LENGTH) + " of ledge under seams, "
                                : "no ledge under seams, ")
                        + (leaf.angles() > 0 ? Phrases.count(leaf.angles(), "angle", "angles") : "no angle")
                        + " under points)"));
        if (assumed.relaxed().notEmpty()) {
            parts.add((assumed.relaxed().size() == 1 ? "a limit relaxed (" : "limits relaxed (")
                    + assumed.relaxed().collect(HonestWords::word).makeString(", ") + ")");
        }
        if (assumed.ownSeams().notEmpty()) {
            parts.add("psi of " + say(assumed.ownSeams().sumOfDouble(JunctionRow::length), Dimension.LENGTH)
                    + " of seams, the house file's own");
        }
        if (assumed.overrides().notEmpty()) {
            parts.add("what the house file says that "
                    + assumed.overrides()
                            .collect(material -> "\"" + material.name() + "\"")
                            .makeString(", ")
                    + " can do");
        }
        assumed.bySource()
                .forEach(material -> parts.add("that " + material.name() + " counts as insulation at "
                        + say(material.conductivity(), Dimension.CONDUCTIVITY) + " ("
                        + say(Material.INSULATES_UP_TO, Dimension.CONDUCTIVITY) + " count by themselves)"));
        rain(assumed.rain(), parts);
        unlikely(assumed.unlikely(), parts);
        if (assumed.notThere().notEmpty()) {
            parts.add("that the house has "
                    + assumed.notThere()
                            .collect(kind -> "no "
                                    + Words.word(kind)
                                    + (audit.house().openings().anySatisfy(each -> each.kind() == kind)
                                            ? " that one walks through"
                                            : ""))
                            .makeString(" and "));
        }
        if (assumed.untouched().notEmpty()) {
            parts.add("that nothing goes through the insulation"
                    + (assumed.untouched().size() < Assumed.Side.values().length
                            ? " of " + Phrases.listed(assumed.untouched().collect(Words::word))
                            : "")
                    + " at a spot");
        }
        if (assumed.withoutProduct() > 0) {
            parts.add((assumed.withoutProduct() == assumed.conductivities() && assumed.conductivities() > 1
                            ? "all " + assumed.conductivities()
                            : assumed.withoutProduct() + " of " + assumed.conductivities())
                    + (assumed.conductivities() == 1 ? " conductivity" : " conductivities")
                    + ", generic ones without a product's source");
        }
        if (assumed.undeclared().notEmpty()) {
            parts.add("the U of " + Phrases.count(assumed.undeclared().size(), "window or door", "windows and doors")
                    + " without a product's source");
        }
        if (assumed.foundUndeclared() > 0) {
            parts.add("the U of " + Phrases.count(assumed.foundUndeclared(), "window or door", "windows and doors")
                    + " as found without a source");
        }
        return parts.toImmutable();
    }

    private void rain(Rain rain, MutableList<String> parts) {
        rain.low()
                .forEach(sill -> parts.add("that the sill of \"" + sill.door().name() + "\" keeps water out "
                        + say(sill.height(), Dimension.THICKNESS) + " over the deck before it"
                        + (sill.least() < sill.height()
                                ? ", " + say(sill.least(), Dimension.THICKNESS) + " where that is thickest"
                                : "")
                        + " (" + say(Rain.UPTURN, Dimension.THICKNESS) + " are usual)"));
        if (rain.enclosed().notEmpty()) {
            parts.add("that rain leaves "
                    + Phrases.listed(rain.enclosed().collect(surface -> "\"" + surface.name() + "\""))
                    + ", walls or parapets all round (no drain or scupper is listed there)");
        }
        if (rain.level().notEmpty()) {
            parts.add("that "
                    + say(rain.level().sumOfDouble(Surface::externalArea), Dimension.AREA)
                    + " of flat roofs and decks fall to where rain leaves them (no layer is cut to falls)");
        }
    }

    private void unlikely(Unlikely what, MutableList<String> parts) {
        if (what.byHand().notEmpty()) {
            parts.add("that " + say(what.byHand().sumOfDouble(JunctionRow::length), Dimension.LENGTH)
                    + " of seams drawn by hand carry, and control air, water and vapour, as their files say");
        }
        MutableList<String> own = Lists.mutable.empty();
        if (what.ownDetails().notEmpty()) {
            own.add(say(what.ownDetails().sumOfDouble(JunctionRow::length), Dimension.LENGTH) + " of seams");
        }
        if (what.ownPoints() > 0) {
            own.add(Phrases.count(what.ownPoints(), "point", "points"));
        }
        if (what.ownCorners() > 0) {
            own.add(Phrases.count(what.ownCorners(), "corner", "corners"));
        }
        if (own.notEmpty()) {
            parts.add("that " + own.makeString(" and ") + " are built, and hold, as details of the house's own say");
        }
        what.bare()
                .forEach(assembly -> parts.add("that \"" + assembly.name() + "\" is carried by "
                        + assembly.layers()
                                .select(layer -> layer.role() == Role.STRUCTURE)
                                .collect(layer -> say(layer.thickness(), Dimension.THICKNESS) + " of "
                                        + layer.material().name())
                                .makeString(", ")
                        + " without studs, rafters or joists"));
        what.raised()
                .forEach(each -> parts.add("that fill bears \"" + each.floor().name() + "\", "
                        + say(each.height(), Dimension.LENGTH) + " over the ground beside it"));
        what.naked()
                .forEach(assembly -> parts.add("that "
                        + say(assembly.layers().getLast().thickness(), Dimension.THICKNESS) + " of "
                        + assembly.layers().getLast().material().name() + ", outermost on \"" + assembly.name()
                        + "\", stand sun and wind"));
        if (what.tall().notEmpty()) {
            parts.add("that no floor meets "
                    + say(what.tall().sumOfDouble(Surface::internalArea), Dimension.AREA)
                    + " of walls higher indoors than one storey");
        }
        if (what.platform().notEmpty()) {
            parts.add("that old studs stop at the floors, "
                    + say(what.platform().sumOfDouble(JunctionRow::length), Dimension.LENGTH)
                    + " (no balloon-frame is said)");
        }
        what.under()
                .forEach(floor -> parts.add("that insulation comes to lie under \"" + floor.name()
                        + "\", which stays (built-new does not name it)"));
        if (what.best().notEmpty()) {
            parts.add("that "
                    + Phrases.count(
                            what.best().size(),
                            "window or door, or its frame, loses",
                            "windows or doors, or their frames, lose")
                    + " less than the best usual ones, U from "
                    + say(what.best().collectDouble(Unlikely::least).min(), Dimension.TRANSMITTANCE));
        }
        what.steps()
                .forEach(door -> parts.add("that the door \"" + door.name() + "\" has its sill "
                        + say(door.sill(), Dimension.LENGTH) + " over the floor"));
        what.large()
                .forEach(opening -> parts.add("that \"" + opening.name() + "\" is "
                        + say(opening.width(), Dimension.LENGTH) + " wide and "
                        + say(opening.height(), Dimension.LENGTH) + " high"));
        what.thin()
                .forEach(thin -> parts.add("that \"" + thin.surface().name() + "\", cut to falls, may have a U of "
                        + say(thin.transmittance(), Dimension.TRANSMITTANCE) + " where it is thinnest"));
        what.slim()
                .forEach(opening ->
                        parts.add("that the frame of \"" + opening.name() + "\", or the edge of its glass, is"
                                + " slimmer or loses less than usual ("
                                + opening.rating()
                                        .match(
                                                whole -> "",
                                                it -> say(it.frameWidth(), Dimension.THICKNESS) + ", "
                                                        + say(it.edge(), Dimension.LINEAR_TRANSMITTANCE))
                                + ")"));
        what.dark()
                .ifPresent(dark -> parts.add("that " + say(dark.windows(), Dimension.AREA) + " of windows light "
                        + say(dark.floor(), Dimension.AREA) + " of floor"));
        if (what.propped().notEmpty()) {
            parts.add("that what stays is held up while "
                    + Phrases.listed(what.propped().collect(wall -> "\"" + wall.name() + "\""))
                    + (what.propped().size() == 1 ? " is built" : " are built") + " new under it");
        }
        if (what.renewed().notEmpty()) {
            parts.add("that "
                    + Phrases.listed(what.renewed().collect(assembly -> "\"" + assembly.name() + "\""))
                    + (what.renewed().size() == 1 ? " is built" : " are built")
                    + " new, though of an old house's material (no retrofit is said)");
        }
        what.removed()
                .forEach(each -> parts.add("that of \"" + each.found().name() + "\" "
                        + Phrases.listed(each.layers()
                                .collect(layer -> say(layer.thickness(), Dimension.THICKNESS) + " of "
                                        + layer.material().name()))
                        + " come off"));
        what.warmed().forEach(base -> {
            base.crawlSpace()
                    .ifPresent(space -> parts.add("that the crawl space's walls have a U of "
                            + say(space.wallTransmittance(), Dimension.TRANSMITTANCE)
                            + ", and what insulates its ground an R of "
                            + say(space.groundResistance(), Dimension.RESISTANCE)));
            base.edge()
                    .ifPresent(edge -> parts.add("that " + say(edge.thickness(), Dimension.THICKNESS)
                            + " of board along a slab's edge reach " + say(edge.extent(), Dimension.LENGTH)));
        });
        what.thinFloor()
                .ifPresent(floor ->
                        parts.add("that a floor between two storeys is " + say(floor, Dimension.THICKNESS) + " thick"));
        what.parapet()
                .ifPresent(height -> parts.add("that a parapet " + say(height, Dimension.LENGTH)
                        + " high stands in the wind on what its seam is made of"));
        what.far().ifPresent(length -> parts.add("that the house is " + say(length, Dimension.LENGTH) + " long"));
        what.site().forEach(each -> parts.add("that " + said(each)));
        what.still()
                .forEach(material -> parts.add("that \"" + material.name() + "\" conducts "
                        + say(material.conductivity(), Dimension.CONDUCTIVITY)
                        + ", less than boards without a vacuum do"));
    }

    private String said(Unlikely.Weather what) {
        Site site = audit.house().site();
        return switch (what) {
            case DRY_ROOMS ->
                "the rooms have no more than " + say(site.indoorHumidity(), Dimension.SHARE) + " of humidity in winter";
            case MILD -> "it is no colder outdoors than " + say(site.outdoorTemperature(), Dimension.TEMPERATURE);
            case DRY_GROUND ->
                "the ground conducts " + say(site.groundConductivity(), Dimension.CONDUCTIVITY)
                        + ", less than clay or silt";
            case EVEN_YEAR -> "the months are all alike";
            case DRY_WINTER -> "the air of cold months is dry outdoors";
            case AIRED ->
                "the rooms are as dry as "
                        + (site.climate().orElseThrow().indoors() == Climate.Indoors.STORAGE
                                ? "a store's"
                                : "those of a house known to be well ventilated");
        };
    }

    /** What the verdict was measured by: a sentence or two. */
    public String measuredBy() {
        Limits limits = audit.house().limits();
        SurfaceLimits most = limits.surfaces();
        return "Measured by: every layer able by its material, and in each seam's drawing without a break; neck and"
                + " weakest path from " + say(limits.neckShare(), Dimension.SHARE) + " and "
                + say(limits.pathShare(), Dimension.SHARE)
                + ", psi up to " + say(limits.psi(), Dimension.LINEAR_TRANSMITTANCE) + ", "
                + units.number(limits.geometryPsi(), Dimension.LINEAR_TRANSMITTANCE)
                + " where geometry makes it larger, at openings "
                + units.number(limits.openingPsi(), Dimension.LINEAR_TRANSMITTANCE) + ", chi up to "
                + say(limits.chi(), Dimension.POINT_TRANSMITTANCE) + ", fRsi from "
                + say(limits.temperatureFactor(), Dimension.RATIO) + "; U up to "
                + Lists.immutable
                        .of(
                                u(most.wall()) + " (walls)",
                                u(most.roof()) + " (roofs)",
                                u(most.floor()) + " (floors)",
                                u(most.ground()) + " (ground)",
                                u(most.window()) + " (windows)",
                                u(most.door()) + " (doors)")
                        .makeString(", ")
                + " " + units.label(Dimension.TRANSMITTANCE) + byMonths() + "."
                + held().map(held -> " " + held).orElse("");
    }

    /** What more memory would make known better, a sentence; empty where nothing would. */
    public Optional<String> held() {
        HeldByMemory held = HeldByMemory.of(audit);
        if (held.sheets().isEmpty()) {
            return Optional.empty();
        }
        String all = "Held back by the memory or by --unknowns, "
                + Phrases.count(held.sheets().size(), "sheet is", "sheets are")
                + " solved less narrowly than asked (" + ids(held.sheets()) + ")";
        return Optional.of(
                held.undecided().isEmpty()
                        ? all + "; no limit lies within what that leaves open."
                        : all + "; whether " + Phrases.count(held.undecided().size(), "of them keeps", "of them keep")
                                + " a limit is open (" + ids(held.undecided()) + ").");
    }

    private static String ids(ImmutableList<Sheet> sheets) {
        return sheets.collect(Sheet::id).makeString(", ");
    }

    private String byMonths() {
        if (audit.house().site().climate().isEmpty()) {
            return "; mould by months and condensation not judged, since the house file gives no climate";
        }
        ImmutableList<String> unchecked = audit.assemblies()
                .select(row -> row.moisture().year().isEmpty())
                .collect(row -> "\"" + row.assembly().name() + "\"")
                .distinct();
        return "; mould and condensation (by diffusion alone) judged by months"
                + (unchecked.isEmpty() ? "" : ", condensation inside " + Phrases.listed(unchecked) + " not judged");
    }

    /** Why the heat-loss coefficient is a least value only; empty where it is known. */
    public Optional<String> unknown() {
        Unknown unknown = Unknown.of(audit);
        MutableList<String> parts = Lists.mutable.empty();
        if (unknown.length() > 0) {
            parts.add(say(unknown.length(), Dimension.LENGTH) + " of seams have no value");
        }
        if (unknown.points() > 0) {
            parts.add(Phrases.count(unknown.points(), "point has", "points have") + " no value");
        }
        if (unknown.holes().notEmpty()) {
            parts.add(Phrases.count(unknown.holes().size(), "surface is", "surfaces are") + " missing"
                    + (unknown.area() > 0 ? ", " + say(unknown.area(), Dimension.AREA) : ""));
        }
        if (unknown.touching().notEmpty()) {
            int pairs = (int) unknown.touching().sumOfInt(each -> each.pairs().size());
            parts.add(Phrases.count(pairs, "pair of seams touches", "pairs of seams touch")
                    + ": together they may lose " + say(unknown.below(), Dimension.HEAT_LOSS_COEFFICIENT)
                    + " less than the table has, and how much more is not known");
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.makeString("; "));
    }

    /** What the uncertainty of the inputs does to H_T, a phrase; empty where there are none. */
    public Optional<String> inputs() {
        InputUncertainty inputs = InputUncertainty.of(audit);
        if (inputs.inputs().isEmpty()) {
            return Optional.empty();
        }
        InputUncertainty.Input most = inputs.largestFirst().getFirst();
        boolean usual = inputs.inputs().noneSatisfy(InputUncertainty.Input::given);
        var range = inputs.range(audit.heatLoss().total());
        return Optional.of(units.number(range.lower(), Dimension.HEAT_LOSS_COEFFICIENT, 1) + " to "
                + units.number(range.upper(), Dimension.HEAT_LOSS_COEFFICIENT, 1) + " "
                + units.label(Dimension.HEAT_LOSS_COEFFICIENT) + " where each input may be off by "
                + say(InputUncertainty.USUAL, Dimension.SHARE)
                + (usual ? "" : ", or as its material says,") + ground(inputs) + " by itself; most of it by \""
                + UncertaintyWords.name(most, inputs, units)
                + "\", "
                + say(inputs.share(most), Dimension.SHARE));
    }

    private String ground(InputUncertainty inputs) {
        return inputs.ofTheGround()
                .map(within -> " (the ground's conductivity by " + say(within, Dimension.SHARE) + ")")
                .orElse("");
    }

    /** H_T, with "at least" and "not known" where something is missing. */
    public String total() {
        var total = audit.heatLoss().total();
        // A least value is rounded down.
        double least = Math.floor(10 * (total.lower() - Unknown.of(audit).below())) / 10;
        return unknown().isPresent()
                ? "at least " + units.readable(least, least, Dimension.HEAT_LOSS_COEFFICIENT) + ", not known"
                : new Print(units).of(total, Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private String u(double transmittance) {
        return units.number(transmittance, Dimension.TRANSMITTANCE);
    }

    private String say(double value, Dimension dimension) {
        return units.format(value, dimension);
    }

    private static String word(Assumed.Limit limit) {
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
