package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.assumed.Assumption;
import coldseam.files.ClassFiles;
import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/** Whatever is assumed is told. */
class AssumedWordsTest {

    @Test
    void everyAssumptionHasWordsOnce() throws Exception {
        MutableList<String> unworded = Lists.mutable.empty();
        int seen = 0;
        for (Class<?> about : classes()) {
            for (Field field : about.getFields()) {
                if (field.getType() == Assumption.class) {
                    Object assumption = field.get(null);
                    seen++;
                    if (AssumedWords.worded().count(each -> each == assumption) != 1) {
                        unworded.add(about.getSimpleName() + "." + field.getName());
                    }
                }
            }
        }
        assertEquals(Lists.mutable.empty(), unworded);
        assertEquals(AssumedWords.worded().size(), seen);
    }

    private static ImmutableList<Class<?>> classes() throws Exception {
        Path code = Path.of(Assumption.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        MutableList<Class<?>> classes = Lists.mutable.empty();
        for (String file : ClassFiles.of(code).keySet()) {
            String name = file.replace('/', '.').replaceFirst("\\.class$", "");
            if (name.matches(Pattern.quote(Assumption.class.getPackageName()) + "\\.\\w+")) {
                classes.add(Class.forName(name));
            }
        }
        assertTrue(classes.size() > 1);
        return classes.toImmutable();
    }
}
