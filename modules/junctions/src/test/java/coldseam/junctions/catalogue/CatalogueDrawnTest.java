package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.JunctionKind;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.Statement;
import java.util.Map;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** What a detail's text tells the builder to make is in its drawing, as far as the words say it. */
final class CatalogueDrawnTest {

    /** Parts that shed water or keep the wind out: how the text names each, and how the drawing does. */
    private static final Map<Pattern, Pattern> PARTS = Map.ofEntries(
            part("\\bpan\\b", "\\bpan\\b"),
            part("\\bdrip\\b", "\\bdrip\\b"),
            part("\\bgutter\\b", "gutter"),
            part("\\binsect mesh\\b|\\b[Tt]he mesh\\b", "insect mesh"),
            part("\\b(edge|corner|verge) trim\\b|\\b[Nn]ail trim\\b|\\bwith trim\\b", "trim"),
            part("\\bcurb\\b", "curb"),
            part("\\bnosing\\b", "nosing"),
            part("\\bcapping\\b|\\bcap with\\b", "capping"),
            part("\\bbaffles?\\b", "baffle"),
            part("\\b[Ff]lash", "flashing"),
            part("\\bouter sill\\b", "outer sill"),
            part("\\b(upstand|upturn)\\b", "upstand|upturn|turned up|up the|up behind"),
            part("\\bstarter strip\\b", "starter strip"));

    /** Kinds whose section lies across the upright: what runs level above and below is not in its plane. */
    private static final ImmutableList<JunctionKind> IN_PLAN =
            Lists.immutable.of(JunctionKind.JAMB, JunctionKind.of("unheated neighbour"));

    /** A gutter behind the kerb's upper side, which a section through its other sides does not meet. */
    private static final String ABOVE_THE_KERB = "gutter above the kerb";

    private static Map.Entry<Pattern, Pattern> part(String told, String drawn) {
        return Map.entry(Pattern.compile(told), Pattern.compile(drawn));
    }

    @Test
    void whatIsToldIsDrawn() {
        MutableList<String> faults = Lists.mutable.empty();
        for (Detail detail : CatalogueFile.builtIn().junctions().reject(each -> IN_PLAN.contains(each.junction()))) {
            String drawn = ((BandDrawing) detail.drawing())
                    .statements()
                    .collect(CatalogueDrawnTest::name)
                    .makeString("; ");
            ImmutableList<String> told = Lists.immutable
                    .of(detail.name(), detail.looksLike())
                    .newWithAll(detail.order())
                    .newWithAll(detail.photographs().collect(Photograph::shows))
                    .collect(line -> line.replace(ABOVE_THE_KERB, ""));
            PARTS.forEach(
                    (words, name) -> told.select(line -> words.matcher(line).find())
                            .reject(line -> name.matcher(drawn).find())
                            .forEach(line -> faults.add(detail.id() + ": " + line)));
        }
        assertEquals("", faults.sortThis().makeString("\n"));
    }

    /** What goes through at a spot: how the text names each of its own parts, and how a body or what was left out does. */
    private static final Map<Pattern, Pattern> POINT_PARTS = Map.ofEntries(
            part("\\b[Ff]lash", "flashing"),
            part("\\bboot\\b", "boot|stand-offs"),
            part("\\bcollar of the membrane\\b", "collar of the membrane"),
            part("\\bblock\\b", "block"),
            part("\\bpads?\\b", "pad"),
            part("\\bsmall roof\\b", "small roof"),
            part("\\bwrapp?(ed|s)?\\b|\\bWrap\\b", "wrap|shell|sleeve|boards round|collar"),
            part("\\bgap to the face\\b|\\bits gap\\b", "gap"));

    @Test
    void whatIsToldOfPointsIsDrawnOrSaidToBeLeftOut() {
        MutableList<String> faults = Lists.mutable.empty();
        for (Detail detail : CatalogueFile.builtIn().details()) {
            if (!(detail.drawing() instanceof PointDrawing drawing)) {
                continue;
            }
            String drawn = drawing.bodies()
                    .collect(PointDrawing.Body::what)
                    .newWith(drawing.drawnRound())
                    .newWithAll(drawing.parameters().collect(DetailParameter::name))
                    .makeString("; ");
            POINT_PARTS.forEach((words, name) -> Lists.immutable
                    .of(detail.name(), detail.looksLike())
                    .newWithAll(detail.order())
                    .select(line -> words.matcher(line).find())
                    .reject(line -> name.matcher(drawn).find())
                    .forEach(line -> faults.add(detail.id() + ": " + line)));
        }
        assertEquals("", faults.sortThis().makeString("\n"));
    }

    private static String name(Statement statement) {
        if (statement instanceof Statement.Where where) {
            return name(where.statement());
        }
        if (statement instanceof Statement.PaintBlock block) {
            return block.what();
        }
        if (statement instanceof Statement.PaintShape shape) {
            return shape.what();
        }
        return statement instanceof Statement.PaintStrip strip ? strip.what() : "";
    }
}
