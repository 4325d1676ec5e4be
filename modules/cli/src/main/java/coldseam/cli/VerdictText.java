package coldseam.cli;

import coldseam.assemblies.moisture.Condensation.Verdict;
import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.Mould;
import coldseam.audit.PointRow;
import coldseam.audit.VertexSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.Site;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.FindingWords;
import coldseam.report.words.FoundWords;
import coldseam.report.words.HeatLossWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.PairWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.TerraceWords;
import coldseam.report.words.VerdictWords;
import coldseam.report.words.VertexWords;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** An audit in the columns of a terminal. */
record VerdictText(Audit audit, UnitSystem units, FindingWords words, Print print) {

    private static final String LABEL = "  %-22s ";
    private static final String UNDER_LABEL = " ".repeat(25);
    private static final String UNDER_NUMBER = "     ";

    VerdictText(Audit audit, UnitSystem units) {
        this(audit, units, new FindingWords(units), new Print(units));
    }

    /** The verdict, the few numbers that matter, and each finding's title. */
    ImmutableList<String> brief() {
        MutableList<String> lines = head();
        if (audit.findings().notEmpty()) {
            lines.add("");
            audit.findings()
                    .forEach(finding -> lines.addAllIterable(Columns.fold(
                            words.title(finding) + " (" + numbers(finding) + ")", number(finding), UNDER_NUMBER)));
        }
        return lines.toImmutable();
    }

    /** The verdict, the few numbers that matter, and each finding whole. */
    ImmutableList<String> full() {
        MutableList<String> lines = head();
        Optional<String> once = words.toldOnce(audit.findings());
        once.ifPresent(told -> {
            lines.add("");
            lines.addAllIterable(Columns.fold(told + " The lines that choose it stand at the end.", "  ", "  "));
        });
        for (Finding finding : audit.findings()) {
            lines.add("");
            Optional<FindingWords.Unchosen> unchosen = once.flatMap(told -> words.unchosen(finding));
            if (unchosen.isPresent()) {
                lines.addAllIterable(Columns.fold(
                        words.title(finding) + " [" + finding.rule() + "], " + numbers(finding),
                        number(finding),
                        UNDER_NUMBER));
                under(lines, "Where: ", words.place(finding));
                under(lines, "Stands in: ", unchosen.get().standIn());
                under(lines, "Best: ", unchosen.get().best());
            } else {
                lines.addAllIterable(Columns.fold(
                        words.title(finding) + " [" + finding.rule() + "]", number(finding), UNDER_NUMBER));
                under(lines, "", numbers(finding));
                under(lines, "Where: ", words.place(finding));
                under(lines, "", words.what(finding));
                under(lines, "To do: ", words.toDo(finding));
            }
        }
        lines.addAllIterable(others());
        lines.addAllIterable(ChoiceLines.of(audit));
        if (audit.found().isPresent()) {
            lines.add("");
            lines.add("  Seams as found, and as planned");
            new FoundWords(audit, units)
                    .lines()
                    .forEach(line -> lines.addAllIterable(Columns.fold(line, "  ", UNDER_NUMBER)));
        }
        return lines.toImmutable();
    }

    private static void under(MutableList<String> lines, String what, String text) {
        lines.addAllIterable(Columns.fold(what + text, UNDER_NUMBER, UNDER_NUMBER));
    }

    /** Where it is told what each option of the catalogue asks for, of seams at fault for which it has nothing better. */
    private ImmutableList<String> others() {
        ImmutableList<String> kinds = audit.sheets()
                .select(sheet -> sheet.best().isEmpty()
                        && audit.findings()
                                .anySatisfy(finding ->
                                        finding.sheet().filter(sheet::equals).isPresent()))
                .collect(BridgeSheet::kind)
                .distinct();
        return kinds.isEmpty()
                ? Lists.immutable.empty()
                : Lists.immutable
                        .of("")
                        .newWithAll(Columns.fold(
                                "Why nothing else of the catalogue fits there, or does better: coldseam catalogue --house HOUSE"
                                        + " --kind \"" + kinds.makeString(",") + '"',
                                "  ",
                                "  "));
    }

