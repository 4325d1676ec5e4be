package coldseam.envelope.file.house;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Selector;
import coldseam.files.BadValueException;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Located;
import coldseam.files.Noun;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

@Noun("a selection of junctions")
record FileSelector(
        @Doc("Kinds of junction meant, any of these.") @Default("")
        ImmutableSet<JunctionKind> kinds,

        @Doc("Names of surfaces or openings that must all be beside the junction.") @Default("")
        ImmutableList<Located<String>> surfaces) {

    FileSelector {
        if (kinds.isEmpty() && surfaces.isEmpty()) {
            throw new BadValueException(
                    "", "a junction is chosen by its kind, its surfaces or both", "neither", "add kinds or surfaces");
        }
    }

    Selector selector() {
        return new Selector(kinds, surfaces.collect(Located::value));
    }
}
