package coldseam.junctions.detail;

import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Reads detail files, of junctions, points and corners. */
public final class DetailFile {

    private DetailFile() {}

    /** Reads a detail from text; {@code name} stands in messages. */
    public static Detail read(String name, String content) {
        Faults faults = new Faults();
        Optional<Detail> detail = SourceDocument.read(name, content.getBytes(StandardCharsets.UTF_8), faults)
                .flatMap(tree -> read(tree, content, faults));
        faults.throwIfAny();
        return detail.orElseThrow();
    }

    /** Binds a tree; adds what is wrong to the faults. */
    public static Optional<Detail> read(SourceNode tree, String content, Faults faults) {
        int before = faults.count();
        Optional<FileBridge> bound = Binder.bind(tree, FileBridge.class, faults);
        Optional<DetailDrawing> drawing = bound.map(file -> file.read(content, faults));
        return faults.count() > before ? Optional.empty() : bound.map(file -> detail(file, drawing.orElseThrow()));
    }

    private static Detail detail(FileBridge file, DetailDrawing drawing) {
        FileText text = file.text();
        return new Detail(
                file.id().value(),
                file.kind(),
                file.alsoFor(),
                text.name(),
                text.rank(),
                suits(text),
                text.looksLike(),
                text.order(),
                text.connections().byControl(),
                text.failures(),
                text.photographs(),
                Cautions.told(text.cautions()),
                file.cost().stream()
                        .mapToObj(amount -> new Cost(amount, per(file), "", "the detail's own file"))
                        .findFirst(),
                drawing,
                false);
    }

    private static Cost.Per per(FileBridge file) {
        return file instanceof FileDetail ? Cost.Per.METRE : Cost.Per.POINT;
    }

    private static Suits suits(FileText text) {
        return new Suits(text.suits().isEmpty() ? Suits.EVERYWHERE.work() : text.suits(), text.takesDown());
    }
}
