package coldseam.report.pages;

import coldseam.audit.HeatLoss;
import coldseam.audit.engine.GroundRow;
import coldseam.audit.engine.InputUncertainty;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.GroundWords;
import coldseam.report.words.HeatLossWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.Print;
import coldseam.report.words.PrintedLoss;
import coldseam.report.words.UncertaintyWords;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** The heat-loss coefficient, line by line; the printed numbers add up to the printed sums. */
public final class HeatLossPages {

    /** W/K, half of the last digit printed: smaller remainders are not worth a line. */
    private static final double LEAST_REMAINDER = 0.0005;

    /** Of the variance: what is smaller would be printed as 0 %, and is in the data only. */
    private static final double LEAST_SHARE = 0.005;

    private HeatLossPages() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        Print print = page.print();
        HeatLoss loss = page.audit().heatLoss();
        String unit = print.units().label(Dimension.HEAT_LOSS_COEFFICIENT);
        flow.section("Heat loss");
        flow.body(Rich.marked("Heat-loss coefficient by transmission, H_{T}, by ISO 13789 in "
                + Words.word(loss.system())
                + " dimensions. Sizes and transmittances are printed rounded, and multiplied as they are in the data. Each line"
                + " is then rounded to " + PrintedLoss.STEP + " " + unit
                + " before it is added, exact values to the nearest and bounds outwards, so that the table adds up as"
                + " printed."
                + (loss.lines().anySatisfy(HeatLoss.Line::factorInPsi)
                        ? " A computed ψ holds the b of each surface that meets there; where one of them is below 1 the"
                                + " column says so."
                        : "")));
        new HonestWords(page.audit(), print.units())
                .partial()
                .ifPresent(partial ->
                        flow.add(Blocks.text("The sum is " + partial + ".", Style.BODY.with(Palette.EMBER))));
        flow.space(6);
        Table table = Table.of(
                Table.Column.share("part", 1),
                Table.Column.number("size", 62),
                Table.Column.number("transmittance", print.units() == UnitSystem.SI ? 112 : 138),
                Table.Column.number("b", 28),
                Table.Column.number("at least, " + unit, 66),
                Table.Column.number("at most, " + unit, 66));
        for (HeatLoss.Group group : HeatLoss.Group.values()) {
            ImmutableList<HeatLoss.Line> lines = loss.lines().select(line -> line.group() == group);
            if (lines.isEmpty()) {
                continue;
            }
            String title = title(group, lines);
            table = table.row(Table.Kind.GROUP, Table.Cell.of(title));
            for (HeatLoss.Line line : lines) {
                PrintedLoss bounds = PrintedLoss.of(line, print.units());
                table = table.row(
                        HeatLossWords.name(line.part(), loss),
                        size(line, print),
                        transmittance(line, print),
                        line.factorInPsi() ? "in ψ" : print.number(line.factor(), Dimension.RATIO),
                        bounds.lower().toPlainString(),
                        bounds.upper().toPlainString());
            }
            table = sum(table, Table.Kind.SUBTOTAL, title + " together", PrintedLoss.of(lines, print.units()));
        }
        table = sum(table, Table.Kind.TOTAL, "Sum of all lines", PrintedLoss.of(loss.lines(), print.units()));
        flow.add(table);
        flow.space(8);
        summary(page);
        ground(page);
        inputs(page);
    }

    /** What U of floors and walls in the ground follows from, so that it can be reckoned again. */
    private static void ground(Page page) {
        ImmutableList<GroundRow> rows = GroundRow.of(page.audit());
        if (rows.isEmpty()) {
            return;
        }
        Flow flow = page.flow();
        Print print = page.print();
        flow.heading("Floors on the ground");
        flow.small(Rich.marked(GroundWords.SYMBOLS));
        flow.add(Listing.<GroundRow>empty()
                .share("floor", 1, GroundRow::name)
                .number(
                        print.head("A", Dimension.AREA),
                        48,
                        row -> print.number(row.method().floor().area(), Dimension.AREA))
                .number("P", 62, row -> print.length(row.method().floor().perimeter()))
                .number("B′", 62, row -> print.length(row.method().floor().characteristicDimension()))
                .number("w", 52, row -> print.length(row.method().floor().wallThickness()))
                .number("dt", 62, row -> print.length(row.method().equivalentThickness()))
                .number(
                        print.head("U", Dimension.TRANSMITTANCE),
                        78,
                        row -> print.number(row.method().transmittance(), Dimension.TRANSMITTANCE))
                .of(rows));
        new GroundWords(print).of(rows).forEach(flow::small);
    }

    private static void inputs(Page page) {
        InputUncertainty inputs = InputUncertainty.of(page.audit());
        Flow flow = page.flow();
        Print print = page.print();
        Dimension d = Dimension.HEAT_LOSS_COEFFICIENT;
        flow.heading("What the inputs' uncertainty does");
        flow.small(Rich.marked(
                "The bounds above say how well this model of the house is computed. How well its inputs are known"
                        + " is another matter: each may be off by its share, by itself; H_{T} then lies within "
                        + print.number(inputs.independent(), d) + " "
                        + print.units().label(d)
                        + " to either side (root of the sum of squares), and within "
                        + print.number(inputs.together(), d)
                        + " if all were off at once to one side. To first order, by the solved fields and the standards'"
                        + " formulas. Left out: lengths and workmanship; what seams and corners between an unheated space"
                        + " and other air owe to its temperature factor; walls and vents of crawl spaces, and psi and chi that the house file states count as they are given;"
                        + " what seams beside each other lose more than apart."));
        flow.add(Listing.<InputUncertainty.Input>empty()
                .share(
                        "input (conductivity of a material)",
                        1,
                        input -> UncertaintyWords.name(input, inputs, print.units()))
                .number("off by", 70, input -> print.of(input.within(), Dimension.SHARE))
                .number("H_{T} moves by, " + print.units().label(d), 110, input -> print.number(input.effect(), d))
                .number("share", 60, input -> print.of(inputs.share(input), Dimension.SHARE))
                .of(inputs.largestFirst().select(each -> inputs.share(each) >= LEAST_SHARE)));
    }

    private static Table sum(Table table, Table.Kind kind, String name, PrintedLoss sum) {
        Table.Cell none = Table.Cell.of("");
        return table.row(
                kind,
                Table.Cell.of(name),
                none,
                none,
                none,
                Table.Cell.of(sum.lower().toPlainString()),
                Table.Cell.of(sum.upper().toPlainString()));
    }

    private static String title(HeatLoss.Group group, ImmutableList<HeatLoss.Line> lines) {
        return switch (group) {
            case SURFACES -> "Surfaces to outdoors";
            case OPENINGS -> "Windows and doors";
            case GROUND -> "Ground";
            case UNHEATED ->
                lines.anySatisfy(line -> line.factor() == 0)
                        ? "Unheated spaces and heated neighbours"
                        : "Unheated spaces";
            case JUNCTIONS -> "Junctions";
            case PAIRS -> "Seams beside each other";
            case POINTS -> "Points";
            case VERTICES -> "Corners where edges meet";
        };
    }

    private static String size(HeatLoss.Line line, Print print) {
        return line.group()
                .size()
                .map(size -> size == Dimension.LENGTH
                        ? print.units().number(line.size(), size, 2) + " "
                                + print.units().label(size)
                        : print.of(line.size(), size))
                .orElseGet(() -> Long.toString(Math.round(line.size())));
    }

    private static String transmittance(HeatLoss.Line line, Print print) {
        return print.bounds(line.transmittance(), line.group().transmittance());
    }

    private static void summary(Page page) {
        HeatLoss loss = page.audit().heatLoss();
        Print print = page.print();
        Dimension d = Dimension.HEAT_LOSS_COEFFICIENT;
        page.flow().heading("What follows from it");
        Table table = Table.of(Table.Column.share("", 1), Table.Column.number("", 190));
        table = table.fact(Rich.marked("H_{T}, rounded once, after adding"), print.of(loss.total(), d));
        table = table.fact(Rich.of("junctions with psi above zero"), print.of(loss.positiveJunctions(), d));
        table = table.fact(Rich.of("junctions with psi below zero"), print.of(loss.negativeJunctions(), d));
        if (page.audit().pairSheets().notEmpty()) {
            table = table.fact(
                    Rich.of("seams beside each other, solved in one section: more than apart"),
                    print.of(loss.pairs(), d));
        }
        if (loss.points().upper() != 0) {
            table = table.fact(Rich.of("points: posts, brackets, pipes and the like"), print.of(loss.points(), d));
        }
        if (page.audit().vertexSheets().notEmpty()) {
            table = table.fact(Rich.of("corners where three or more edges meet"), print.of(loss.vertices(), d));
        }
        table = table.fact(Rich.of("share of the junctions"), Print.percent(loss.junctionShare()));
        table = table.fact(
                Rich.marked("H_{T} in "
                        + Words.word(loss.system().other())
                        + " dimensions, with the psi values that belong to them"),
                print.of(loss.otherSystemTotal(), d));
        table = table.fact(
                Rich.of("of the difference: corners that are not computed, which neither system counts"),
                print.of(loss.vertexRemainder(), d));
        if (Math.abs(loss.correctionRemainder()) >= LEAST_REMAINDER) {
            table = table.fact(
                    Rich.of(
                            "of the difference: what is in the U of surfaces and in no section (fasteners, gaps and rain,"
                                    + " and the ground at seams that are drawn without it)"),
                    print.of(loss.correctionRemainder(), d));
        }
        if (loss.ventilation().isPresent()) {
            table = table.fact(
                    Rich.of("ventilation, as the house file gives it"),
                    print.of(loss.ventilation().getAsDouble(), d));
        }
        table = table.fact(
                Rich.of("load at "
                        + print.of(page.audit().house().site().indoorTemperature(), Dimension.TEMPERATURE)
                        + " indoors, "
                        + print.of(page.audit().house().site().outdoorTemperature(), Dimension.TEMPERATURE)
                        + " outdoors, " + HeatLossWords.of(page.audit())),
                print.of(loss.designLoad(), Dimension.POWER));
        Optional<String> year = HeatLossWords.year(page.audit(), print);
        if (year.isPresent()) {
            table = table.fact(
                    Rich.of("loss in a year by degree days, gains not counted, " + HeatLossWords.of(page.audit())),
                    year.get());
        }
        page.flow().add(table);
    }
}
