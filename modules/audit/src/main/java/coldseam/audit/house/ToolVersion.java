package coldseam.audit.house;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The tool's version, as the build wrote it. */
public final class ToolVersion {

    private ToolVersion() {}

    /** Such as "0.1.0". */
    public static String read() {
        Properties properties = new Properties();
        try (InputStream in = ToolVersion.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return properties.getProperty("version");
    }
}
