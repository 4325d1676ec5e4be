package coldseam.junctions.detail;

import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Position;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Measured;
import java.util.Optional;

/** Reads the drawing of a point's detail file. */
final class RoundDrawingReader extends TermsReader {

    private static final String SAME_AS = "same as ";

    private final FilePoint file;

    RoundDrawingReader(FilePoint file, String content, Faults faults) {
        super(file, content, faults, DrawingNames.ofSurface());
        this.file = file;
    }

    RoundDrawing drawing() {
        DrawingTerms terms = terms();
        if (file.drawing().isEmpty()) {
            faults.add(file.point().place(), "the drawing needs a body", "none", "1 or more", "draw what goes through");
        }
        return new RoundDrawing(terms, collected(file.drawing(), this::body), file.drawnRound());
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

    private Optional<Expression> measuring(Located<String> text, Measured wanted, String example) {
        Optional<Expression> found = expression(text.value(), text.place());
        if (found.isPresent() && found.get().measures() != wanted) {
            faults.add(
                    text.place(),
                    wanted.noun() + " is needed",
                    '"' + text.value() + "\", " + found.get().measures().noun(),
                    example,
                    wanted == Measured.DEPTH ? "give the line it is measured from" : "write a length");
            return Optional.empty();
        }
        return found;
    }

    private Optional<RoundDrawing.Turned> body(FilePoint.FileBody each) {
        String length = "a length, such as 8 mm or 2 * radius";
        String line = "a line, such as structure.outside or outside + 150 mm";
        Optional<Expression> diameter = measuring(each.diameter(), Measured.LENGTH, length);
        Optional<Expression> hole = each.hole().flatMap(text -> measuring(text, Measured.LENGTH, length));
        Optional<Expression> from = measuring(each.from(), Measured.DEPTH, line);
        Optional<Expression> to = measuring(each.to(), Measured.DEPTH, line);
        Optional<RoundDrawing.Filling> filling = filling(each.material());
        boolean whole = hole.isPresent() == each.hole().isPresent();
        if (!whole || diameter.isEmpty() || from.isEmpty() || to.isEmpty() || filling.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new RoundDrawing.Turned(
                each.body(), filling.get(), diameter.get(), hole, from.get(), to.get(), each.drawnOnly()));
    }

    private Optional<RoundDrawing.Filling> filling(Located<String> text) {
        if (text.value().startsWith(SAME_AS)) {
            return role(text.value().substring(SAME_AS.length()).strip(), text.place())
                    .map(role -> new RoundDrawing.Filling(Optional.empty(), Optional.of(role)));
        }
        return Optional.of(new RoundDrawing.Filling(Optional.of(text.value()), Optional.empty()));
    }
}
