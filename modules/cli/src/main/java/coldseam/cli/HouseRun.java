package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.engine.Auditor;
import coldseam.envelope.file.house.HouseFile;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.point.PointCatalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** From the path of a house file to its audit. */
final class HouseRun {

    private HouseRun() {}

    /**
     * Reads and audits a house.
     *
     * @throws coldseam.envelope.file.FileFaultException with every fault of the file
     * @throws coldseam.envelope.shell.ShellException with every fault of the shape
     * @throws RefusedException where a choice means no junction of the house
     * @throws IOException where the file cannot be read
     */
    static Audit audit(Path path, UnitSystem units, Terminal terminal, Workshop workshop) throws IOException {
        byte[] content = Files.readAllBytes(path);
        LoadedHouse loaded = HouseFile.read(path, workshop.known(path), workshop.knownPoints(path));
        Shell shell = ShellBuilder.build(loaded.house());
        Catalogue catalogue = workshop.catalogue(loaded.house(), path);
        PointCatalogue points = workshop.points(loaded.house(), path);
        LateChecks.refuse(loaded, shell, catalogue, points);
        ProgressLines progress = new ProgressLines(terminal);
        try {
            return new Auditor(
                            catalogue.priced(loaded.house().prices()),
                            workshop.computer(),
                            points,
                            workshop.pointComputer(),
                            units,
                            VersionProvider.version())
                    .audit(loaded.house(), shell, sha256(content), progress);
        } finally {
            progress.close();
        }
    }

    /** What an audit means for the exit code. */
    static Exit exit(Audit audit) {
        return audit.findings().isEmpty() ? Exit.UNBROKEN : Exit.FOUND;
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
