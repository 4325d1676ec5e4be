package coldseam.files;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** How the records of a class are taken apart and put together. */
public final class RecordParts {

    /** Kept, since reflection gives new ones each time, whose annotations are then read again. */
    private static final ClassValue<RecordParts> KNOWN = new ClassValue<>() {
        @Override
        protected RecordParts computeValue(Class<?> type) {
            return new RecordParts(type);
        }
    };

    private final ImmutableList<RecordComponent> components;
    private final ImmutableList<Method> accessors;
    private final Constructor<?> canonical;

    private RecordParts(Class<?> type) {
        components = Lists.immutable.with(type.getRecordComponents());
        accessors = components.collect(RecordComponent::getAccessor);
        accessors.forEach(each -> each.setAccessible(true));
        try {
            canonical = type.getDeclaredConstructor(
                    components.collect(RecordComponent::getType).toArray(new Class<?>[0]));
            canonical.setAccessible(true);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException("no canonical constructor in " + type, impossible);
        }
    }

    /** Those of a class of records. */
    public static RecordParts of(Class<?> type) {
        return KNOWN.get(type);
    }

    /** In order. */
    public ImmutableList<RecordComponent> components() {
        return components;
    }

    /** The value of the i-th component. */
    public Object part(Object record, int i) {
        try {
            return accessors.get(i).invoke(record);
        } catch (IllegalAccessException | InvocationTargetException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /**
     * A record of these values.
     *
     * @throws BadValueException where its constructor does
     */
    public Object whole(Object... values) {
        try {
            return canonical.newInstance(values);
        } catch (InvocationTargetException thrown) {
            if (thrown.getCause() instanceof BadValueException bad) {
                throw bad;
            }
            throw new IllegalStateException("from " + canonical, thrown.getCause());
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException(canonical + " cannot be called", broken);
        }
    }
}
