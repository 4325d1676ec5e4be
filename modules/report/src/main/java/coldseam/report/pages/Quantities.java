package coldseam.report.pages;

import coldseam.assemblies.TaperedLayers;
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
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import java.util.Optional;
import org.eclipse.collections.api.block.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What the house is built of and how much of it: layers by their area, seams by their length, windows and doors by their size. */
public final class Quantities {

    /**
     * A layer, or the members in it, of one surface.
     *
     * @param material by its name
     * @param thickness m; on average where it is cut to falls
     * @param area m² that it covers
     * @param assembly that it is of
     */
    private record Part(String material, double thickness, double area, String assembly) {}

    /** m. */
    private static final double THINNEST_BY_VOLUME = 0.0095;

    private Quantities() {}

    /** Sets the section. */
    public static void write(Page page) {
        Audit audit = page.audit();
        Flow flow = page.flow();
        Print print = page.print();
        flow.section("Materials and quantities");
        boolean old = audit.house().retrofit().isPresent();
        flow.body("Net, by the outer faces of the house, openings taken off, rounded: nothing is added for waste, laps"
                + " and offcuts, and what lies inside needs a little less. "
                + (old
                        ? "What carries and stays is left out, and so are layers that are said to be there already. "
                        : "")
                + "Members between fill are by their share. Fasteners, tapes and sealants are not counted.");
        flow.heading("Layers");
        ImmutableList<Part> parts = audit.shell().surfaces().flatCollect(surface -> parts(audit, surface));
        flow.add(Listing.<ImmutableList<Part>>empty()
                .share("material", 0.5, like -> like.getFirst().material())
                .number("thickness", 62, like -> print.of(like.getFirst().thickness(), Dimension.THICKNESS))
                .number(print.head("area", Dimension.AREA), 52, like -> amount(area(like), Dimension.AREA, print))
                .number(print.head("volume", Dimension.VOLUME), 60, like -> volume(like, print))
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
                        sheet -> amount(sheet.size(), Dimension.LENGTH, print))
                .of(audit.sheets().collect(sheet -> sheet)));
        flow.space(3);
        flow.small("What a seam takes beside the layers (blocks, strips, flashings) stands on its sheet.");
        ImmutableList<Opening> openings = audit.house().openings();
        if (openings.notEmpty()) {
            Table table = Listing.<ImmutableList<Opening>>empty()
                    .number("number", 50, like -> "" + like.size())
                    .fixed("kind", 60, like -> Words.word(like.getFirst().kind()))
                    .number("width", 62, like -> print.length(like.getFirst().width()))
                    .number("height", 62, like -> print.length(like.getFirst().height()))
                    .share("which", 1, like -> like.collect(Opening::name).makeString(", "))
                    .of(alike(openings, one -> Lists.immutable.of(one.kind(), one.width(), one.height())));
            flow.heading("Windows and doors");
            flow.add(table);
        }
    }

    /** To what is ordered: whole numbers, below ten tenths. */
    private static String amount(double inside, Dimension dimension, Print print) {
        return print.units().number(inside, dimension, print.units().value(inside, dimension) < 10 ? 1 : 0);
    }

    /** Of what comes by volume; sheets, foils and coats of a few millimetres come by their area. */
    private static String volume(ImmutableList<Part> like, Print print) {
        double thickness = like.getFirst().thickness();
        return thickness < THINNEST_BY_VOLUME ? "–" : amount(area(like) * thickness, Dimension.VOLUME, print);
    }

    private static double area(ImmutableList<Part> parts) {
        return parts.sumOfDouble(Part::area);
    }

    private static ImmutableList<ImmutableList<Part>> alike(ImmutableList<Part> parts) {
        return alike(parts, part -> Lists.immutable.of(part.material(), part.thickness()));
    }

    /** What is alike together, in the order in which each first comes. */
    private static <T> ImmutableList<ImmutableList<T>> alike(ImmutableList<T> all, Function<T, Object> by) {
        return all.distinctBy(by)
                .collect(first -> all.select(one -> by.valueOf(one).equals(by.valueOf(first))));
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
        String falls = layer.taper().isPresent() ? ", to falls, mean" : "";
        Part fill = new Part(
                layer.material().name() + falls,
                TaperedLayers.meanThickness(layer),
                area * (1 - share),
                assembly.name());
        ImmutableList<Part> members = Lists.immutable
                .fromStream(layer.framing().stream())
                .reject(framing -> stays && layer.role() == Role.STRUCTURE)
                .collect(framing ->
                        new Part(framing.material().name(), layer.thickness(), area * share, assembly.name()));
        return Lists.immutable.of(fill).newWithAll(members);
    }
}
