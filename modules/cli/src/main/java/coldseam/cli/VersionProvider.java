package coldseam.cli;

import coldseam.audit.house.ToolVersion;
import picocli.CommandLine.IVersionProvider;

/** The tool's version, for {@code --version}. */
final class VersionProvider implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"coldseam " + ToolVersion.read()};
    }
}
