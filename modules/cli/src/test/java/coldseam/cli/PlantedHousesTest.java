package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.Finding;
import coldseam.audit.engine.LeastPsi;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Comparer;
import coldseam.options.Stages;
import coldseam.options.Wish;
import coldseam.report.words.FindingWords;
import coldseam.report.words.HonestWords;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Houses with a fault planted in them: each must be found, by the rules it names and by no other, or refused with the faults it
 * names; what no rule can judge must be told beside the verdict, and what is wrong with its alternatives beside them.
 *
 * <p>A planted file says in its first line what is wrong, then its base, the drawing by hand or the details beside the demo
 * houses that it chooses if it does, the house that it is compared with, before or after it, and the rules that must find it. Then come changes of the base or the drawing: lines with a minus, which stand in one of them once and
 * in this order, and lines with a plus, which take their place.
 */
@Tag("slow")
class PlantedHousesTest {

    private static final Path FOLDER = CommittedReport.ROOT.resolve("fixtures/houses/planted");

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);

    @TempDir
    Path folder;

    /** What is planted; the rules that must find it, or what the refusal must say; the texts of its files by their names. */
    private record Planted(
            String name,
            String says,
            First first,
            boolean asked,
            List<String> finds,
            List<String> refused,
            List<String> told,
            List<String> compared,
            Optional<Other> other,
            Map<String, String> files) {}

    /** The text of a house that it is compared with: as it is to become, or as it was. */
    private record Other(boolean later, String file) {}

    /** What became of a house when it was first tried, before there was a rule for it. */
    private enum First {
        PASSED("passed"),
        FOUND("found already"),
        NOT_RECORDED("not recorded");

        private final String word;

        First(String word) {
            this.word = word;
        }
    }

    private static Planted read(Path planted) throws IOException {
        List<String> lines = Files.readAllLines(planted);
        String name = planted.getFileName().toString().replace(".planted", "");
        Map<String, String> files = new LinkedHashMap<>();
        List<String> finds = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        List<String> told = new ArrayList<>();
        List<String> compared = new ArrayList<>();
        Optional<Other> other = Optional.empty();
        List<String> minus = new ArrayList<>();
        List<String> plus = new ArrayList<>();
        First first = First.NOT_RECORDED;
        for (String line : lines) {
            if (line.startsWith("base: ")) {
                files.put(name + ".yaml", Files.readString(FOLDER.resolve(line.substring(6))));
            } else if (line.startsWith("drawing: ")) {
                files.put(line.substring(9), Files.readString(FOLDER.resolve(line.substring(9))));
            } else if (line.startsWith("detail: ")) {
                String file = line.substring(8) + ".yaml";
                files.put(
                        file, Files.readString(FOLDER.resolveSibling("details").resolve(file)));
            } else if (line.startsWith("finds: ")) {
                finds.add(line.substring(7));
            } else if (line.startsWith("first: ")) {
                first = First.valueOf(line.substring(7).toUpperCase(Locale.ROOT));
            } else if (line.startsWith("refused: ")) {
                refused.add(line.substring(9));
            } else if (line.startsWith("told: ")) {
                told.add(line.substring(6));
            } else if (line.startsWith("compared: ")) {
                compared.add(line.substring(10));
            } else if (line.startsWith("before: ")) {
                other = Optional.of(new Other(false, Files.readString(FOLDER.resolve(line.substring(8)))));
            } else if (line.startsWith("after: ")) {
                other = Optional.of(new Other(true, Files.readString(FOLDER.resolve(line.substring(7)))));
            } else if (line.startsWith("-")) {
                minus.add(line.substring(1));
            } else if (line.startsWith("+")) {
                plus.add(line.substring(1));
            } else if (line.isEmpty()) {
                change(files, minus, plus, planted);
            }
        }
        change(files, minus, plus, planted);
        assertTrue(
                lines.get(0).startsWith("# ")
                        && (told.isEmpty() && compared.isEmpty()
                                ? finds.isEmpty() != refused.isEmpty()
                                : refused.isEmpty()),
                () -> planted + " does not say what it plants");
        return new Planted(
                name,
                lines.get(0).substring(2),
                first,
                lines.contains("asked: by name"),
                finds,
                refused,
                told,
                compared,
                other,
                files);
    }

    private static void change(Map<String, String> files, List<String> minus, List<String> plus, Path file) {
        if (minus.isEmpty()) {
            return;
        }
        String old = String.join("\n", minus) + "\n";
        String fresh = plus.isEmpty() ? "" : String.join("\n", plus) + "\n";
        List<String> in = files.keySet().stream()
                .filter(name -> files.get(name).contains(old))
                .toList();
        int at = in.size() == 1 ? files.get(in.get(0)).indexOf(old) : -1;
        assertTrue(
                at >= 0 && files.get(in.get(0)).indexOf(old, at + 1) < 0,
                () -> file + ": not once in its base or drawing:\n" + old);
        files.computeIfPresent(
                in.get(0), (name, text) -> text.substring(0, at) + fresh + text.substring(at + old.length()));
        minus.clear();
        plus.clear();
    }

    /** Each in a folder of its own: their details bear the same names. */
    private Audit audit(String name, Map<String, String> files, Workshop workshop) throws IOException {
        Path own = Files.createDirectory(folder.resolve(name));
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(own.resolve(file.getKey()), file.getValue());
        }
        return HouseAudit.of(own.resolve(name + ".yaml"), workshop).compute();
    }

    /**
     * What came of a planted house.
     *
     * @param wrong what it does not say as it should; empty where all is as it says
     */
    private record Tried(Planted planted, String found, String by, List<String> wrong) {}

    private Tried tried(Path file, Workshop workshop) {
        try {
            return tried(read(file), workshop);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private Tried tried(Planted planted, Workshop workshop) throws IOException {
        List<String> wrong = new ArrayList<>();
        String found;
        String by;
        try {
            Audit audit = audit(planted.name(), planted.files(), workshop);
            ImmutableList<String> rules = audit.findings()
                    .flatCollect(Finding::breaches)
                    .collect(Breach::rule)
                    .distinct();
            found = audit.findings().collect(WORDS::title).makeString("; ");
            by = rules.makeString(", ");
            if (!new TreeSet<>(planted.finds()).equals(new TreeSet<>(rules.castToList()))) {
                wrong.add(planted.name() + ": must be found by " + planted.finds() + planted.refused()
                        + ", is found by " + rules + ": " + found);
            }
            HonestWords honest = new HonestWords(audit, UnitSystem.SI);
            String all = honest.assumed().orElse("") + " " + honest.total();
            planted.told().stream()
                    .filter(told -> !all.contains(told))
                    .forEach(told ->
                            wrong.add(planted.name() + ": must be told \"" + told + "\"; what is told: " + all));
            String options = planted.compared().isEmpty() ? "" : compared(planted, workshop);
            planted.compared().stream()
                    .filter(told -> !options.contains(told))
                    .forEach(told ->
                            wrong.add(planted.name() + ": must be told \"" + told + "\" of its options: " + options));
            // What is planted first, then what else its base has.
            List<String> beside = planted.told().isEmpty() ? planted.compared() : planted.told();
            if (!beside.isEmpty()) {
                String where = planted.told().isEmpty() ? "told beside the options" : "told beside the verdict";
                found = String.join("; ", beside) + (found.isEmpty() ? "" : "; " + found);
                by = where + (by.isEmpty() ? "" : ", " + by);
            }
        } catch (FileFaultException refused) {
            found = refused.faults().collect(PlantedHousesTest::said).makeString("; ");
            by = "refused";
            if (!planted.refused()
                    .equals(refused.faults().collect(PlantedHousesTest::said).castToList())) {
                wrong.add(planted.name() + ": must be found by " + planted.finds() + planted.refused()
                        + ", is refused: " + found);
            }
        } catch (RuntimeException broken) {
            found = "";
            by = "";
            wrong.add(planted.name() + " breaks the tool: " + broken);
        }
        return new Tried(planted, found, by, wrong);
    }

    @Test
    void everyPlantedFaultIsFoundByItsRules() throws IOException {
        Workshop workshop = Bench.SHARED;
        Audit sound = audit("box", Map.of("box.yaml", Files.readString(FOLDER.resolve("box.yaml"))), workshop);
        assertTrue(sound.findings().isEmpty(), () -> sound.findings().makeString("\n"));
        LeastPsi least = new LeastPsi(sound.house(), sound.shell());
        sound.junctions()
                .forEach(row -> assertTrue(
                        least.at(row.edge()) < row.psi().lower(),
                        () -> row.name() + " is computed to lose less than it can"));
        Map<First, Integer> counts = new EnumMap<>(First.class);
        int asked = 0;
        StringBuilder page = new StringBuilder("| planted | found | by | at first |\n|---|---|---|---|\n");
        // In parallel, since this class alone would be what a module waits for.
        List<Tried> all =
                planted().parallelStream().map(file -> tried(file, workshop)).toList();
        for (Tried tried : all) {
            Planted planted = tried.planted();
            page.append("| ")
                    .append(planted.says())
                    .append(" | ")
                    .append(tried.found())
                    .append(" | ")
                    .append(tried.by())
                    .append(" | ")
                    .append(planted.first().word)
                    .append(" |\n");
            counts.merge(planted.first(), 1, Integer::sum);
            asked += planted.asked() ? 1 : 0;
        }
        assertEquals("", all.stream().flatMap(tried -> tried.wrong().stream()).collect(Collectors.joining("\n")));
        CommittedReport.check(
                "verdict.md",
                "# Planted faults\n\n"
                        + "Each house of `fixtures/houses/planted` has one fault planted in a base that is in order;"
                        + " written and compared by a test. Of "
                        + all.size() + " houses " + asked
                        + " were asked for by name when the verdict was first doubted, " + (all.size() - asked)
                        + " are of our own invention; " + counts.getOrDefault(First.PASSED, 0)
                        + " were seen to pass before there was a rule for them, "
                        + counts.getOrDefault(First.FOUND, 0)
                        + " were found already when they were first tried (some by a rule that meant something else), and of "
                        + counts.getOrDefault(First.NOT_RECORDED, 0)
                        + " nobody wrote down what became of them at first.\n\n"
                        + page);
    }

    /** What is told of a house's alternatives, or of it beside another; the house was written already. */
    private String compared(Planted planted, Workshop workshop) throws IOException {
        Path own = folder.resolve(planted.name());
        HouseAudit ready = HouseAudit.of(own.resolve(planted.name() + ".yaml"), workshop);
        ImmutableList<String> lines;
        if (planted.other().isPresent()) {
            Path beside = own.resolve("other.yaml");
            Files.writeString(beside, planted.other().get().file());
            HouseAudit other = HouseAudit.of(beside, workshop);
            boolean later = planted.other().get().later();
            lines = RenovationText.of(
                    Stages.compare(
                            later ? ready : other, later ? other : ready, Lists.immutable.empty(), Progress.SILENT),
                    UnitSystem.SI);
        } else {
            Wish nothing = new Wish(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
            lines = CompareText.of(Comparer.compare(ready, nothing, Progress.SILENT), UnitSystem.SI);
        }
        return lines.makeString(" ").replaceAll("\\s+", " ");
    }

    private static String said(Fault fault) {
        return fault.asked() + (fault.got().isEmpty() ? "" : "; got " + fault.got());
    }

    private static List<Path> planted() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".planted"))
                    .sorted()
                    .toList();
        }
    }
}
