package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RulesTest {

    @Test
    void idsAreAlphabetical() {
        assertEquals(
                Rules.all().collect(Rule::id).toSortedList(),
                Rules.all().collect(Rule::id).toList());
    }

    @Test
    void anIdIsItsClassName() {
        for (Rule rule : Rules.all()) {
            String name = rule.getClass().getSimpleName().replaceFirst("Rule$", "");
            String id = name.replaceAll("(?<=.)(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
            assertEquals(id, rule.id());
        }
    }

    @Test
    void everyRuleClassIsRegisteredOnce() throws Exception {
        List<String> registered =
                Rules.all().collect(rule -> rule.getClass().getSimpleName()).toSortedList();
        assertEquals(ruleClasses(), registered);
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

    @Test
    void eachSaysWhatMustHoldAndHowToCloseIt() {
        for (Rule rule : Rules.all()) {
            assertTrue(rule.says().matches("[A-Z].*\\."), rule::says);
            assertTrue(rule.closing().matches("[A-Z].*\\."), rule::closing);
        }
    }
}