    /** The verdict and what is otherwise than before: what the house loses, findings that came, went or weigh another amount. */
    ImmutableList<String> since(Audit before) {
        VerdictText other = new VerdictText(before, units);
        HonestWords honest = new HonestWords(audit, units);
        MutableList<String> lines = verdict(honest);
        String total = honest.total();
        String was = new HonestWords(before, units).total();
        row(lines, "heat-loss coefficient", "H_T = " + total + (total.equals(was) ? ", as before" : ", before " + was));
        Map<String, String> now = titles();
        Map<String, String> then = other.titles();
        int same = lines.size();
        then.forEach((what, said) -> {
            if (!now.containsKey(what)) {
                changed(lines, "gone", said);
            }
        });
        now.forEach((what, said) -> {
            if (!said.equals(then.get(what))) {
                changed(lines, then.containsKey(what) ? "now" : "new", said);
            }
        });
        if (lines.size() == same) {
            lines.add("  findings as before");
        }
        return lines.toImmutable();
    }

    private static void changed(MutableList<String> lines, String how, String what) {
        lines.addAllIterable(Columns.fold(what, Format.of("  %-5s", how), "       "));
    }

    /** Each finding in a line, in their order, by what it is about. */
    private Map<String, String> titles() {
        Map<String, String> titles = new LinkedHashMap<>();
        audit.findings()
                .forEach(finding -> titles.merge(
                        finding.rule() + " " + words.title(finding) + " " + words.place(finding),
                        words.title(finding) + " (" + numbers(finding) + ")",
                        (one, another) -> one + "; " + another));
        return titles;
    }

    /** The verdict, never without what it assumes. */
    private MutableList<String> verdict(HonestWords honest) {
        MutableList<String> lines = Lists.mutable.withAll(
                Columns.fold(audit.house().name() + ": " + VerdictWords.sentence(audit.verdict()), "", "  "));
        ImmutableList<String> assumptions = honest.assumptions();
        if (assumptions.notEmpty()) {
            lines.add("  " + HonestWords.ASSUMED);
            assumptions.forEach(each -> lines.addAllIterable(Columns.fold(each, "  -  ", "     ")));
        }
        return lines;
    }

    private MutableList<String> head() {
        HeatLoss loss = audit.heatLoss();
        HonestWords honest = new HonestWords(audit, units);
        MutableList<String> lines = verdict(honest);
        lines.addAllIterable(Columns.fold(honest.measuredBy(), "  ", "  "));
        lines.add("");
        row(
                lines,
                "heat-loss coefficient",
                "H_T = " + honest.total()
                        + honest.unknown().map(why -> ": " + why).orElse(""));
        honest.inputs().ifPresent(inputs -> row(lines, "  as inputs are known", inputs));
        Interval junctions = loss.positiveJunctions().plus(loss.negativeJunctions());
        String counted = loss.negativeJunctions().lower() < 0
                ? print.of(loss.positiveJunctions(), Dimension.HEAT_LOSS_COEFFICIENT) + " lost and "
                        + print.of(loss.negativeJunctions(), Dimension.HEAT_LOSS_COEFFICIENT)
                        + " of corners that plane parts count twice, together "
                : "";
        row(
                lines,
                "  of it in junctions",
                counted + print.of(junctions, Dimension.HEAT_LOSS_COEFFICIENT) + ", "
                        + print.of(loss.junctionShare(), Dimension.SHARE) + ", from "
                        + audit.junctions().size() + " seams on "
                        + Phrases.count(audit.sheets().size(), "sheet", "sheets") + ", "
                        + print.of(audit.junctions().sumOfDouble(JunctionRow::length), Dimension.LENGTH) + " long");
        PairWords.count(audit, units).ifPresent(count -> row(lines, "  seams side by side", count));
        if (audit.points().notEmpty()) {
            row(
                    lines,
                    "  of it in points",
                    print.of(loss.points(), Dimension.HEAT_LOSS_COEFFICIENT) + ", from "
                            + audit.points().sumOfInt(PointRow::number) + " posts, brackets, pipes and the like in "
                            + Phrases.count(audit.points().size(), "set", "sets") + " on "
                            + Phrases.count(audit.pointSheets().size(), "sheet", "sheets"));
        }
        if (audit.vertices().notEmpty()) {
            row(
                    lines,
                    "  of it in corners",
                    print.of(loss.vertices(), Dimension.HEAT_LOSS_COEFFICIENT) + ": " + VertexWords.count(audit));
        }
        row(
                lines,
                "design load",
                print.of(loss.designLoad(), Dimension.POWER) + " at "
                        + print.of(audit.house().site().outdoorTemperature(), Dimension.TEMPERATURE) + " outdoors, "
                        + HeatLossWords.of(audit));
        HeatLossWords.year(audit, print)
                .ifPresent(year ->
                        row(lines, "loss in a year", year + ", gross, by degree days, " + HeatLossWords.of(audit)));
        mould(lines);
        row(lines, "inside assemblies", inside());
        audit.terraces().forEach(terrace -> row(lines, "terrace", TerraceWords.brief(terrace, units)));
        return lines;
    }

