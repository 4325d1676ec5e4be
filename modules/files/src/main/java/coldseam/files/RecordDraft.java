package coldseam.files;

import java.lang.reflect.RecordComponent;
import java.util.Optional;
import org.eclipse.collections.api.factory.Maps;
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

    void fail() {
        failed = true;
    }

    Optional<T> build(Faults faults) {
        if (failed) {
            return Optional.empty();
        }
        int before = faults.count();
        try {
            T built = construct(type, faults);
            return faults.count() == before ? Optional.of(built) : Optional.empty();
        } catch (BadValueException bad) {
            faults.add(bad.at(places.getOrDefault(bad.component(), place)));
            return Optional.empty();
        }
    }

    private <R> R construct(Class<R> record, Faults faults) {
        RecordComponent[] components = record.getRecordComponents();
        Object[] arguments = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            Class<?> component = components[i].getType();
            if (components[i].isAnnotationPresent(Inline.class)) {
                arguments[i] = construct(component, faults);
            } else {
                arguments[i] = component == Position.class ? place : values.get(components[i].getName());
            }
        }
        R built = Shape.construct(record, arguments);
        if (built instanceof SelfChecking checking) {
            checking.check(faults);
        }
        return built;
    }
}
