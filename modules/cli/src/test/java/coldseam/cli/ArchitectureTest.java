package coldseam.cli;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.solve.Conduction;
import coldseam.files.AtomicFiles;
import coldseam.files.SameNames;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rooms and the arrows between them, as DEVELOPERS.md tells them. */
@Tag("slow")
class ArchitectureTest {

    /** Fewer classes than this and the import has missed a room, so that every rule would hold for want of classes. */
    private static final int LEAST_CLASSES = 250;

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("-tests.jar"))
            .importPackages("coldseam");

    @Test
    void everyRoomIsSeen() {
        assertTrue(CLASSES.size() >= LEAST_CLASSES, () -> "only " + CLASSES.size() + " classes");
        for (String room : List.of(
                "files", "conduction", "envelope", "assemblies", "junctions", "audit", "options", "report", "cli")) {
            long seen = CLASSES.stream().filter(in("coldseam." + room)).count();
            assertTrue(seen >= 10, () -> room + ": only " + seen + " classes");
        }
    }

    /** A name says which: two classes of one name are told apart by their imports alone. */
    @Test
    void noNameExistsTwice() {
        Map<String, List<String>> named = CLASSES.stream()
                .filter(each -> each.isTopLevelClass() && !each.getSimpleName().equals("package-info"))
                .collect(groupingBy(JavaClass::getSimpleName, TreeMap::new, mapping(JavaClass::getName, toList())));
        named.values().removeIf(all -> all.size() == 1);
        assertEquals(Map.of(), named);
    }

    private static DescribedPredicate<JavaClass> in(String room) {
        return resideInAnyPackage(room, room + "..");
    }

    /** Each room with the rooms it may know. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "files, \"\"",
                "conduction, \"\"",
                "envelope, files",
                "assemblies, files envelope",
                "junctions, files conduction envelope assemblies",
                "audit, files conduction envelope assemblies junctions",
                "options, files conduction envelope assemblies junctions audit",
                "report, files conduction envelope assemblies junctions audit options",
                "options.front, \"\"",
            })
    void arrowsGoOneWay(String room, String known) {
        DescribedPredicate<JavaClass> allowed = in("coldseam." + room);
        for (String other : known.split(" ")) {
            allowed = other.isEmpty() ? allowed : allowed.or(in("coldseam." + other));
        }
        noClasses()
                .that(in("coldseam." + room))
                .should()
                .dependOnClassesThat(in("coldseam").and(DescribedPredicate.not(allowed)))
                .check(CLASSES);
    }

    /** What the solver is made of may change without anybody asking: others ask in its root's words, and its front door. */
    @Test
    void theSolverIsAskedAtItsFrontDoor() {
        noClasses()
                .that(DescribedPredicate.not(in("coldseam.conduction")))
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "coldseam.conduction.arrange",
                                "coldseam.conduction.mesh",
                                "coldseam.conduction.elements",
                                "coldseam.conduction.field",
                                "coldseam.conduction.solve")
                        .and(DescribedPredicate.not(JavaClass.Predicates.equivalentTo(Conduction.class))))
                .check(CLASSES);
    }

    /** How a shell is made may change likewise: others see surfaces, edges, corners and faults. */
    @Test
    void theShellIsSeenAsMade() {
        noClasses()
                .that(DescribedPredicate.not(in("coldseam.envelope.shell")))
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "coldseam.envelope.shell.lattice",
                        "coldseam.envelope.shell.plan",
                        "coldseam.envelope.shell.roof",
                        "coldseam.envelope.shell.mesh",
                        "coldseam.envelope.shell.storeys",
                        "coldseam.envelope.shell.surfaces"))
                .check(CLASSES);
    }

    /** Each library with the packages it lives behind. */
    @ParameterizedTest
    @CsvSource({
        "com.fasterxml.jackson.., coldseam.files",
        "org.snakeyaml.., coldseam.files",
        "org.yaml.., coldseam.files",
        "org.apache.pdfbox.., coldseam.report.pdf..",
        "org.apache.fontbox.., coldseam.report.pdf..",
        "picocli.., coldseam.cli",
    })
    void eachLibraryLivesBehindOnePackage(String library, String home) {
        noClasses()
                .that(DescribedPredicate.not(resideInAPackage(home)))
                .should()
                .dependOnClassesThat(resideInAPackage(library))
                .check(CLASSES);
    }

    @Test
    void geometryLibraryStaysInTheRoomsThatMeasure() {
        noClasses()
                .that(DescribedPredicate.not(
                        resideInAnyPackage("coldseam.conduction..", "coldseam.envelope..", "coldseam.junctions..")))
                .should()
                .dependOnClassesThat(resideInAPackage("org.locationtech.jts.."))
                .check(CLASSES);
    }

    /** What is written any other way is torn where a run is killed or the disk is full. */
    @Test
    void filesAreWrittenWholeOrNotAtAll() {
        Set<String> writing = Set.of(
                "write", "writeString", "newOutputStream", "newBufferedWriter", "newByteChannel", "copy", "createFile");
        noClasses()
                .that(DescribedPredicate.not(JavaClass.Predicates.equivalentTo(AtomicFiles.class)))
                .should()
                .callMethodWhere(DescribedPredicate.describe(
                        "files are written otherwise",
                        call -> call.getTargetOwner().isEquivalentTo(Files.class) && writing.contains(call.getName())))
                .orShould()
                .callConstructorWhere(DescribedPredicate.describe(
                        "files are opened to be written",
                        call -> Set.of("java.io.FileOutputStream", "java.io.FileWriter", "java.io.RandomAccessFile")
                                        .contains(call.getTargetOwner().getName())
                                // The process's own stream is open already.
                                && !call.getTarget()
                                        .getRawParameterTypes()
                                        .get(0)
                                        .isEquivalentTo(java.io.FileDescriptor.class)))
                .check(CLASSES);
    }

    @Test
    void nobodyElsePrintsOrEndsTheProcess() {
        noClasses()
                .that(DescribedPredicate.not(resideInAPackage("coldseam.cli")))
                .should()
                .accessFieldWhere(DescribedPredicate.describe(
                        "a standard stream",
                        (JavaFieldAccess access) -> access.getTargetOwner().isEquivalentTo(System.class)))
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(CLASSES);
    }

    /**
     * What no command reaches is dead weight in the jar: wire it, or let it wait in the tests.
     */
    @Test
    void everyClassIsReachedFromTheCommand() {
        Set<JavaClass> reached = new HashSet<>();
        Deque<JavaClass> next = new ArrayDeque<>(List.of(CLASSES.get(Main.class)));
        while (!next.isEmpty()) {
            JavaClass here = next.pop();
            if (reached.add(here)) {
                here.getDirectDependenciesFromSelf().stream()
                        .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                        .filter(target -> CLASSES.contain(target.getName()))
                        .forEach(next::push);
                here.getEnclosingClass().ifPresent(next::push);
                // A sealed type is bound to its alternatives by reflection.
                here.getSubclasses().stream()
                        .filter(sub -> CLASSES.contain(sub.getName()))
                        .forEach(next::push);
            }
        }
        Set<String> seen = reached.stream().map(ArchitectureTest::outermost).collect(Collectors.toSet());
        Set<String> unreached = CLASSES.stream()
                .map(ArchitectureTest::outermost)
                .filter(name -> !seen.contains(name) && !name.endsWith("package-info"))
                .filter(name -> !name.startsWith("coldseam.benchmarks"))
                .collect(Collectors.toCollection(TreeSet::new));
        SameNames.check(Set.of(), unreached, "no command reaches them: delete them, or wire them to one");
    }

    /** The class in whose file it stands. */
    private static String outermost(JavaClass each) {
        return each.getName().replaceFirst("[$].*", "");
    }

    @Test
    void packagesFormNoCircles() {
        slices().matching("coldseam.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void theTopLevelHoldsNothingElse() throws IOException {
        Set<String> allowed =
                Set.of("README.md", "DEVELOPERS.md", "LICENSE", "pom.xml", "modules", "fixtures", "reports");
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("coldseam.root")))) {
            Set<String> others = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !allowed.contains(name))
                    .collect(Collectors.toSet());
            SameNames.check(Set.of(), others, "move or remove them");
        }
    }
}
