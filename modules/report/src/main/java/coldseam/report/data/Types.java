package coldseam.report.data;

import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.envelope.Point3;
import coldseam.files.JsonForm;
import coldseam.files.JsonType;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Sorts of values that many objects have. */
public final class Types {

    /** Proven bounds. */
    public static final JsonType<Interval> BOUNDS = JsonForm.<Interval>of("BoundsData")
            .with("lower", JsonType.NUMBER, Interval::lower)
            .with("upper", JsonType.NUMBER, Interval::upper);

    public static final JsonType<ImmutableList<String>> TEXTS = JsonType.TEXT.list();

    static final JsonType<ImmutableList<Double>> NUMBERS = JsonType.NUMBER.list();

    /** A word of a closed list that may grow. */
    static final JsonType<Enum<?>> WORD = JsonType.TEXT.from(Types::word);

    static final JsonType<Point> POINT = NUMBERS.from(p -> Lists.immutable.of(p.x(), p.y()));
    static final JsonType<Point3> PLACE = NUMBERS.from(p -> Lists.immutable.of(p.x(), p.y(), p.z()));

    private Types() {}

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
