package coldseam.junctions.detail;

import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Position;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Measured;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;

/** Reads the drawing of a point's detail file. */
final class PointDrawingReader extends TermsReader {

    private final FilePoint file;

    PointDrawingReader(FilePoint file, String content, Faults faults) {
        super(file, content, faults, DrawingNames.ofSurface(), "a surface", Lists.immutable.of(DrawingNames.SURFACE));
        this.file = file;
    }

    PointDrawing drawing() {
        DrawingTerms terms = terms();
        if (file.drawing().isEmpty()) {
            faults.add(file.id().place(), "the drawing needs a body", "none", "1 or more", "draw what goes through");
        }
        PointDrawing drawing = new PointDrawing(
                terms, collected(file.drawing(), this::body), file.drawnRound().orElse(""));
        if (drawing.isRound()
                && drawing.bodies().notEmpty()
                && file.drawnRound().isEmpty()) {
            faults.add(
                    file.id().place(),
                    "drawn-round is needed",
                    "none",
                    "a sentence",
                    "say how the true shape became a round one, and what that leaves out");
        }
        return drawing;
    }

    /** {@code insulation}, or {@code surface} where that is allowed. */
    @Override
    Optional<LayerName> layer(String text, Position place, boolean roleNeeded) {
        return text.equals(DrawingNames.SURFACE) && !roleNeeded
                ? Optional.of(new LayerName(DrawingNames.SURFACE, Optional.empty()))
                : role(text, place).map(role -> new LayerName(DrawingNames.SURFACE, Optional.of(role)));
    }

    @Override
    String alike() {
        return "two lengths, two numbers or two lines";
    }

    private Optional<Expression> line(Located<String> text) {
        return measuring(
                text,
                Measured.DEPTH,
                Measured.DEPTH.noun(),
                "a line, such as structure.outside or outside + 150 mm",
                "give the line it is measured from");
    }

    private Optional<PointDrawing.Body> body(FilePoint.FileBody each) {
        int before = faults.count();
        Optional<PointDrawing.Shape> shape = shape(each);
        Optional<Expression> from = line(each.from());
        Optional<Expression> to = line(each.to());
        Optional<PointDrawing.Filling> filling = filling(each.material());
        Optional<Expression> sideways = length(each.sideways());
        Optional<Expression> upwards = length(each.upwards());
        if (each.belowToo() && each.upwards().isEmpty()) {
            faults.add(
                    each.material().place(),
                    "what is there below too stands upwards of the middle",
                    "below-too without upwards",
                    "upwards: a length",
                    "add upwards, or leave out below-too");
        }
        if (faults.count() > before) {
            return Optional.empty();
        }
        return Optional.of(new PointDrawing.Body(
                each.body(),
                filling.orElseThrow(),
                shape.orElseThrow(),
                sideways.isPresent() || upwards.isPresent()
                        ? Optional.of(new PointDrawing.Where(sideways, upwards, each.belowToo()))
                        : Optional.empty(),
                from.orElseThrow(),
                to.orElseThrow(),
                each.drawnOnly()));
    }

    private Optional<Expression> length(Optional<Located<String>> text) {
        return text.flatMap(each -> measuring(
                each,
                Measured.LENGTH,
                Measured.LENGTH.noun(),
                "a length, such as 8 mm, 2 * radius or -1 * gap",
                "write a length"));
    }

    /** Round, or a rectangle. */
    private Optional<PointDrawing.Shape> shape(FilePoint.FileBody each) {
        boolean round = each.diameter().isPresent();
        boolean whole = each.width().isPresent() && each.height().isPresent();
        boolean none = each.width().isEmpty() && each.height().isEmpty();
        if (round ? !none : !whole || each.hole().isPresent()) {
            faults.add(
                    each.material().place(),
                    "a body is round or a rectangle",
                    each.body() + (round ? " with a diameter and a side" : " without diameter, or width and height"),
                    "diameter, with or without hole; or width and height",
                    "write one or the other");
            return Optional.empty();
        }
        return Optional.of(new PointDrawing.Shape(
                length(each.diameter()), length(each.hole()), length(each.width()), length(each.height())));
    }

    private Optional<PointDrawing.Filling> filling(Located<String> text) {
        if (text.value().startsWith(SAME_AS)) {
            return role(text.value().substring(SAME_AS.length()).strip(), text.place())
                    .map(role -> new PointDrawing.Filling(Optional.empty(), Optional.of(role)));
        }
        return Optional.of(new PointDrawing.Filling(Optional.of(text.value()), Optional.empty()));
    }
}
