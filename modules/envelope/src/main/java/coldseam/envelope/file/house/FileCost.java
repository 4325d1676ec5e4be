package coldseam.envelope.file.house;

import coldseam.envelope.Alternatives;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.quantity.QuantityParser;
import coldseam.files.quantity.UnreadableException;
import java.util.Optional;
import java.util.function.Function;

/** A cost of the alternatives' part, as written, with its source. */
record FileCost(Per per, Optional<Located<String>> cost, Optional<String> source) {

    /** What a cost is for. */
    enum Per {
        METRE(PriceRange.METRE, written -> {
            QuantityParser.PriceOfLength price = QuantityParser.parsePriceOfLength(written);
            return new QuantityParser.PriceOf(price.perMetre(), price.currency());
        }),
        SQUARE_METRE(PriceRange.SQUARE_METRE, QuantityParser::parsePriceOfArea),
        PIECE(PriceRange.PIECE, QuantityParser::parsePriceEach);

        private final PriceRange range;
        private final Function<String, QuantityParser.PriceOf> parser;

        Per(PriceRange range, Function<String, QuantityParser.PriceOf> parser) {
            this.range = range;
            this.parser = parser;
        }
    }

    /** Adds what is wrong with it: no price, or no source. */
    void check(Faults faults) {
        if (cost.isEmpty()) {
            return;
        }
        try {
            QuantityParser.PriceOf price = price();
            per.range
                    .unless(price.each(), price.currency())
                    .ifPresent(allowed -> faults.add(
                            cost.get().place(),
                            per.range.asked(),
                            cost.get().value(),
                            allowed,
                            "check the amount and its unit"));
        } catch (UnreadableException bad) {
            faults.add(cost.get().place(), "cost: " + bad.asked(), bad.got(), bad.allowed(), bad.next());
        }
        source.filter(SourceText::isNone)
                .ifPresent(text -> faults.add(
                        cost.get().place(), "source: " + SourceText.ASKED, '"' + text + '"', SourceText.NEXT));
        if (source.isEmpty()) {
            faults.add(
                    cost.get().place(),
                    "a cost needs the source it comes from",
                    "cost: " + cost.get().value() + " without source",
                    "add source beside it, such as source: quotation of 3 October");
        }
    }

    /** Its currency; empty where there is no cost, or none that can be read. */
    Optional<Located<String>> currency() {
        try {
            return cost.map(each -> new Located<>(price().currency(), each.place()));
        } catch (UnreadableException told) {
            return Optional.empty();
        }
    }

    Optional<Alternatives.Price> toPrice() {
        return cost.map(each -> new Alternatives.Price(price().each(), source.orElseThrow()));
    }

    private QuantityParser.PriceOf price() {
        return per.parser.apply(cost.orElseThrow().value());
    }
}
