package coldseam.report.words;

import coldseam.envelope.Control;
import coldseam.files.Words;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Words for control layers. */
final class LayerWords {

    private LayerWords() {}

    /** Several in a phrase: "insulation", "air and vapour control", "insulation, air and water control". */
    static String phrase(ImmutableList<Control> controls) {
        ImmutableList<Control> others = controls.reject(control -> control == Control.HEAT);
        ImmutableList<String> insulation =
                controls.contains(Control.HEAT) ? Lists.immutable.of("insulation") : Lists.immutable.empty();
        String listed = Phrases.listed(insulation.newWithAll(others.collect(Words::word)));
        return others.isEmpty() ? listed : listed + " control";
    }
}
