package coldseam.junctions.hand;

import coldseam.assemblies.EquivalentLayer;
import coldseam.envelope.KindForm.Second;
import coldseam.envelope.Role;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.hand.HandLegs.Sheet;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.FloatingStructure;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What sets a drawing by hand apart from the house that chooses it: its psi is what is left of its coupling when its own legs
 * are taken off, and means nothing beside surfaces of other layers.
 */
final class HandMisfits {

    /** Of U and of a conductivity: what rounding to two digits does. */
    private static final double SHARE = 0.03;

    /** m, of a layer's thickness; membranes may be drawn or not. */
    private static final double THICKNESS = 0.002;

    /** m; what is no thicker may be left out of a drawing. */
    private static final double MEMBRANE = 0.005;

    private static final double FACTOR = 0.01;

    /** Degrees. */
    private static final double ANGLE = 1;

    private HandMisfits() {}

    /** Why a drawing does not stand for a setup, in plain words; empty where it does. */
    static ImmutableList<Phrase> of(DrawnSection drawn, ImmutableList<Composition.Face> faces, JunctionSetup setup) {
        FileDrawnSection.FileJunction junction = drawn.file().junction().orElseThrow();
        MutableList<Phrase> reasons = Lists.mutable.empty();
        if (junction.kind() != setup.kind()) {
            return Lists.immutable.of(Phrase.of("it is for: " + junction.kind().label() + "; the junction is: "
                    + setup.kind().label()));
        }
        HandLegs drawing = new HandLegs(drawn, faces);
        FileDrawnSection.FileLeg first = junction.legs().getFirst();
        FileDrawnSection.FileLeg second = junction.legs().getLast();
        Band band = Band.of(setup.kind(), 0, setup.first(), setup.firstExposure());
        band(drawing, first, band, ground(setup, band), reasons);
        Second other = setup.kind().form().second();
        if (other == Second.SURFACE) {
            setup.second()
                    .map(each -> Band.of(setup.kind(), 1, each, setup.secondExposure()))
                    .ifPresent(each -> band(drawing, second, each, each.transmittance(), reasons));
            if (!(Math.abs(drawing.angle() - setup.angle()) <= ANGLE)) {
                reasons.add(Phrase.of(Format.of("its legs meet at %.0f°, ", drawing.angle())
                        + Format.of("the house's surfaces at %.0f°", setup.angle())));
            } else if (setup.upstand() > 0 && nothingStands(drawing.beyond(first), faces, setup)) {
                reasons.add(Phrase.of("it draws no parapet, and one of ")
                        .andMillimetres(setup.upstand())
                        .and(" stands there"));
            }
        } else if (other == Second.THING) {
            band(drawing, second, band, ground(setup, band), reasons);
        } else {
            setup.opening().ifPresent(opening -> transmittance(second, opening.frameTransmittance(), reasons));
        }
        return reasons.toImmutable();
    }

    /** Whether nothing that could be a parapet reaches beyond the roof: what is as solid as the wall's structure, and as high. */
    private static boolean nothingStands(
            HandLegs.Beyond roof, ImmutableList<Composition.Face> faces, JunctionSetup setup) {
        ImmutableList<Band.Stratum> structure = setup.second()
                .map(wall ->
                        Band.of(setup.kind(), 1, wall, setup.secondExposure()).strata())
                .orElse(Lists.immutable.empty())
                .select(each -> each.role() == Role.STRUCTURE);
        double high = FloatingStructure.HIGH * setup.upstand();
        return faces.select(face -> !face.insulates()
                        || structure.anySatisfy(each -> same(face.conductivity(), each.conductivity())))
                .collect(face -> roof.of(face.area()))
                .noneSatisfy(above -> roof.height(above) >= high && above.getArea() > FloatingStructure.PARAPET * high);
    }

    private static double ground(JunctionSetup setup, Band band) {
        return setup.kind().form().ground()
                ? setup.ground()
                        .map(each -> each.transmittance(band.resistance()))
                        .orElse(band.transmittance())
                : band.transmittance();
    }

