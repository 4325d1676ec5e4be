package coldseam.report.pdf;

import coldseam.report.drawing.Face;
import java.io.IOException;
import java.io.InputStream;

/** What comes with the report: fonts, and what its colours are. */
final class Shipped {

    private static final String FOLDER = "/coldseam/report/";

    private Shipped() {}

    static byte[] font(Face face) {
        return read("fonts/"
                + switch (face) {
                    case REGULAR -> "SourceSans3-Regular.ttf";
                    case SEMIBOLD -> "SourceSans3-Semibold.ttf";
                    case ITALIC -> "SourceSans3-It.ttf";
                });
    }

    /**
     * A small colour profile (ICC.1:2001-04, version 2.4, from memory) that says what the document's red, green and blue are: the
     * primaries of sRGB (IEC 61966-2-1, adapted to D50; from memory) with a plain gamma of 2.2.
     *
     * <p>A file of our own, so that the bytes do not depend on the machine: white at X 0.9642, Y 1, Z 0.8249, red at 0.43607,
     * 0.22249, 0.01392, green at 0.38515, 0.71687, 0.09708, blue at 0.14307, 0.06061, 0.7141.
     */
    static byte[] colourProfile() {
        return read("rgb-gamma-2.2.icc");
    }

    private static byte[] read(String name) {
        try (InputStream in = Shipped.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks " + FOLDER + name + "; build it again");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + FOLDER + name + " from the jar", e);
        }
    }
}
