package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** The platforms' conventions, from memory. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "paths are written as on Unix")
class UsualFolderTest {

    private static Optional<String> of(String system, String home, Map<String, String> environment) {
        return UsualFolder.of(system, home, environment::get).map(Path::toString);
    }

    @Test
    void eachPlatformHasItsPlace() {
        assertEquals(Optional.of("/home/a/.cache/coldseam"), of("Linux", "/home/a", Map.of()));
        assertEquals(Optional.of("/scratch/coldseam"), of("Linux", "/home/a", Map.of("XDG_CACHE_HOME", "/scratch")));
        assertEquals(
                Optional.of("/Users/a/Library/Caches/coldseam"),
                of("Mac OS X", "/Users/a", Map.of("XDG_CACHE_HOME", "/scratch")));
        assertEquals(Optional.of("/local/coldseam"), of("Windows 11", "/home/a", Map.of("LOCALAPPDATA", "/local")));
    }

    @Test
    void aPlaceThatIsNoneIsNotTaken() {
        assertEquals(Optional.of("/home/a/.cache/coldseam"), of("Linux", "/home/a", Map.of("XDG_CACHE_HOME", "here")));
        assertEquals(Optional.empty(), of("Linux", "?", Map.of("XDG_CACHE_HOME", "")));
        assertEquals(Optional.empty(), of("Windows 11", "/home/a", Map.of()));
        assertEquals(Optional.empty(), of("Linux", "\0", Map.of()));
    }
}
