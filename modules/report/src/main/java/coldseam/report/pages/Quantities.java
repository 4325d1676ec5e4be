package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Opening;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Role;
import coldseam.envelope.shell.Surface;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What the house is built of and how much of it: layers by their area, seams by their length, windows and doors by their size. */
public final class Quantities {

    /**
     * A layer, or the members in it, of one surface.
     *
     * @param material by its name
     * @param thickness m
     * @param area m² that it covers
     * @param assembly that it is of
     */
    private record Part(String material, double thickness, double area, String assembly) {

        boolean isLike(Part other) {
            return material.equals(other.material) && thickness == other.thickness;
        }
    }

    private Quantities() {}

    /** Sets the section. */
    public static void write(Page page) {
        Audit audit = page.audit();
        Flow flow = page.flow();
        Print print = page.print();
        flow.section("Materials and quantities");
        boolean old = audit.house().retrofit().isPresent();
        flow.body("Net, by the outer faces of the house, openings taken off: nothing is added for waste, laps and"
                + " offcuts, and what lies inside needs a little less. "
                + (old
                        ? "What carries and stays is left out, and so are layers that are said to be there already. "
                        : "")
                + "Members between fill are by their share. Fasteners, tapes and sealants are not counted.");
        flow.heading("Layers");
        ImmutableList<Part> parts = audit.shell().surfaces().flatCollect(surface -> parts(audit, surface));
        flow.add(Listing.<ImmutableList<Part>>empty()
                .share("material", 0.5, like -> like.getFirst().material())
                .number("thickness", 62, like -> print.of(like.getFirst().thickness(), Dimension.THICKNESS))
                .number(print.head("area", Dimension.AREA), 52, like -> print.number(area(like), Dimension.AREA))
                .number(
                        print.head("volume", Dimension.VOLUME),
                        60,
                        like -> print.number(area(like) * like.getFirst().thickness(), Dimension.VOLUME))
                .share(
                        "in",
                        0.5,
                        like -> like.collect(Part::assembly).distinct().makeString(", "))
                .of(alike(parts)));
        flow.heading("Seams");
        flow.add(Listing.<BridgeSheet<?>>empty()
                .fixed("sheet", 32, BridgeSheet::id)
                .share("seam", 0.4, sheet -> Phrases.capital(sheet.kind()))
                .share("built as", 0.6, sheet -> sheet.result().detail().name())
                .number(
                        print.head("length", Dimension.LENGTH),
                        60,
                        sheet -> print.units().number(sheet.size(), Dimension.LENGTH, 2))
                .of(audit.sheets().collect(sheet -> sheet)));
        flow.space(3);
        flow.small("What a seam takes beside the layers (blocks, strips, flashings) stands on its sheet.");
        ImmutableList<Opening> openings = audit.house().openings();
        if (openings.notEmpty()) {
            flow.heading("Windows and doors");
            flow.add(Listing.<Opening>empty()
                    .share("name", 1, Opening::name)
                    .fixed("kind", 60, opening -> Words.word(opening.kind()))
                    .number(
                            print.head("width", Dimension.LENGTH),
                            62,
                            opening -> print.units().number(opening.width(), Dimension.LENGTH, 2))
                    .number(
                            print.head("height", Dimension.LENGTH),
                            62,
                            opening -> print.units().number(opening.height(), Dimension.LENGTH, 2))
                    .of(openings));
        }
    }

    private static double area(ImmutableList<Part> parts) {
        return parts.sumOfDouble(Part::area);
    }

    /** Parts of one material and thickness together, in the order in which each first comes. */
    private static ImmutableList<ImmutableList<Part>> alike(ImmutableList<Part> parts) {
        return parts.distinctBy(part -> Lists.immutable.of(part.material(), part.thickness()))
                .collect(first -> parts.select(first::isLike));
    }

    /** The layers of a surface that are brought there. */
    private static ImmutableList<Part> parts(Audit audit, Surface surface) {
        Optional<Retrofit> old = audit.house().retrofit();
        boolean stays = old.filter(surface::staysIn).isPresent();
        double area = surface.externalArea() - surface.openingArea();
        return Lists.immutable
                .fromStream(surface.assembly().stream())
                .flatCollect(assembly -> assembly.layers()
                        .reject(layer -> layer.air().isPresent() || stays && isThere(layer, assembly, old))
                        .flatCollect(layer -> parts(layer, assembly, area, stays)));
    }

    /** Whether it carries without fill between members, or is a layer of the build-up as found. */
    private static boolean isThere(Layer layer, Assembly assembly, Optional<Retrofit> old) {
        return layer.role() == Role.STRUCTURE && layer.framing().isEmpty()
                || old.flatMap(Retrofit::found)
                        .flatMap(found -> Optional.ofNullable(found.assemblies().get(assembly.name())))
                        .filter(was -> was.layers()
                                .anySatisfy(there -> there.material()
                                                .name()
                                                .equals(layer.material().name())
                                        && there.thickness() == layer.thickness()))
                        .isPresent();
    }

    /** A layer, and its members but where those stay. */
    private static ImmutableList<Part> parts(Layer layer, Assembly assembly, double area, boolean stays) {
        double share = layer.framing().map(Layer.Framing::share).orElse(0.0);
        Part fill = new Part(layer.material().name(), layer.thickness(), area * (1 - share), assembly.name());
        ImmutableList<Part> members = Lists.immutable
                .fromStream(layer.framing().stream())
                .reject(framing -> stays && layer.role() == Role.STRUCTURE)
                .collect(framing ->
                        new Part(framing.material().name(), layer.thickness(), area * share, assembly.name()));
        return Lists.immutable.of(fill).newWithAll(members);
    }
}
