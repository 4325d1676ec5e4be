package coldseam.junctions.catalogue;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Nearest;
import coldseam.files.Position;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** What a house file says of details and what only the details themselves can judge: their parameters and prices. */
public final class ChoiceChecks {

    private final Faults faults;

    private ChoiceChecks(Faults faults) {
        this.faults = faults;
    }

    /**
     * Adds every parameter that a chosen detail does not have or does not allow, and every price of a detail that is not
     * there.
     *
     * @param catalogue with the house's own details
     */
    public static void check(LoadedHouse loaded, Catalogue catalogue, Faults faults) {
        ChoiceChecks checks = new ChoiceChecks(faults);
        loaded.choices()
                .forEach(each ->
                        catalogue.find(each.choice().detail()).ifPresent(detail -> checks.parameters(detail, each)));
        loaded.detailPrices().forEachKeyValue((name, place) -> checks.price(name, place, catalogue));
    }

    private void parameters(Detail detail, LoadedHouse.PlacedChoice choice) {
        choice.parameters().forEach(given -> parameter(detail, given, faults));
    }

    /** Adds a parameter that the detail does not have, or a value that it does not allow. */
    public static void parameter(Detail detail, Named<Located<Double>> given, Faults faults) {
        String name = given.name();
        Optional<DetailParameter> parameter =
                detail.parameters().detectOptional(each -> each.name().equals(name));
        if (parameter.isEmpty()) {
            unknown(detail, name, given.place(), faults);
        } else if (!parameter.get().allows(given.value().value())) {
            faults.add(
                    given.value().place(),
                    "the parameter " + name + " of " + detail.id() + " is out of the detail's range",
                    length(given.value().value()),
                    length(parameter.get().least())
                            .and(" to ")
                            .and(length(parameter.get().most())),
                    "write a length in that range; it is: " + parameter.get().says());
        }
    }

    private static void unknown(Detail detail, String name, Position place, Faults faults) {
        ImmutableList<String> names = detail.parameters().collect(DetailParameter::name);
        faults.add(
                place,
                detail.id() + " has no such parameter",
                '"' + name + '"',
                names.isEmpty() ? "none: this detail has no parameters" : names.makeString(", "),
                Nearest.meant(name, names).orElse("remove it"));
    }

    private void price(String name, Position place, Catalogue catalogue) {
        ImmutableList<String> ids = catalogue.ids(JunctionKind.class);
        if (!ids.contains(name)) {
            faults.add(
                    place,
                    "the price of a detail needs its id, or the file by which a junction choice names it",
                    '"' + name + '"',
                    Nearest.meant(name, ids).orElse("run \"coldseam catalogue\" for the details there are"));
        }
    }

    private static Phrase length(double metres) {
        return Phrase.of(metres, Dimension.LENGTH);
    }
}
