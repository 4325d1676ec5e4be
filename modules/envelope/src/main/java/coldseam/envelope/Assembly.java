package coldseam.envelope;

import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A build-up of layers.
 *
 * @param name unique in its house
 * @param layers inside → outside, at least one
 * @param fasteners that pierce the insulation
 * @param gaps in and around the insulation
 * @param rain cooling by rain between the insulation and the membrane of an inverted roof
 */
public record Assembly(
        String name, ImmutableList<Layer> layers, Optional<Fasteners> fasteners, AirGaps gaps, Optional<Rain> rain) {

    /**
     * Mechanical fasteners through the insulation.
     *
     * @param material of the shaft
     * @param diameter m
     * @param perSquareMetre 1/m²
     * @param recess m, how far the head is sunk into the insulation; zero if it goes right through
     */
    public record Fasteners(Material material, double diameter, double perSquareMetre, double recess) {}

    /** Air gaps around boards: the correction levels of ISO 6946. */
    public enum AirGaps {
        /** No gap bridges the insulation, or boards in two staggered layers. */
        NONE,
        /** Gaps bridge the insulation, no air circulates. */
        BRIDGING,
        /** Gaps bridge and air circulates on the warm side. */
        CIRCULATING
    }

    /** Rain that reaches the membrane under the insulation of an inverted roof: mm/d, and f·x in W·d/(m²·K·mm). */
    @Noun("rain cooling")
    @Doc("Cooling by rain, ISO 6946.")
    public record Rain(
            @Doc("Mean in the heating season.")
            @Unit(Dimension.PRECIPITATION)
            @Bounds(atLeast = "0.2 mm/d", atMost = "50 mm/d", usual = "1 to 5 mm/d")
            double precipitation,

            @Doc("The factor f·x.")
            @Default("0.04 W·d/(m²·K·mm)")
            @Unit(Dimension.RAIN_FACTOR)
            @Bounds(atLeast = "0.005 W·d/(m²·K·mm)", atMost = "0.1 W·d/(m²·K·mm)", usual = "0.02 to 0.04 W·d/(m²·K·mm)")
            double factor) {}

    /** The same build-up under another name. */
    public Assembly named(String other) {
        return new Assembly(other, layers, fasteners, gaps, rain);
    }

    /** Whether one goes on as the other on site: layer by layer the same but for the lining, and for what they are named for. */
    public boolean isBuiltLike(Assembly other) {
        return layers.size() == other.layers.size()
                && layers.zip(other.layers).allSatisfy(pair -> pair.getOne().isBuiltLike(pair.getTwo()));
    }

    /** What its layers are of, inside → outside, each with its members behind it. */
    public ImmutableList<Material> materials() {
        return layers.flatCollect(layer -> Lists.immutable
                .of(layer.material())
                .newWithAll(
                        layer.framing().map(Layer.Framing::material).stream().toList()));
    }

    /** Sum of the layers' thicknesses, m. */
    public double thickness() {
        return layers.sumOfDouble(Layer::thickness);
    }

    /**
     * Whether rain is kept out behind the boards, on what carries: all that insulates outside the outermost layer that keeps
     * out water bears rain, and drains to an air layer behind the cladding.
     */
    public boolean keepsWaterOutBehindBoards() {
        int kept = layers.detectLastIndex(layer ->
                layer.controls().contains(Control.WATER) && layer.material().canControl(Control.WATER));
        int boards = layers.detectLastIndex(Layer::insulates);
        return kept >= 0
                && boards > kept
                && layers.drop(kept + 1)
                        .select(Layer::insulates)
                        .allSatisfy(layer -> layer.material().canBear(Duty.RAIN))
                && layers.drop(boards + 1).anySatisfy(Layer::drains);
    }

    /** The layers inside a well-ventilated air layer; all where there is none. */
    public ImmutableList<Layer> insideVentilation() {
        return layers.takeWhile(layer -> !layer.isWellVentilated());
    }

    /**
     * What fasteners hold and gaps bridge, as ISO 6946 annex F counts it: the continuous insulation by its role; where no layer has
     * that role, whatever insulates. Only what lies inside a well-ventilated air layer.
     */
    public ImmutableList<Layer> pierced() {
        ImmutableList<Layer> counted =
                insideVentilation().reject(layer -> layer.air().isPresent());
        ImmutableList<Layer> byRole = counted.select(layer -> layer.role() == Role.INSULATION);
        return byRole.notEmpty() ? byRole : counted.select(Layer::insulates);
    }

    /** A layer that holds a vacuum in the way of fasteners; not where they may hold insulation beyond what carries instead. */
    public Optional<Layer> vacuumPierced() {
        ImmutableList<Layer> pierced = pierced();
        return pierced.detectOptional(panel -> panel.material().holdsVacuum()
                && pierced.allSatisfy(each -> each.material().holdsVacuum() || !partedByStructure(panel, each)));
    }

    private boolean partedByStructure(Layer one, Layer other) {
        int a = layers.indexOf(one);
        int b = layers.indexOf(other);
        return layers.subList(Math.min(a, b), Math.max(a, b)).anySatisfy(layer -> layer.role() == Role.STRUCTURE);
    }

    /** Whether a layer that is named for heat can hold it: its material insulates, and no outdoor air gets behind it. */
    public boolean holdsHeat() {
        return insideVentilation().anySatisfy(layer -> layer.controls().contains(Control.HEAT) && layer.insulates());
    }

    /** Whether all that insulates it lies inside its structure: whatever meets it indoors then cuts the insulation. */
    public boolean insulatedInside() {
        int outermost = layers.detectLastIndex(Layer::insulates);
        return outermost >= 0 && outermost < layers.detectIndex(layer -> layer.role() == Role.STRUCTURE);
    }

    /** The layers that carry. */
    public ImmutableList<Layer> structure() {
        return layers.select(layer -> layer.role() == Role.STRUCTURE);
    }

    /** What carries in it, and is not there still in what is planned in its place. */
    public ImmutableList<Layer> structureGoneFrom(Assembly planned) {
        return structure().reject(layer -> planned.structure().anySatisfy(layer::carriesOnIn));
    }

    /** The layers outside of all that carries; none where nothing does. */
    public ImmutableList<Layer> outsideStructure() {
        int carries = layers.detectLastIndex(layer -> layer.role() == Role.STRUCTURE);
        return layers.drop(carries < 0 ? layers.size() : carries + 1);
    }

    /** Whether some layer is named for this control. */
    public boolean controls(Control control) {
        return layers.anySatisfy(layer -> layer.controls().contains(control));
    }
}
