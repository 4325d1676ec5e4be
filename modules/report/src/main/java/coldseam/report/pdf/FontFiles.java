package coldseam.report.pdf;

import coldseam.report.drawing.Face;
import java.io.IOException;
import java.io.InputStream;

/** The typeface's files, shipped with their licence beside them. */
final class FontFiles {

    private FontFiles() {}

    static byte[] read(Face face) {
        String name = "/coldseam/report/fonts/" + file(face);
        try (InputStream in = FontFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks " + name + "; build it again");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + name + " from the jar", e);
        }
    }

    private static String file(Face face) {
        return switch (face) {
            case REGULAR -> "SourceSans3-Regular.ttf";
            case SEMIBOLD -> "SourceSans3-Semibold.ttf";
            case ITALIC -> "SourceSans3-It.ttf";
        };
    }
}
