package coldseam.envelope.file.house;

import coldseam.envelope.Prices;
import coldseam.envelope.file.BadValueException;
import coldseam.envelope.file.Bounds;
import coldseam.envelope.file.Default;
import coldseam.envelope.file.Doc;
import coldseam.envelope.file.Noun;
import coldseam.envelope.quantity.QuantityException;
import coldseam.envelope.quantity.QuantityParser;
import java.util.Optional;
import java.util.OptionalDouble;

@Noun("prices")
@Doc("Prices for the money columns.")
record FilePrices(
        @Doc("Of delivered heat, such as 0.12 EUR/kWh or 1.40 USD/therm.")
        Optional<String> heat,

        @Doc("Over which a saving is counted, in years.") @Default("30") @Bounds(atLeast = "1", atMost = "100")
        double years) {

    FilePrices {
        try {
            heat.ifPresent(QuantityParser::parsePrice);
        } catch (QuantityException bad) {
            throw new BadValueException("heat", "heat: " + bad.asked(), bad.got(), bad.allowed(), bad.next());
        }
    }

    Prices prices() {
        Optional<QuantityParser.Price> price = heat.map(QuantityParser::parsePrice);
        return new Prices(
                price.isPresent() ? OptionalDouble.of(price.get().perKilowattHour()) : OptionalDouble.empty(),
                price.map(QuantityParser.Price::currency).orElse(""),
                years);
    }
}
