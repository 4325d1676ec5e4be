package coldseam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.plan.SectionPlan;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Type;
import coldseam.report.pages.MarkedTemperatures;
import coldseam.report.pdf.FontMetrics;
import coldseam.report.section.SectionPicture;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

class SvgTest {

    private static final Audit AUDIT = SampleAudit.create("<Yard & \"Barn\">");
    private static final JunctionResult SLAB = AUDIT.sheets().get(0).result();

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static String words(Document document) {
        StringBuilder out = new StringBuilder();
        NodeList texts = document.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            out.append(texts.item(i).getTextContent()).append('\n');
        }
        return out.toString();
    }

    @Test
    void aJunctionIsWellFormedAndNamesWhatItShows() throws Exception {
        Document svg =
                parsed(DetailSvg.text(SLAB, MarkedTemperatures.of(AUDIT.house().site()), UnitSystem.SI));
        assertEquals("svg", svg.getDocumentElement().getNodeName());
        String words = words(svg);
        for (SectionPlan.Piece piece : SLAB.plan().pieces()) {
            assertTrue(words.contains(piece.material().name()), piece.material().name() + " in " + words);
        }
        assertTrue(words.contains("broken here"), words);
        assertTrue(words.contains("coldest 9.8 °C"), words);
        // 20 °C and 50 %: 9.3 °C and, at 80 % on the surface, 12.6 °C (ISO 13788 equations E.7 to E.10, from memory).
        assertTrue(words.contains("dew point 9.3 °C"), words);
        assertTrue(words.contains("mould limit 12.6 °C"), words);
    }

    @Test
    void aSectionByHandIsWellFormed() throws Exception {
        Document svg = parsed(SectionSvg.text(SLAB.solution(), UnitSystem.US));
        assertTrue(words(svg).contains("°F"), words(svg));
        assertTrue(words(svg).contains("Where the intervals' width comes from"), words(svg));
        assertTrue(words(svg).contains("places in inches"), words(svg));
    }

    /** Also where a viewer sets it a quarter wider; the picture is 584 wide, its margins 12. */
    @Test
    void aLongTitleStaysInThePicture() {
        String title =
                "outside stair against the wall: Steps stand clear of the wall, boards pass behind them without a cut";
        String svg = SectionSvg.picture(SectionPicture.of(SLAB.solution(), UnitSystem.SI), title, Optional.empty());
        Matcher text = Pattern.compile("font-size=\"([0-9.]+)\"[^>]*>" + title).matcher(svg);
        assertTrue(text.find(), svg.substring(0, 600));
        Type type = Type.of(Double.parseDouble(text.group(1))).with(Face.SEMIBOLD);
        assertEquals(560 / 1.25, FontMetrics.shared().width(title, type), 0.5, "to a twentieth of a point in size");
    }

    /** Around the inside corner the squares are of the middle step, far out in an arm of the lightest only. */
    @Test
    void theGapIsDarkerAtTheCorner() throws Exception {
        Section corner = new Section(
                "corner",
                Symmetry.PLANAR,
                Lists.immutable.of(new Region(
                        "concrete",
                        2.3,
                        new Polygon(Lists.immutable
                                .of(
                                        new double[] {0, 0},
                                        new double[] {2, 0},
                                        new double[] {2, 0.5},
                                        new double[] {0.5, 0.5},
                                        new double[] {0.5, 2},
                                        new double[] {0, 2})
                                .collect(p -> new Point(p[0], p[1]))))),
                Lists.immutable.of(new Environment("in", 20, 0.13), new Environment("out", 0, 0.04)),
                Lists.immutable.of(
                        new Boundary(
                                "in",
                                Lists.immutable.of(new Point(2, 0.5), new Point(0.5, 0.5), new Point(0.5, 2)),
                                OptionalDouble.empty()),
                        new Boundary(
                                "out",
                                Lists.immutable.of(new Point(0, 2), new Point(0, 0), new Point(2, 0)),
                                OptionalDouble.empty())),
                Lists.immutable.empty());
        String svg = SectionSvg.text(Conduction.solve(corner, new Accuracy(1e-4, 100_000)), UnitSystem.SI);
        // How much of it depends on the mesh that happens to be the last; the other corners have next to nothing.
        assertTrue(
                Pattern.compile("Most of it around \\(500, 500\\): [89]\\d %")
                        .matcher(words(parsed(svg)))
                        .find(),
                words(parsed(svg)));
        String map = svg.substring(svg.indexOf("Where the intervals"));
        // 2 m on 204 points (260 less the title's 22 and the words' 34): the corner lies at 51 + 12 points from the
        // left.
        assertTrue(inSquares(map, "#8bb3ba", 63), map);
        assertTrue(inSquares(map, "#eaf1f0", 200) && !inSquares(map, "#8bb3ba", 200), map);
    }

    /** Whether a filled square, or row of squares, of a colour reaches to within a square's side of a place. */
    private static boolean inSquares(String map, String ink, double x) {
        Matcher found = Pattern.compile("M([0-9.]+) [0-9.]+L([0-9.]+) [^\"]*\" fill=\"" + ink)
                .matcher(map);
        boolean inside = false;
        while (found.find()) {
            inside |= Double.parseDouble(found.group(1)) - 4 <= x && x <= Double.parseDouble(found.group(2)) + 4;
        }
        return inside;
    }

    /** 20 m of ground must not shrink the drawing: the wall's 160 mm board is still measured at 1:10 or larger. */
    @Test
    void groundDoesNotShrinkTheDrawing() throws Exception {
        String words = words(
                parsed(DetailSvg.text(SLAB, MarkedTemperatures.of(AUDIT.house().site()), UnitSystem.SI)));
        assertTrue(words.contains("Scale 1:10 ") || words.contains("Scale 1:5 "), words);
        assertTrue(words.contains("\n160\n"), words);
    }

    @Test
    void isTheSameTextTwice() {
        assertEquals(SectionSvg.text(SLAB.solution(), UnitSystem.SI), SectionSvg.text(SLAB.solution(), UnitSystem.SI));
    }
}
