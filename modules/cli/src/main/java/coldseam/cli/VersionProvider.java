package coldseam.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The tool's version, as the build wrote it. */
final class VersionProvider implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"coldseam " + version()};
    }

    /** Such as "0.1.0". */
    static String version() {
        Properties properties = new Properties();
        try (InputStream in = VersionProvider.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return properties.getProperty("version");
    }
}
