package coldseam.junctions.store;

import coldseam.conduction.Section;
import coldseam.conduction.solid.SolidBody;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BodySolving;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.Keeping;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.hand.HandDrawing;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Keeps what came of details and their setups, but for the fields, which the solutions' stores have, or why one does not fit, under the hash of all of them, of the accuracy and
 * of the whole tool: of a house of which little was changed, little is composed again.
 *
 * <p>What is drawn by hand is not kept; nor anything more once a solve was held by memory, which another run may better. So the
 * folder must be that of the solutions.
 */
public final class ResultStore implements Keeping {

    private final KeptFolder folder;
    private final byte[] tool;
    private final RecordBytes.Fields fields;

    /**
     * @param tool what tells the tool's answers from those of another build
     * @param sections asked for a field, which they have kept, or solve anew
     * @param bodies likewise
     */
    public ResultStore(KeptFolder folder, String tool, SectionSolving sections, BodySolving bodies) {
        this.folder = folder;
        this.tool = tool.getBytes(StandardCharsets.UTF_8);
        this.fields = (question, accuracy) -> question instanceof Section section
                ? sections.solve(section, accuracy).field()
                : bodies.solve((SolidBody) question, accuracy).field();
    }

    @Override
    @SuppressWarnings("unchecked")
    public <R extends Record> R answer(ImmutableList<? extends Record> question, Supplier<R> computing) {
        if (RecordBytes.records(question)
                .anySatisfy(each -> each instanceof Detail detail && detail.drawing() instanceof HandDrawing)) {
            return computing.get();
        }
        Record answer = folder.answer(
                Seal.name(tool, RecordBytes.inFull(question)),
                content -> (Record) RecordBytes.read(content, question, fields),
                () -> answer(computing),
                result -> folder.betterable() ? Optional.empty() : Optional.of(RecordBytes.write(result, question)));
        if (answer instanceof Misfit misfit) {
            throw new DetailDoesNotFit(misfit.reasons());
        }
        // Equal questions have answers of one sort.
        return (R) answer;
    }

    /** Why a detail does not fit. */
    private record Misfit(ImmutableList<Phrase> reasons) {}

    private static Record answer(Supplier<? extends Record> computing) {
        try {
            return computing.get();
        } catch (DetailDoesNotFit misfit) {
            return new Misfit(misfit.reasons());
        }
    }
}
