package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.Finding;
import coldseam.files.SameNames;
import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class RulesTest {

    @Test
    void idsAreAlphabetical() {
        assertEquals(
                Rules.all().collect(Rule::id).toSortedList(),
                Rules.all().collect(Rule::id).toList());
    }

    @Test
    void everyRuleClassIsRegistered() throws Exception {
        SameNames.check(
                ruleClasses(),
                Rules.all().collect(rule -> rule.getClass().getSimpleName()).distinct(),
                "add what is missing to Rules, or delete its class");
    }

    @TestFactory
    Stream<DynamicTest> everyRuleIsBrokenByAHouse() {
        Map<String, Supplier<Audit>> houses = RuleHouses.breaking();
        return Rules.all().stream()
                .map(rule -> dynamicTest(rule.id(), () -> {
                    Supplier<Audit> house = houses.get(rule.id());
                    assertNotNull(house, () -> "add a house that breaks " + rule.id() + " to RuleHouses");
                    assertTrue(
                            broken(house.get()).contains(rule.id()),
                            () -> "its house in RuleHouses does not break " + rule.id());
                }));
    }

    @Test
    void theGoodBoxKeepsEveryRule() {
        assertEquals(Lists.immutable.empty(), broken(RuleHouses.keepingAll()));
    }

    private static ImmutableList<String> broken(Audit audit) {
        return audit.findings().flatCollect(Finding::breaches).collect(Breach::rule);
    }

    private static List<String> ruleClasses() throws Exception {
        Path classes = Path.of(
                Rules.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        try (Stream<Path> files = Files.list(classes.resolve("coldseam/audit/rules"))) {
            return files.map(file -> file.getFileName().toString().replace(".class", ""))
                    .filter(name -> !name.contains("$"))
                    .filter(RulesTest::isRule)
                    .sorted()
                    .toList();
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    private static boolean isRule(String name) {
        try {
            Class<?> type = Class.forName("coldseam.audit.rules." + name);
            return Rule.class.isAssignableFrom(type) && !Modifier.isAbstract(type.getModifiers());
        } catch (ClassNotFoundException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
