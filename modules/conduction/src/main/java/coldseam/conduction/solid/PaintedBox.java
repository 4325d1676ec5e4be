package coldseam.conduction.solid;

import java.util.Optional;
import java.util.function.Function;

/** A painted box; a later one covers an earlier one, solids and air alike. */
public sealed interface PaintedBox {

    /** Where. */
    Cuboid box();

    /** The result of the function that fits this kind. */
    <T> T match(Function<Solid, T> solid, Function<Air, T> air, Function<Adiabatic, T> adiabatic);

    /**
     * Material.
     *
     * @param conductivity W/(m·K), greater than 0
     */
    record Solid(String material, double conductivity, Cuboid box) implements PaintedBox {

        @Override
        public <T> T match(Function<Solid, T> solid, Function<Air, T> air, Function<Adiabatic, T> adiabatic) {
            return solid.apply(this);
        }
    }

    /**
     * Air of an environment.
     *
     * @param own resistances of the surfaces that face this box; the environment's where empty
     */
    record Air(String environment, Cuboid box, Optional<Faces> own) implements PaintedBox {

        /** Air whose surfaces have the environment's resistances. */
        public Air(String environment, Cuboid box) {
            this(environment, box, Optional.empty());
        }

        @Override
        public <T> T match(Function<Solid, T> solid, Function<Air, T> air, Function<Adiabatic, T> adiabatic) {
            return air.apply(this);
        }
    }

    /** Nothing that takes or gives heat. */
    record Adiabatic(Cuboid box) implements PaintedBox {

        @Override
        public <T> T match(Function<Solid, T> solid, Function<Air, T> air, Function<Adiabatic, T> adiabatic) {
            return adiabatic.apply(this);
        }
    }
}
