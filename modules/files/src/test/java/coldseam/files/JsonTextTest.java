package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Test;

class JsonTextTest {

    enum Kind {
        SLAB_EDGE,
        CORNER
    }

    record Inner(double value, int count, boolean flag) {}

    record Outer(
            String someText,
            Optional<String> left,
            OptionalDouble out,
            OptionalDouble in,
            ImmutableList<Inner> list,
            ImmutableMap<String, Double> map,
            ImmutableMap<Kind, Double> byKind,
            ImmutableSet<Kind> kinds,
            ImmutableList<Integer> none) {}

    @Test
    void writesTheSameBytesEachTime() {
        Outer outer = new Outer(
                "a : \"b\" °",
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(-0.0),
                Lists.immutable.with(new Inner(0.1 + 0.2, -3, true), new Inner(1e-7, 0, false)),
                Maps.immutable.with("z", 1.0, "a", 1e20, "m", 2.5),
                Maps.immutable.with(Kind.CORNER, 1.0, Kind.SLAB_EDGE, 2.0),
                Sets.immutable.with(Kind.CORNER, Kind.SLAB_EDGE),
                Lists.immutable.empty());
        assertEquals("""
                {
                  "someText": "a : \\"b\\" °",
                  "in": 0,
                  "list": [
                    {
                      "value": 0.30000000000000004,
                      "count": -3,
                      "flag": true
                    },
                    {
                      "value": 1.0E-7,
                      "count": 0,
                      "flag": false
                    }
                  ],
                  "map": {
                    "a": 1.0E20,
                    "m": 2.5,
                    "z": 1
                  },
                  "byKind": {
                    "corner": 1,
                    "slab edge": 2
                  },
                  "kinds": [
                    "slab edge",
                    "corner"
                  ],
                  "none": []
                }
                """, JsonText.write(outer));
    }

    @Test
    void refusesWhatJsonCannotSay() {
        var notFinite = assertThrows(
                IllegalArgumentException.class,
                () -> JsonText.write(Lists.immutable.with(new Inner(Double.NaN, 1, true))));
        assertEquals("a finite number is needed at $[0].value; got NaN", notFinite.getMessage());
        var noForm = assertThrows(IllegalArgumentException.class, () -> JsonText.write(new Object()));
        assertEquals("no JSON form for java.lang.Object at $", noForm.getMessage());
    }
}
