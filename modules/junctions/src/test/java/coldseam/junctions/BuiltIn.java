package coldseam.junctions;

import coldseam.junctions.detail.Detail;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.SectionLayout;

/** What comes with the tool, for tests: details laid on what many tests lay them on. */
public final class BuiltIn {

    private BuiltIn() {}

    private record Question(Detail detail, JunctionSetup setup) {}

    private static final Once<Question, Composition> COMPOSED =
            new Once<>(question -> Composer.compose(question.detail, question.setup));

    private static final Once<Question, SectionLayout> LAID =
            new Once<>(question -> SectionLayout.of(question.detail, question.setup));

    /**
     * A detail on the layers of a corner's edge, laid out once for all corners that have it.
     *
     * @throws DetailDoesNotFit as from {@link SectionLayout#of}
     */
    public static SectionLayout laid(Detail detail, JunctionSetup setup) {
        return LAID.answer(new Question(detail, setup));
    }

    /**
     * A detail's section, composed once for all tests that ask for it.
     *
     * @throws DetailDoesNotFit as from {@link Composer#compose}
     */
    public static Composition composed(Detail detail, JunctionSetup setup) {
        return COMPOSED.answer(new Question(detail, setup));
    }
}
