package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.assumed.Assumption;
import java.lang.reflect.Field;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
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

    /** Of the package, from a folder or, where the module is packed, from its jar. */
    private static MutableList<Class<?>> classes() throws Exception {
        URI place = Assumption.class.getResource("Assumption.class").toURI();
        if (!place.getScheme().equals("jar")) {
            return classes(Path.of(place).getParent());
        }
        try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
            return classes(jar.provider().getPath(place).getParent());
        }
    }

    private static MutableList<Class<?>> classes(Path folder) throws Exception {
        MutableList<Class<?>> classes = Lists.mutable.empty();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".class") && !name.contains("$") && !name.contains("-")) {
                    classes.add(Class.forName(Assumption.class.getPackageName() + "." + name.replace(".class", "")));
                }
            }
        }
        assertTrue(classes.size() > 1);
        return classes;
    }
}
