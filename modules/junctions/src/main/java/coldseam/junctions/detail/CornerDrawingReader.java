package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Measured;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Sets;

/** Reads the drawing of a corner's detail file. */
final class CornerDrawingReader extends TermsReader {

    private final FileCorner file;
    private final ImmutableList<String> surfaces;

    CornerDrawingReader(FileCorner file, String content, Faults faults) {
        super(
                file,
                content,
                faults,
                DrawingNames.of(file.kind()),
                "a surface",
                file.kind().surfaces());
        this.file = file;
        this.surfaces = file.kind().surfaces();
    }

    CornerDrawing drawing() {
        file.meets().forEach(this::checkKind);
        return new CornerDrawing(
                file.kind(),
                terms(),
                file.meets().toImmutableMap(FileCorner.FileMeets::kind, each -> Sets.immutable.withAll(each.details())),
                collected(file.drawing(), this::box));
    }

    private void checkKind(FileCorner.FileMeets meets) {
        ImmutableList<JunctionKind> kinds =
                file.kind().edges().collect(each -> each.kind()).distinct();
        if (!kinds.contains(meets.kind())) {
            faults.add(
                    meets.place(),
                    "an edge of a " + file.kind().label() + " is needed",
                    '"' + meets.kind().label() + '"',
                    kinds.collect(JunctionKind::label).makeString(", "),
                    "name one of them");
        }
    }

    @Override
    String alike() {
        return "two lengths, two numbers, or two lines of the same surface";
    }

    private Optional<CornerDrawing.Box> box(FileCorner.FileBox box) {
        int before = faults.count();
        box.between()
                .reject(each -> surfaces.contains(each.name()))
                .forEach(each -> faults.add(
                        each.place(),
                        "a box lies between lines of the corner's surfaces",
                        '"' + each.name() + '"',
                        surfaces.makeString(", "),
                        "name one of them"));
        if (box.between().isEmpty() && !box.onlyOpen()) {
            faults.add(
                    box.material().place(),
                    "a box needs lines",
                    box.box() + " without between or only-open",
                    "between: {" + surfaces.getFirst() + ": [line, line]}, or only-open: true",
                    "say where it lies");
        }
        Optional<CornerDrawing.Filling> filling = filling(box.material());
        Optional<CornerDrawing.Where> where =
                box.where().flatMap(this::built).map(each -> new CornerDrawing.Where(each.band(), each.build()));
        ImmutableList<Optional<CornerDrawing.Range>> ranges = surfaces.collectWithIndex((surface, axis) -> box.between()
                .detectOptional(each -> each.name().equals(surface))
                .flatMap(each -> range(each, DrawingNames.AXES.get(axis))));
        return faults.count() > before
                ? Optional.empty()
                : Optional.of(new CornerDrawing.Box(box.box(), filling.orElseThrow(), ranges, box.onlyOpen(), where));
    }

    private Optional<CornerDrawing.Range> range(Named<FileCorner.FileRange> range, Measured axis) {
        Optional<Expression> from = line(range.value().from(), axis, range.name());
        Optional<Expression> to = line(range.value().to(), axis, range.name());
        return from.isPresent() && to.isPresent()
                ? Optional.of(new CornerDrawing.Range(from.get(), to.get()))
                : Optional.empty();
    }

    private Optional<Expression> line(Located<String> text, Measured axis, String surface) {
        return measuring(
                text,
                axis,
                "a line of the " + surface,
                "such as " + surface + ".outside or " + surface + ".inside + 100 mm",
                "give a line of that surface");
    }

    private Optional<CornerDrawing.Filling> filling(Located<String> text) {
        if (text.value().startsWith(SAME_AS)) {
            return layer(text.value().substring(SAME_AS.length()).strip(), text.place(), true)
                    .map(layer -> new CornerDrawing.Filling(
                            Optional.empty(),
                            Optional.of(new CornerDrawing.Like(
                                    layer.band(), layer.role().orElseThrow()))));
        }
        return Optional.of(new CornerDrawing.Filling(Optional.of(text.value()), Optional.empty()));
    }
}
