package coldseam.files;

import coldseam.files.quantity.Phrase;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Collects faults, so that all are reported at once. */
public final class Faults {

    /** More faults than these are counted only: nobody reads them, and many come of one slip. */
    static final int MOST_SHOWN = 200;

    private final MutableList<Fault> list = Lists.mutable.empty();

    public void add(Fault fault) {
        list.add(fault);
    }

    /** Adds one from its parts; see {@link Fault}. */
    public void add(Position place, String asked, String got, String allowed, String next) {
        add(new Fault(place, asked, got, allowed, next));
    }

    /** Adds one whose next step says what is allowed. */
    public void add(Position place, String asked, String got, String next) {
        add(place, asked, got, "", next);
    }

    /** As above, with values among its words. */
    public void add(Position place, String asked, Phrase got, String next) {
        add(place, asked, got, Phrase.of(""), next);
    }

    /** Adds one at a value, which is shown as the file has it. */
    public void add(SourceNode got, String asked, String allowed, String next) {
        add(got.place(), asked, Phrase.quoted(got.shown()), Phrase.of(allowed), next);
    }

    /** Adds one from its parts, some of them values. */
    public void add(Position place, String asked, Phrase got, Phrase allowed, String next) {
        add(new Fault(place, asked, got, allowed, next));
    }

    /** Whether there are none. */
    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** How many. */
    public int count() {
        return list.size();
    }

    /** All, each once, by position; of very many the first, and at the last of these how many more there are. */
    public ImmutableList<Fault> sorted() {
        MutableList<Fault> all = list.distinct().toSortedList();
        int more = all.size() - MOST_SHOWN;
        if (more <= 0) {
            return all.toImmutable();
        }
        MutableList<Fault> shown = all.take(MOST_SHOWN);
        return shown.with(new Fault(
                        shown.getLast().place(),
                        "there are more faults after this one",
                        more + " more",
                        "mend these first"))
                .toImmutable();
    }

    /**
     * Ends the reading if there is any fault.
     *
     * @throws FileFaultException with all of them
     */
    public void throwIfAny() {
        if (!isEmpty()) {
            throw new FileFaultException(sorted());
        }
    }
}
