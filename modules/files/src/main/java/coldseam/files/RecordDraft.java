package coldseam.files;

import java.lang.reflect.RecordComponent;
import java.util.Optional;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.map.MutableMap;

/** The values of a record while they are collected. */
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
        RecordComponent[] components = type.getRecordComponents();
        Object[] arguments = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            arguments[i] = components[i].getType() == Position.class ? place : values.get(components[i].getName());
        }
        try {
            T built = Shape.construct(type, arguments);
            int before = faults.count();
            if (built instanceof SelfChecking checking) {
                checking.check(faults);
            }
            return faults.count() == before ? Optional.of(built) : Optional.empty();
        } catch (BadValueException bad) {
            faults.add(bad.at(places.getOrDefault(bad.component(), place)));
            return Optional.empty();
        }
    }
}
