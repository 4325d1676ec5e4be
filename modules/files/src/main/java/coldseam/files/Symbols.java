package coldseam.files;

import coldseam.files.quantity.Dimension;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Keys that are meant by the letter or the word in which calculations and data sheets write their quantity. */
final class Symbols {

    private Symbols() {}

    /** The key of the first part that is such a quantity, as main ones come first; empty where the word is no symbol. */
    static Optional<String> meant(String key, ImmutableList<Shape.Part> parts) {
        String word = key.toLowerCase(Locale.ROOT).replaceFirst("[ _-]?(value|factor)$", "");
        return parts.detectOptional(part -> ScalarBinder.unit(part)
                        .filter(each -> written(each).contains(word))
                        .isPresent())
                .map(Shape.Part::key);
    }

    private static ImmutableList<String> written(Dimension dimension) {
        return switch (dimension) {
            case CONDUCTIVITY -> Lists.immutable.of("lambda", "λ", "k");
            case RESISTANCE -> Lists.immutable.of("r");
            case TRANSMITTANCE -> Lists.immutable.of("u", "uw", "ud");
            case LINEAR_TRANSMITTANCE -> Lists.immutable.of("psi", "ψ");
            case POINT_TRANSMITTANCE -> Lists.immutable.of("chi", "χ");
            case THICKNESS -> Lists.immutable.of("thick", "d");
            case SHARE -> Lists.immutable.of("spacing", "centres", "centers", "fraction");
            case DENSITY -> Lists.immutable.of("rho", "ρ");
            default -> Lists.immutable.empty();
        };
    }
}
