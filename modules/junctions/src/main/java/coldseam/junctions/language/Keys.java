package coldseam.junctions.language;

import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Position;
import coldseam.files.SourceNode;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/** The keys of one mapping, each taken once; what nobody took is refused. */
public final class Keys {

    private final SourceNode.Mapping mapping;
    private final Faults faults;
    private final MutableSet<String> taken = Sets.mutable.empty();

    public Keys(SourceNode.Mapping mapping, Faults faults) {
        this.mapping = mapping;
        this.faults = faults;
    }

    public Position place() {
        return mapping.place();
    }

    private Optional<SourceNode> value(String key) {
        taken.add(key);
        return mapping.entry(key).map(SourceNode.Entry::value);
    }

    /** The text of a key, where it is there. */
    public Optional<Located<String>> text(String key) {
        return value(key).flatMap(node -> textOf(node, faults));
    }

    /** The texts of a list; none where it is not there. */
    public ImmutableList<Located<String>> texts(String key) {
        return value(key).map(node -> textsOf(node, faults)).orElse(Lists.immutable.empty());
    }

    /** The one text of a key, or those of its list; none where it is not there. */
    public ImmutableList<Located<String>> oneOrMore(String key) {
        return value(key)
                .map(node -> node instanceof SourceNode.Sequence
                        ? textsOf(node, faults)
                        : textOf(node, faults)
                                .map(text -> Lists.immutable.of(text))
                                .orElse(Lists.immutable.empty()))
                .orElse(Lists.immutable.empty());
    }

    /** The items of a list; none where it is not there. */
    public ImmutableList<SourceNode> list(String key) {
        return value(key)
                .filter(SourceNode.Sequence.class::isInstance)
                .map(node -> ((SourceNode.Sequence) node).items())
                .orElse(Lists.immutable.empty());
    }

    /** The entries of a mapping; none where it is not there. */
    public ImmutableList<SourceNode.Entry> mapping(String key) {
        Optional<SourceNode> node = value(key);
        if (node.isPresent() && !(node.get() instanceof SourceNode.Mapping)) {
            faults.add(
                    node.get().place(),
                    key + " is needed",
                    node.get().shown(),
                    "a mapping from roles to lines",
                    "write {insulation: …}");
            return Lists.immutable.empty();
        }
        return node.map(each -> ((SourceNode.Mapping) each).entries()).orElse(Lists.immutable.empty());
    }

    /** Whether a key says true; false where it is not there. */
    public boolean flag(String key) {
        Optional<SourceNode> node = value(key);
        if (node.isEmpty()) {
            return false;
        }
        if (node.get() instanceof SourceNode.Scalar scalar && scalar.kind() == SourceNode.Kind.BOOLEAN) {
            return scalar.text().equalsIgnoreCase("true");
        }
        faults.add(node.get().place(), key + " is needed", node.get().shown(), "true, false", "write one of them");
        return false;
    }

    public void refuseOthers(String what) {
        for (SourceNode.Entry entry : mapping.entries()) {
            if (!taken.contains(entry.key())) {
                faults.add(
                        entry.place(),
                        what + " has no such key",
                        '"' + entry.key() + '"',
                        taken.toSortedList().makeString(", "),
                        "remove it");
            }
        }
    }

    public static Optional<Located<String>> textOf(SourceNode node, Faults faults) {
        if (node instanceof SourceNode.Scalar scalar && scalar.kind() != SourceNode.Kind.EMPTY) {
            return Optional.of(new Located<>(scalar.text().strip(), scalar.place()));
        }
        faults.add(node, "one value is needed", "a line, a length or a word", "write one value");
        return Optional.empty();
    }

    public static ImmutableList<Located<String>> textsOf(SourceNode node, Faults faults) {
        if (!(node instanceof SourceNode.Sequence sequence)) {
            faults.add(node, "a list is needed", "[a, b]", "write it as a list");
            return Lists.immutable.empty();
        }
        MutableList<Located<String>> texts = Lists.mutable.empty();
        sequence.items().each(item -> textOf(item, faults).ifPresent(texts::add));
        return texts.toImmutable();
    }
}
