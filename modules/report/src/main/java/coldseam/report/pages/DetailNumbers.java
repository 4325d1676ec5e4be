package coldseam.report.pages;

import coldseam.envelope.Assembly;
import coldseam.envelope.DefaultPsi;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.NearestDefaultPsi;
import coldseam.junctions.PointResult;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The rows of a computed detail's results, and what its drawing shows. */
record DetailNumbers(BridgeResult result, Print print) {

    /** What a section's drawing shows, for readers that do not see it. */
    String figure() {
        if (result instanceof JunctionResult junction) {
            return "Section of the " + result.detail().kind().label() + ", "
                    + result.detail().name()
                    + ", to scale with its layers numbered as in"
                    + " the table, isotherms, pen line and weakest path. "
                    + (junction.penLine().unbroken()
                            ? "The insulation passes without a break."
                            : "The insulation is broken.");
        }
        return "Section through the middle of the " + result.detail().kind().label() + ", "
                + result.detail().name()
                + ", turned about its axis, to scale with its materials numbered as in the table and isotherms.";
    }

    /**
     * The table of results: psi or chi, what it is made of and the coldest point.
     *
     * @param tabulated whether what ISO 14683 has for the kind stands beside it
     */
    Table table(boolean tabulated) {
        Table table = Table.of(Table.Column.share("result", 1), Table.Column.number("", 122));
        return result instanceof JunctionResult junction
                ? line(table, junction, tabulated)
                : round(table, (PointResult) result);
    }

    private Table line(Table given, JunctionResult junction, boolean tabulated) {
        Table table = row(given, "ψ, external dimensions", print.of(junction.psiExternal(), junction.dimension()));
        table = row(table, "ψ, internal dimensions", print.of(junction.psiInternal(), junction.dimension()));
        Optional<DefaultPsi> beside = tabulated ? NearestDefaultPsi.of(junction) : Optional.empty();
        if (beside.isPresent()) {
            table = row(
                    table,
                    "ISO 14683 " + beside.get().code() + ": " + DefaultPsi.CAUTION,
                    print.number(beside.get().external(), junction.dimension()) + " ext., "
                            + print.number(beside.get().internal(), junction.dimension()) + " int.");
        }
        table = row(table, "L_{2D}", print.bounds(junction.coupling(), junction.dimension()));
        for (JunctionResult.Leg leg : junction.legs()) {
            table = table.fact(
                    Rich.of("U of the " + leg.name() + without(junction.setup(), leg.part())
                            + times(junction.factor(leg))),
                    print.of(leg.transmittance(), Dimension.TRANSMITTANCE));
        }
        double step = junction.setup().innerStep();
        if (step != 0) {
            table = row(
                    table,
                    "inner face of the " + junction.legs().getLast().name() + ", farther " + (step > 0 ? "out" : "in"),
                    print.of(Math.abs(step), Dimension.THICKNESS));
        }
        table = coldest(table);
        table = row(
                table,
                "neck of the pen line",
                junction.penLine().unbroken()
                        ? print.neck(junction.penLine()) + " = "
                                + Print.percent(junction.penLine().share())
                        : "broken");
        return row(
                table,
                "weakest path, ratio to the weaker surface",
                Print.percent(junction.weakestPath().ratio()));
    }

    private String times(double factor) {
        return factor == 1 ? "" : ", in ψ times b " + print.number(factor, Dimension.RATIO);
    }

    /** What a surface's U has on the heat-loss page, and no drawing. */
    private static String without(JunctionSetup setup, JunctionResult.Leg.Part part) {
        Optional<Assembly> built = switch (part) {
            case FIRST -> Optional.of(setup.first());
            case SECOND, IN_THE_GROUND -> setup.second();
            case OPENING -> Optional.empty();
        };
        ImmutableList<String> left = Lists.immutable
                .of(
                        built.flatMap(Assembly::fasteners).map(each -> "fasteners"),
                        built.filter(each -> each.gaps() != Assembly.AirGaps.NONE)
                                .map(each -> "gaps"),
                        built.flatMap(Assembly::rain).map(each -> "rain"))
                .flatCollect(each -> each.stream().toList());
        return left.isEmpty() ? "" : ", without " + Phrases.listed(left);
    }

    private Table round(Table given, PointResult point) {
        Table table = row(given, "χ, each", print.of(point.chi(), point.dimension()));
        table = row(
                table,
                "L_{3D} of a " + (point.body().isPresent() ? "square" : "disc") + " of "
                        + print.of(point.area(), Dimension.AREA),
                print.bounds(point.coupling(), point.dimension()));
        table = row(table, "U of the surface", print.of(point.transmittance(), Dimension.TRANSMITTANCE));
        return coldest(table);
    }

    private Table coldest(Table table) {
        return row(
                table,
                "f_{Rsi}, R_{si} " + print.of(0.25, Dimension.RESISTANCE) + ", estimate",
                Print.factor(result.temperatureFactor()));
    }

    private static Table row(Table table, String what, String value) {
        return table.fact(Rich.marked(what), value);
    }
}
