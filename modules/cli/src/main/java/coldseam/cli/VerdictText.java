package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.JunctionSheet;
import coldseam.audit.PointRow;
import coldseam.conduction.Interval;
import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.UnitSystem;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** An audit in the columns of a terminal. */
final class VerdictText {

    private static final String LABEL = "  %-22s ";
    private static final String UNDER_LABEL = " ".repeat(25);
    private static final String UNDER_NUMBER = "     ";

    private final Audit audit;
    private final UnitSystem units;

    VerdictText(Audit audit, UnitSystem units) {
        this.audit = audit;
        this.units = units;
    }

    /** The verdict, the few numbers that matter, and each finding's title. */
    ImmutableList<String> brief() {
        MutableList<String> lines = head();
        if (audit.findings().notEmpty()) {
            lines.add("");
            audit.findings()
                    .forEach(finding -> lines.addAllIterable(Columns.fold(
                            finding.title() + " (" + numbers(finding) + ")", number(finding), UNDER_NUMBER)));
        }
        return lines.toImmutable();
    }

    /** The verdict, the few numbers that matter, and each finding whole. */
    ImmutableList<String> full() {
        MutableList<String> lines = head();
        for (Finding finding : audit.findings()) {
            lines.add("");
            lines.addAllIterable(
                    Columns.fold(finding.title() + " [" + finding.rule() + "]", number(finding), UNDER_NUMBER));
            lines.addAllIterable(Columns.fold(numbers(finding), UNDER_NUMBER, UNDER_NUMBER));
            lines.addAllIterable(Columns.fold("Where: " + finding.place(), UNDER_NUMBER, UNDER_NUMBER));
            lines.addAllIterable(Columns.fold(finding.what(), UNDER_NUMBER, UNDER_NUMBER));
            lines.addAllIterable(Columns.fold("To do: " + finding.toDo(), UNDER_NUMBER, UNDER_NUMBER));
        }
        return lines.toImmutable();
    }

    private MutableList<String> head() {
        HeatLoss loss = audit.heatLoss();
        MutableList<String> lines = Lists.mutable.empty();
        lines.addAllIterable(
                Columns.fold(audit.house().name() + ": " + audit.verdict().sentence(), "", "  "));
        lines.add("");
        row(lines, "heat-loss coefficient", "H_T = " + say(loss.total(), Dimension.HEAT_LOSS_COEFFICIENT));
        Interval junctions = loss.positiveJunctions().plus(loss.negativeJunctions());
        row(
                lines,
                "  of it in junctions",
                say(junctions, Dimension.HEAT_LOSS_COEFFICIENT) + ", "
                        + say(loss.junctionShare(), Dimension.SHARE) + ", from "
                        + audit.junctions().size() + " seams on "
                        + audit.sheets().size() + " sheets, "
                        + units.format(audit.junctions().sumOfDouble(JunctionRow::length), Dimension.LENGTH) + " long");
        if (audit.points().notEmpty()) {
            row(
                    lines,
                    "  of it in points",
                    say(loss.points(), Dimension.HEAT_LOSS_COEFFICIENT) + ", from "
                            + audit.points().sumOfInt(PointRow::number) + " posts, brackets, pipes and the like in "
                            + audit.points().size() + " sets on "
                            + audit.pointSheets().size() + " sheets");
        }
        row(
                lines,
                "design load",
                say(loss.designLoad(), Dimension.POWER) + " at "
                        + units.format(audit.house().site().outdoorTemperature(), Dimension.TEMPERATURE) + " outdoors");
        loss.annualLoss()
                .ifPresent(annual -> row(
                        lines, "loss in a year", units.format(annual, Dimension.ENERGY) + ", gross, by degree days"));
        coldest()
                .ifPresent(sheet -> row(
                        lines,
                        "coldest seam",
                        String.format(
                                Locale.ROOT,
                                "fRsi %.2f, %s (%s); mould possible from %s indoor humidity on",
                                sheet.result().temperatureFactor(),
                                sheet.result().setup().kind().label(),
                                sheet.id(),
                                units.format(sheet.mouldHumidity(), Dimension.SHARE))));
        audit.terraces().forEach(terrace -> row(lines, "terrace", terrace.sentence()));
        return lines;
    }

    private Optional<JunctionSheet> coldest() {
        return audit.sheets().minByOptional(sheet -> sheet.result().temperatureFactor());
    }

    private static void row(MutableList<String> lines, String label, String text) {
        lines.addAllIterable(Columns.fold(text, String.format(Locale.ROOT, LABEL, label), UNDER_LABEL));
    }

    private static String number(Finding finding) {
        return String.format(Locale.ROOT, "%3d  ", finding.number());
    }

    /** Severity, length, loss and money of a finding, as far as they are known. */
    private String numbers(Finding finding) {
        MutableList<String> parts = Lists.mutable.of(finding.severity().name().toLowerCase(Locale.ROOT));
        if (finding.length() > 0) {
            parts.add(units.format(finding.length(), Dimension.LENGTH));
        }
        finding.loss().ifPresent(loss -> parts.add(say(loss, Dimension.HEAT_LOSS_COEFFICIENT) + " lost"));
        finding.moneyPerYear()
                .ifPresent(money -> parts.add(String.format(
                        Locale.ROOT,
                        "%.0f %s a year",
                        money,
                        audit.house().prices().currency())));
        return parts.makeString(", ");
    }

    private String say(Interval value, Dimension dimension) {
        return units.interval(value.lower(), value.upper(), dimension);
    }
}
