package coldseam.envelope.file.house;

import coldseam.envelope.Prices;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.quantity.Price;
import coldseam.files.quantity.UnreadableException;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("prices")
@Doc("Prices for the money columns.")
record FilePrices(
        @Doc("Of delivered heat, such as 0.12 EUR/kWh or 1.40 USD/therm.")
        Optional<String> heat,

        @Doc("Over which a saving is counted, in years.")
        @Default("30")
        @Bounds(atLeast = "1", atMost = "60", usual = "20 to 40")
        double years,

        @Doc("What details cost for each length of junction, by their ids or files.") @Default("")
        ImmutableList<Named<FileDetailPrice>> details) {

    FilePrices {
        heat.ifPresent(written -> plausible("heat", PriceRange.HEAT, written));
        ImmutableList<String> currencies = currencies(heat, details);
        if (currencies.size() > 1) {
            throw new BadValueException(
                    details.isEmpty() ? "heat" : "details",
                    "all prices are in one currency",
                    currencies.makeString(", "),
                    "convert them to one");
        }
    }

    private static void plausible(String key, PriceRange range, String written) {
        try {
            range.unless(range.price(written)).ifPresent(allowed -> {
                throw new BadValueException(key, range.asked(), written, allowed, "check the amount and its unit");
            });
        } catch (UnreadableException bad) {
            throw new BadValueException(key, key + ": " + bad.asked(), bad.got(), bad.allowed(), bad.next());
        }
    }

    private static ImmutableList<String> currencies(
            Optional<String> heat, ImmutableList<Named<FileDetailPrice>> details) {
        return Lists.immutable
                .withAll(heat.map(PriceRange.HEAT::price).map(Price::currency).stream()
                        .toList())
                .newWithAll(details.collect(each -> each.value().price().currency()))
                .distinct();
    }

    @Noun("the price of a detail")
    @Doc("What a detail costs for each length of junction.")
    record FileDetailPrice(
            @Doc("Such as 35 EUR/m or 11 USD/ft.") String cost,

            @Doc("Where the price comes from, such as \"quotation of 3 October\".")
            String source) {

        FileDetailPrice {
            SourceText.require("source", source);
            plausible("cost", PriceRange.METRE, cost);
        }

        Price price() {
            return PriceRange.METRE.price(cost);
        }
    }

    /** @param otherwise the currency where no price says one */
    Prices prices(String otherwise) {
        Optional<Price> price = heat.map(PriceRange.HEAT::price);
        return new Prices(
                price.isPresent() ? OptionalDouble.of(price.get().each()) : OptionalDouble.empty(),
                currencies(heat, details).getFirstOptional().orElse(otherwise),
                years,
                details.toImmutableMap(
                        Named::name,
                        each -> new Prices.OfDetail(
                                each.value().price().each(), each.value().source())));
    }
}
