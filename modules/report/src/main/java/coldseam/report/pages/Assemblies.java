package coldseam.report.pages;

import coldseam.audit.AssemblyRow;
import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.quantity.Dimension;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.section.Looks;
import java.util.Locale;

/** Every assembly that is used: its layers and its transmittance. */
public final class Assemblies {

    private Assemblies() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        flow.section("Assemblies");
        flow.add(Blocks.text(
                "Layers from inside to outside. U by ISO 6946; a bridged layer shows the resistance of what lies between the"
                        + " members.",
                Style.BODY));
        for (AssemblyRow row : page.audit().assemblies()) {
            write(page, row);
        }
    }

    private static void write(Page page, AssemblyRow row) {
        Print print = page.print();
        page.flow().heading(Print.capital(row.assembly().name()));
        Table table = Table.of(
                Table.Column.fixed("", 34),
                Table.Column.share("layer", 1),
                Table.Column.share("controls", 0.5),
                Table.Column.number("thickness", 62),
                Table.Column.number("λ, " + print.units().label(Dimension.CONDUCTIVITY), 70),
                Table.Column.number("R, " + print.units().label(Dimension.RESISTANCE), 70));
        for (Layer layer : row.assembly().layers()) {
            boolean plain = layer.role() != Role.AIR_LAYER && layer.role() != Role.MEMBRANE;
            table = table.row(
                    Table.Kind.PLAIN,
                    Swatch.look(Looks.of(layer.material(), layer.role())),
                    Table.Cell.of(name(layer, print)),
                    Table.Cell.of(Lists.words(layer)),
                    Table.Cell.of(print.of(layer.thickness(), Dimension.THICKNESS)),
                    Table.Cell.of(plain ? print.number(layer.material().conductivity(), Dimension.CONDUCTIVITY) : "–"),
                    Table.Cell.of(
                            plain
                                    ? print.number(
                                            layer.thickness() / layer.material().conductivity(), Dimension.RESISTANCE)
                                    : "–"));
        }
        table = table.row(
                Table.Kind.SUBTOTAL,
                Table.Cell.of(""),
                Table.Cell.of("U " + print.of(row.transmittance(), Dimension.TRANSMITTANCE)),
                Table.Cell.of(""),
                Table.Cell.of(print.of(row.assembly().thickness(), Dimension.THICKNESS)),
                Table.Cell.of(""),
                Table.Cell.of(print.of(row.area(), Dimension.AREA)));
        page.flow().add(table);
    }

    private static Rich name(Layer layer, Print print) {
        Rich out = Rich.of(layer.material().name());
        if (layer.framing().isPresent()) {
            Layer.Framing framing = layer.framing().get();
            out = out.plus(", " + Print.percent(framing.share()) + " "
                    + framing.material().name());
        }
        if (layer.taper().isPresent()) {
            out = out.plus(", to falls, at most " + print.of(layer.taper().get().thickest(), Dimension.THICKNESS));
        }
        return out;
    }

    /** Words about a layer. */
    private static final class Lists {
        static String words(Layer layer) {
            return layer.controls()
                    .toSortedList()
                    .collect(Control::name)
                    .collect(name -> name.toLowerCase(Locale.ROOT))
                    .makeString(", ");
        }
    }
}
