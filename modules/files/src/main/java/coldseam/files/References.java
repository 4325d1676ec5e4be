package coldseam.files;

import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.set.MutableSet;

/** Names defined and referred to in one file; checked after all of it is bound, since a name may come before its definition. */
final class References {

    private record Use(String kind, String or, String name, Position place) {}

    private final Faults faults;
    private final MutableMap<String, MutableMap<String, Position>> defined = Maps.mutable.empty();
    private final MutableMap<String, MutableMap<String, Position>> aloud = Maps.mutable.empty();
    private final MutableList<Use> uses = Lists.mutable.empty();
    private final MutableSet<String> ignored = Sets.mutable.empty();

    References(Faults faults) {
        this.faults = faults;
    }

    void define(String kind, String name, Position place) {
        defined.getIfAbsentPut(kind, Maps.mutable::empty).putIfAbsent(name, place);
        Position first = aloud.getIfAbsentPut(kind, Maps.mutable::empty).putIfAbsent(Words.aloud(name), place);
        if (first != null) {
            faults.add(
                    place,
                    "each " + kind + " needs a name of its own",
                    '"' + name + '"',
                    "it is used at line " + first.line() + " already: rename one of the two");
        }
    }

    void refer(Refers refers, String name, Position place) {
        uses.add(new Use(refers.value(), refers.or(), name, place));
    }

    /** Some names of this kind may be defined in the file, though perhaps none is. */
    void open(String kind) {
        defined.getIfAbsentPut(kind, Maps.mutable::empty);
    }

    /** Names of this kind are not checked, since what defines them cannot be read. */
    void ignore(String kind) {
        ignored.add(kind);
    }

    void check(ImmutableMap<String, KnownNames> known) {
        int unknown = 0;
        for (Use use : uses.reject(each -> ignored.contains(each.kind()))) {
            Optional<KnownNames> outside = Optional.ofNullable(known.get(use.kind()));
            MutableMap<String, Position> here = defined.getIfAbsentValue(use.kind(), Maps.mutable.empty());
            boolean checkable = outside.isPresent() || defined.containsKey(use.kind());
            boolean found = use.name().equals(use.or())
                    || here.containsKey(use.name())
                    || outside.map(each -> each.has().test(use.name())).orElse(false);
            if (checkable && !found) {
                MutableList<String> all = Lists.mutable.empty();
                // Past what is shown nothing is suggested: each suggestion looks through every name.
                if (unknown++ < Faults.MOST_SHOWN) {
                    all.addAllIterable(here.keySet());
                    outside.ifPresent(each -> all.addAllIterable(each.listed()));
                }
                if (!use.or().isEmpty()) {
                    all.add(use.or());
                }
                faults.add(
                        use.place(),
                        "no " + use.kind() + " has this name",
                        '"' + use.name() + '"',
                        Nearest.among(use.name(), all.distinct().toSortedList()),
                        outside.flatMap(each -> each.meant(use.name()))
                                .map(Nearest::question)
                                .or(() -> Nearest.meant(use.name(), all))
                                .or(() -> outside.map(KnownNames::otherwise).filter(each -> !each.isEmpty()))
                                .orElse("write one of these, or define it"));
            }
        }
    }
}