    private static void band(
            HandLegs drawing,
            FileDrawnSection.FileLeg leg,
            Band band,
            double transmittance,
            MutableList<Phrase> reasons) {
        transmittance(leg, transmittance, reasons);
        if (!(Math.abs(leg.factor() - band.exposure().factor()) <= FACTOR)) {
            reasons.add(Phrase.of(said(leg)
                    + Format.of(" faces a temperature factor of %.2f, ", leg.factor())
                    + Format.of(
                            "the house's surface one of %.2f", band.exposure().factor())));
        }
        ImmutableList<Sheet> has = thick(drawing.sheets(leg));
        ImmutableList<Sheet> needs = thick(layers(band));
        if (!same(has, needs) && !same(has, thick(built(band, false))) && !same(has, thick(built(band, true)))) {
            reasons.add(Phrase.of(said(leg) + " is drawn of ")
                    .and(said(has))
                    .and("; the house's layers are ")
                    .and(said(needs)));
        }
    }

    private static void transmittance(FileDrawnSection.FileLeg leg, double house, MutableList<Phrase> reasons) {
        if (!(Math.abs(leg.transmittance() / house - 1) <= SHARE)) {
            reasons.add(Phrase.of(said(leg) + " has U ")
                    .and(u(leg.transmittance()))
                    .and(", the house's ")
                    .and(u(house)));
        }
    }

    /** What is solved of a band, from the inside; like layers that touch are one. */
    private static ImmutableList<Sheet> layers(Band band) {
        MutableList<Sheet> sheets = Lists.mutable.empty();
        for (Band.Stratum stratum : band.strata().select(Band.Stratum::solved)) {
            double thickness = stratum.solvedOutside() - stratum.solvedInside();
            boolean like = sheets.notEmpty() && same(sheets.getLast().conductivity(), stratum.conductivity());
            double before = like ? sheets.remove(sheets.size() - 1).thickness() : 0;
            sheets.add(new Sheet(before + thickness, stratum.conductivity()));
        }
        return sheets.toImmutable();
    }

    /** The layers as they are built: their membranes left out, or drawn as thick as they are. */
    private static ImmutableList<Sheet> built(Band band, boolean membranes) {
        return band.strata()
                .select(each -> each.solved() || membranes && each.layer().part() == EquivalentLayer.Part.NEGLIGIBLE)
                .collect(
                        each -> new Sheet(each.layer().thickness(), each.layer().conductivity()));
    }

    private static ImmutableList<Sheet> thick(ImmutableList<Sheet> sheets) {
        return sheets.select(sheet -> sheet.thickness() > MEMBRANE);
    }

    private static boolean same(ImmutableList<Sheet> some, ImmutableList<Sheet> others) {
        return some.size() == others.size() && some.zip(others).allSatisfy(pair -> same(pair.getOne(), pair.getTwo()));
    }

    private static boolean same(Sheet one, Sheet other) {
        return Math.abs(one.thickness() - other.thickness()) <= THICKNESS
                && same(one.conductivity(), other.conductivity());
    }

    private static boolean same(double one, double other) {
        return Math.abs(one / other - 1) <= SHARE;
    }

    private static String said(FileDrawnSection.FileLeg leg) {
        return "its leg \"" + leg.name() + "\"";
    }

    private static Phrase said(ImmutableList<Sheet> sheets) {
        Phrase all = Phrase.of("");
        for (Sheet sheet : sheets) {
            all = all.and(all.isEmpty() ? "" : ", ")
                    .andMillimetres(sheet.thickness())
                    .and(" of ")
                    .and(Format.of("%.3g W/(m·K)", sheet.conductivity()), sheet.conductivity(), Dimension.CONDUCTIVITY);
        }
        return all;
    }

    private static Phrase u(double transmittance) {
        return Phrase.of(Format.of("%.3f W/(m²·K)", transmittance), transmittance, Dimension.TRANSMITTANCE);
    }
}
