package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JarDirectoryTest {

    @TempDir
    Path folder;

    private Path jar(String content) throws IOException {
        Path file = folder.resolve("tool.jar");
        try (ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(file))) {
            for (String each : List.of("a/One.class", "a/b/Öse.class", "a/", "b/Two.class", "a/three.yaml")) {
                ZipEntry entry = new ZipEntry(each);
                // Their sums hold the times of entries: without one of its own it is that of writing, by two seconds.
                entry.setTime(0);
                entry.setComment("a comment");
                entry.setExtra(new byte[] {1, 2, 2, 0, 3, 4});
                to.putNextEntry(entry);
                to.write((each.endsWith("/") ? "" : each + content).getBytes(StandardCharsets.UTF_8));
                to.closeEntry();
            }
        }
        return file;
    }

    @Test
    void itSaysWhatThePlatformSays() throws IOException {
        Path jar = jar("content");
        JarDirectory directory = JarDirectory.of(jar);
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            assertEquals(
                    zip.stream()
                            .map(each -> new JarDirectory.Entry(each.getName(), each.getCrc()))
                            .toList(),
                    directory.entries("", "").castToList());
        }
        assertEquals(
                List.of("a/One.class", "a/b/Öse.class"),
                directory
                        .entries("a/", ".class")
                        .collect(JarDirectory.Entry::name)
                        .castToList());
        assertEquals(0, directory.entries("a/three.yaml", "three.yaml").size(), "what begins a name does not end it");
    }

    @Test
    void anotherContentHasOtherSums() throws IOException {
        byte[] first = JarDirectory.of(jar("content")).sums();
        assertArrayEquals(first, JarDirectory.of(jar("content")).sums());
        assertFalse(Arrays.equals(first, JarDirectory.of(jar("kontent")).sums()));
    }

    @Test
    void ofAJarThatIsOpenItIsReadOnce() throws IOException {
        Path jar = jar("content");
        assertSame(JarDirectory.ofOpen(jar), JarDirectory.ofOpen(jar));
    }

    @Test
    void whatIsNoDirectoryIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(jar("content"));
        Path cut = Files.write(folder.resolve("short.jar"), Arrays.copyOf(whole, whole.length - 1));
        assertThrows(IOException.class, () -> JarDirectory.of(cut));
        Path empty = Files.createFile(folder.resolve("empty.jar"));
        assertThrows(IOException.class, () -> JarDirectory.of(empty));
        int from = whole.length - 22 + 16;
        whole[from] += 1;
        Path moved = Files.write(folder.resolve("moved.jar"), whole);
        assertThrows(IOException.class, () -> JarDirectory.of(moved).entries("", ""));
    }
}
