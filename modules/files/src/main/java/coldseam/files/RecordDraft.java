package coldseam.files;

import java.lang.reflect.RecordComponent;
import java.util.Optional;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;

/** The values of a record, and of those inlined in it, while they are collected. */
final class RecordDraft<T> {
    private final Class<T> type;
    private final Position place;
    private final MutableMap<String, Object> values = Maps.mutable.empty();
    private final MutableMap<String, Position> places = Maps.mutable.empty();
    private boolean failed;

    RecordDraft(Class<T> type, Position place) {
        this.type = type;
        this.place = place;
    }

    void set(RecordComponent component, Object value) {
        values.put(component.getName(), value);
    }

    void place(RecordComponent component, Position where) {
        places.put(component.getName(), where);
    }

    /** One of its values is faulty, and said to be. */
    void fail() {
        failed = true;
    }

    /** The record; empty where it cannot be made. Its own checks are made as far as faulty parts let them. */
    Optional<T> build(Faults faults) {
        if (failed) {
            checkWhatThereIs(faults);
            return Optional.empty();
        }
        try {
            return Optional.of(construct(type, faults));
        } catch (BadValueException bad) {
            faults.add(bad.at(places.getOrDefault(bad.component(), place)));
            return Optional.empty();
        } catch (RuntimeException consequence) {
            // A part whose own checks found a fault is here as it was written, and a check may trip over it.
            if (faults.isEmpty()) {
                throw consequence;
            }
            return Optional.empty();
        }
    }

    /**
     * Faults of a part must not hide the record's own until they are mended. What is missing is null here, so that a check which
     * needs it cannot mistake it for something left out, and ends.
     */
    private void checkWhatThereIs(Faults faults) {
        if (!SelfChecking.class.isAssignableFrom(type)) {
            return;
        }
        try {
            construct(type, faults);
        } catch (RuntimeException missing) {
            // Whatever it is comes of a part whose fault is told: what can be checked without it has been.
            failed = true;
        }
    }

    private <R> R construct(Class<R> record, Faults faults) {
        ImmutableList<Object> arguments = RecordParts.of(record).components().collect(component -> {
            if (component.isAnnotationPresent(Inline.class)) {
                return construct(component.getType(), faults);
            }
            return component.getType() == Position.class ? place : values.get(component.getName());
        });
        R built = record.cast(RecordParts.of(record).whole(arguments.toArray()));
        if (built instanceof SelfChecking checking) {
            checking.check(faults);
        }
        return built;
    }
}