    private void mould(MutableList<String> lines) {
        Mould mould = audit.mould();
        if (mould.surfaces().isEmpty()) {
            return;
        }
        coldest(lines, mould, "seam", mould.surfaces().reject(s -> s.sheet() instanceof VertexSheet));
        coldest(lines, mould, "corner", mould.surfaces().select(s -> s.sheet() instanceof VertexSheet));
        row(lines, "mould", atDesign(mould, mould.surfaces().getFirst()));
        row(lines, "", byMonth(mould));
    }

    private void coldest(
            MutableList<String> lines, Mould mould, String what, ImmutableList<Mould.Surface> coldestFirst) {
        coldestFirst
                .getFirstOptional()
                .ifPresent(surface -> row(
                        lines,
                        "coldest " + what,
                        Format.of(
                                "fRsi %.2f, %s (%s); the limit is %.2f",
                                surface.temperatureFactor(),
                                surface.sheet().kind(),
                                surface.sheet().id(),
                                mould.limit())));
    }

    private String atDesign(Mould mould, Mould.Surface coldest) {
        Site site = audit.house().site();
        int wet = mould.wetAtDesign().size();
        String from = "at " + print.of(site.outdoorTemperature(), Dimension.TEMPERATURE)
                + " outdoors possible at " + coldest.sheet().id() + " from "
                + print.of(coldest.humidityAtDesign(), Dimension.SHARE)
                + " indoor humidity on; ";
        String own = print.of(site.indoorHumidity(), Dimension.SHARE);
        return wet == 0
                ? from + "the house has " + own
                : from + "CAUTION: the house has " + own + ", enough on " + (wet == 1 ? "this sheet" : wet + " sheets")
                        + Format.of(" (fRsi below %.2f)", mould.designNeed());
    }

    private String byMonth(Mould mould) {
        if (mould.monthly().isEmpty()) {
            return "not judged by months: the house file gives no monthly climate";
        }
        MonthlyTemperatureFactor.Need need = mould.monthly().get().critical();
        return Format.of(
                "by months fRsi %.2f is needed (%s); %s",
                need.temperatureFactor(),
                Phrases.month(need.month()),
                (mould.wetByMonth().isEmpty() ? "every seam" : "not every seam")
                        + (audit.vertexSheets().isEmpty() ? "" : " and corner that is computed") + " has it");
    }

    /** Condensation inside the assemblies, in one sentence. */
    private String inside() {
        ImmutableList<AssemblyRow> checked =
                audit.assemblies().select(row -> row.moisture().year().isPresent());
        if (checked.isEmpty()) {
            return audit.house().site().climate().isPresent()
                    ? "condensation not checked: no assembly faces outdoors"
                    : "condensation not checked: the house file gives no monthly climate";
        }
        MutableList<String> said = Lists.mutable.empty();
        for (Verdict verdict : Verdict.values()) {
            ImmutableList<String> names = checked.select(
                            row -> row.moisture().year().orElseThrow().verdict() == verdict)
                    .collect(row -> row.assembly().name())
                    .distinct();
            if (names.notEmpty()) {
                said.add(word(verdict) + ": " + names.makeString(", "));
            }
        }
        int left = audit.assemblies().size() - checked.size();
        return said.makeString("; ") + (left > 0 ? "; " + left + " not checked" : "") + " (diffusion alone)";
    }

    private static String word(Verdict verdict) {
        return switch (verdict) {
            case STAYS_DRY -> "nothing condenses";
            case DRIES_OUT -> "condenses and dries within the year";
            case ACCUMULATES -> "WATER IS LEFT after a year";
        };
    }

    private static void row(MutableList<String> lines, String label, String text) {
        lines.addAllIterable(Columns.fold(text, Format.of(LABEL, label), UNDER_LABEL));
    }

    private static String number(Finding finding) {
        return Format.of("%3d  ", finding.number());
    }

    /** Severity, length, loss and money of a finding, as far as they are known. */
    private String numbers(Finding finding) {
        MutableList<String> parts = Lists.mutable.of(Words.word(finding.severity()));
        if (finding.subject().length() > 0) {
            parts.add(print.length(finding.subject().length()));
        }
        finding.loss().ifPresent(loss -> parts.add(print.lost(loss) + " lost"));
        finding.moneyPerYear()
                .ifPresent(money -> parts.add(
                        Print.money(money) + " " + audit.house().prices().currency() + " a year"));
        return parts.makeString(", ");
    }
}
