package coldseam.envelope.file;

import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

/** Names defined and referred to in one file; checked after all of it is bound, since a name may come before its definition. */
final class References {

    private record Use(String kind, String name, Position place) {}

    private final Faults faults;
    private final MutableMap<String, MutableMap<String, Position>> defined = Maps.mutable.empty();
    private final MutableList<Use> uses = Lists.mutable.empty();

    References(Faults faults) {
        this.faults = faults;
    }

    void define(String kind, String name, Position place) {
        Position first = defined.getIfAbsentPut(kind, Maps.mutable::empty).putIfAbsent(name, place);
        if (first != null) {
            faults.add(
                    place,
                    "each " + kind + " needs a name of its own",
                    '"' + name + '"',
                    "",
                    "it is used at line " + first.line() + " already: rename one of the two");
        }
    }

    void refer(String kind, String name, Position place) {
        uses.add(new Use(kind, name, place));
    }

    void check(ImmutableMap<String, KnownNames> known) {
        for (Use use : uses) {
            Optional<KnownNames> outside = Optional.ofNullable(known.get(use.kind()));
            MutableMap<String, Position> here = defined.getIfAbsentValue(use.kind(), Maps.mutable.empty());
            boolean checkable = outside.isPresent() || defined.containsKey(use.kind());
            boolean found = here.containsKey(use.name())
                    || outside.map(each -> each.has().test(use.name())).orElse(false);
            if (checkable && !found) {
                MutableList<String> all = Lists.mutable.withAll(here.keySet());
                outside.ifPresent(each -> all.addAllIterable(each.listed()));
                faults.add(
                        use.place(),
                        "no " + use.kind() + " has this name",
                        '"' + use.name() + '"',
                        listed(all),
                        Binder.meant(use.name(), all).orElse("define it, or write a name that is"));
            }
        }
    }

    /** A long list is not repeated in each message. */
    private static String listed(MutableList<String> all) {
        int most = 12;
        MutableList<String> sorted = all.toSortedList().distinct();
        if (sorted.size() <= most) {
            return sorted.makeString(", ");
        }
        return sorted.take(most).makeString(", ") + " and " + (sorted.size() - most) + " more";
    }
}
