package coldseam.report.pages;

import coldseam.assemblies.InterfaceTemperatures;
import coldseam.assemblies.LayerResistance;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.AssemblyRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Opening;
import coldseam.envelope.Role;
import coldseam.envelope.Site;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Table;
import coldseam.report.section.Looks;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Every assembly that is used: its layers, its transmittance and how cold each layer gets. */
public final class Assemblies {

    /** Differences of resistances below this, m²·K/W, are round-off. */
    private static final double SAME = 1e-9;

    private Assemblies() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Site site = page.audit().house().site();
        flow.section("Assemblies");
        flow.body(
                "Layers from inside to outside. U by ISO 6946; a bridged layer shows the resistance of what lies between the"
                        + " members. θ is the temperature at the outer face of each row at "
                        + page.print().of(site.indoorTemperature(), Dimension.TEMPERATURE) + " indoors and "
                        + page.print().of(site.outdoorTemperature(), Dimension.TEMPERATURE)
                        + " outdoors: an estimate in one dimension, between the members, far from every junction, tapered"
                        + " layers at their thinnest; given where the assembly meets outdoor air.");
        for (AssemblyRow row : page.audit().assemblies()) {
            write(page, row);
        }
        windows(page);
    }

    /** One whose U is made of one pane and one frame. */
    private record Window(Opening opening, WindowTransmittance parts) {

        static ImmutableList<Window> of(Opening opening) {
            return Lists.immutable.fromStream(
                    WindowTransmittance.of(opening).stream().map(parts -> new Window(opening, parts)));
        }

        WindowTransmittance.Pane pane() {
            return parts.panes().getOnly();
        }

        WindowTransmittance.Frame frame() {
            return parts.frames().getOnly();
        }
    }

    /** How U of the windows came about that are described by their parts; none, and the block is left out. */
    private static void windows(Page page) {
        ImmutableList<Window> described = page.audit().house().openings().flatCollect(Window::of);
        if (described.isEmpty()) {
            return;
        }
        Print print = page.print();
        String u = print.head("", Dimension.TRANSMITTANCE);
        String area = print.head("area", Dimension.AREA);
        Table table = Listing.<Window>empty()
                .share("window or door", 1, window -> window.opening().name())
                .number("U" + u, 74, window -> print.number(window.parts().transmittance(), Dimension.TRANSMITTANCE))
                .number("glass" + u, 74, window -> print.number(window.pane().transmittance(), Dimension.TRANSMITTANCE))
                .number(area, 44, window -> print.units().number(window.pane().area(), Dimension.AREA, 2))
                .number(
                        "frame" + u,
                        74,
                        window -> print.number(window.frame().transmittance(), Dimension.TRANSMITTANCE))
                .number(area, 44, window -> print.units().number(window.frame().area(), Dimension.AREA, 2))
                .number(
                        "psi of the edge",
                        74,
                        window -> print.number(window.pane().edge(), Dimension.LINEAR_TRANSMITTANCE))
                .number(
                        print.head("edge", Dimension.LENGTH),
                        44,
                        window -> print.number(window.pane().perimeter(), Dimension.LENGTH))
                .of(described);
        page.flow().need(Blocks.table(table).height(page.flow().width()) + 50);
        page.flow().heading("Windows by glass, frame and spacer");
        page.flow().add(table);
        page.flow().space(3);
        boolean kinds = described.anySatisfy(window -> window.opening()
                .rating()
                .match(declared -> false, glazed -> glazed.spacer().isPresent()));
        page.flow()
                .small("U is the sum of glass, frame and edge over the whole area (ISO 10077-1); psi of the edge in "
                        + print.units().label(Dimension.LINEAR_TRANSMITTANCE)
                        + (kinds
                                ? ". Where the house file names a kind of spacer, psi is that of ISO 10077-1 for"
                                        + " coated glass in a frame of wood or plastic (from memory); use the"
                                        + " declared value where there is one."
                                : "."));
    }

    private static void write(Page page, AssemblyRow row) {
        Print print = page.print();
        Transmittance build = row.build();
        Table table = Table.of(
                Table.Column.fixed("", 34),
                Table.Column.share("layer", 1),
                Table.Column.share("controls", 0.4),
                Table.Column.number("thickness", 62),
                Table.Column.number(print.head("λ", Dimension.CONDUCTIVITY), print.units() == UnitSystem.SI ? 60 : 84),
                Table.Column.number(print.head("R", Dimension.RESISTANCE), 74),
                Table.Column.number(print.head("θ", Dimension.TEMPERATURE), 44));
        ImmutableList<String> temperatures = temperatures(page, build);
        table = table.row(
                Table.Kind.PLAIN,
                surface("inner surface", build.interiorSurfaceResistance(), temperatures.getFirst(), print));
        for (int i = 0; i < row.assembly().layers().size(); i++) {
            table = table.with(layer(row.assembly().layers().get(i), i, build, temperatures.get(i + 1), print));
        }
        table = table.row(
                Table.Kind.PLAIN,
                surface("outer surface", build.exteriorSurfaceResistance(), temperatures.getLast(), print));
        table = table.row(
                Table.Kind.SUBTOTAL,
                Table.Cell.of(""),
                Table.Cell.of("U " + print.of(row.transmittance(), Dimension.TRANSMITTANCE)),
                Table.Cell.of(""),
                Table.Cell.of(print.of(row.assembly().thickness(), Dimension.THICKNESS)),
                Table.Cell.of(""),
                Table.Cell.of(print.number(build.total(), Dimension.RESISTANCE)),
                Table.Cell.of(""));
        page.flow().need(Blocks.table(table).height(page.flow().width()) + 50);
        page.flow().heading(Phrases.capital(row.assembly().name()) + ", heat flow " + Words.word(build.direction()));
        page.flow().add(table);
        page.flow().space(3);
        page.flow().small(words(row, print));
    }

    /** At the outer face of the inner surface's film, of each layer, and outdoors; a dash where none can be said. */
    private static ImmutableList<String> temperatures(Page page, Transmittance build) {
        Site site = page.audit().house().site();
        boolean outdoors = build.outerSurface() == OuterSurface.OUTDOORS;
        MutableList<String> out = Lists.mutable.empty();
        if (outdoors) {
            InterfaceTemperatures.of(build, site.indoorTemperature(), site.outdoorTemperature())
                    .interfaces()
                    .forEach(each -> out.add(page.print().number(each.temperature(), Dimension.TEMPERATURE)));
        }
        while (out.size() <= build.layers().size()) {
            out.add("–");
        }
        out.add(outdoors ? page.print().number(site.outdoorTemperature(), Dimension.TEMPERATURE) : "–");
        return out.toImmutable();
    }

    private static Table.Cell[] surface(String name, double resistance, String temperature, Print print) {
        return new Table.Cell[] {
            Table.Cell.of(""),
            Table.Cell.of(Rich.of(name).with(Palette.SLATE)),
            Table.Cell.of(""),
            Table.Cell.of(""),
            Table.Cell.of(""),
            Table.Cell.of(print.number(resistance, Dimension.RESISTANCE)),
            Table.Cell.of(temperature)
        };
    }

    private static Table.Row layer(Layer layer, int index, Transmittance build, String temperature, Print print) {
        boolean solid = layer.role() != Role.AIR_LAYER && layer.role() != Role.MEMBRANE;
        LayerResistance counted = build.layers().get(index);
        String resistance =
                counted.counted() == 0 ? "not counted" : print.number(counted.resistance(), Dimension.RESISTANCE);
        return new Table.Row(
                Table.Kind.PLAIN,
                Lists.immutable.of(
                        Swatch.look(Looks.of(layer.material(), layer.role())),
                        Table.Cell.of(name(layer, print)),
                        Table.Cell.of(controls(layer)),
                        Table.Cell.of(print.of(layer.thickness(), Dimension.THICKNESS)),
                        Table.Cell.of(
                                solid ? print.number(layer.material().conductivity(), Dimension.CONDUCTIVITY) : "–"),
                        Table.Cell.of(resistance),
                        Table.Cell.of(temperature)));
    }

    private static Rich words(AssemblyRow row, Print print) {
        Rich out = Rich.of(print.of(row.area(), Dimension.AREA) + " of it, openings taken off.");
        Transmittance t = row.build();
        if (t.taper().isPresent()) {
            out = out.plus(
                    " U is the mean over the falls, and the R beside it 1/U; the layers' R above are those where it is"
                            + " thinnest, so they add up to less.");
        }
        if (t.upperLimit() - t.lowerLimit() > SAME) {
            out = out.plus(Rich.marked(" Upper limit R′_{T} "))
                    .plus(print.of(t.upperLimit(), Dimension.RESISTANCE))
                    .plus(Rich.marked(", lower limit R″_{T} "))
                    .plus(print.of(t.lowerLimit(), Dimension.RESISTANCE) + "; their mean may be wrong by "
                            + Format.of("%.1f %%", 100 * t.relativeError()) + " at most.");
        }
        if (t.corrections().sum() > 0) {
            out = out.plus(" Corrections: " + corrections(row.assembly(), t.corrections(), print)
                    + (t.corrections().applied() ? "; added to U." : "; below 3 % of U together, so left out."));
        }
        if (t.outerSurface() == OuterSurface.GROUND) {
            out = out.plus(
                    " The ground is not in it; what is lost through both follows by ISO 13370, under Heat loss.");
        }
        for (Transmittance.Warning warning : t.warnings()) {
            out = out.plus(Rich.of(" Caution: " + warning.text()).with(Palette.EMBER));
        }
        return out;
    }

    private static Rich name(Layer layer, Print print) {
        Rich out = Rich.of(layer.material().name());
        if (layer.framing().isPresent()) {
            out = out.plus(
                    ", " + new Phrases(print.units()).framing(layer.framing().get()));
        }
        if (layer.taper().isPresent()) {
            out = out.plus(", to falls, at most " + print.of(layer.taper().get().thickest(), Dimension.THICKNESS));
        }
        return out;
    }

    private static String corrections(Assembly assembly, Transmittance.Corrections corrections, Print print) {
        MutableList<String> out = Lists.mutable.empty();
        if (corrections.gaps() > 0) {
            out.add("gaps " + print.of(corrections.gaps(), Dimension.TRANSMITTANCE) + " (level "
                    + Words.word(assembly.gaps()) + ")");
        }
        if (corrections.fasteners() > 0) {
            out.add("fasteners " + print.of(corrections.fasteners(), Dimension.TRANSMITTANCE)
                    + assembly.fasteners()
                            .map(each -> " (" + fasteners(each, print) + ")")
                            .orElse(""));
        }
        if (corrections.rain() > 0) {
            out.add("rain " + print.of(corrections.rain(), Dimension.TRANSMITTANCE)
                    + assembly.rain()
                            .map(each -> " (" + print.of(each.precipitation(), Dimension.PRECIPITATION) + ", f·x "
                                    + print.of(each.factor(), Dimension.RAIN_FACTOR) + ")")
                            .orElse(""));
        }
        return out.makeString(", ");
    }

    private static String fasteners(Assembly.Fasteners fasteners, Print print) {
        return print.of(fasteners.perSquareMetre(), Dimension.PER_AREA) + " of "
                + fasteners.material().name() + ", "
                + print.of(fasteners.diameter(), Dimension.THICKNESS) + " thick"
                + (fasteners.recess() > 0
                        ? ", heads " + print.of(fasteners.recess(), Dimension.THICKNESS) + " deep in the insulation"
                        : "");
    }

    private static String controls(Layer layer) {
        return layer.controls().toSortedList().collect(Words::word).makeString(", ");
    }
}
