package coldseam.envelope.file.house;

import coldseam.envelope.Alternatives;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.quantity.Price;
import coldseam.files.quantity.UnreadableException;
import java.util.Optional;

/** A cost of the alternatives' part, as written, with its source. */
record FileCost(PriceRange per, Optional<Located<String>> cost, Optional<String> source) {

    /** Adds what is wrong with it: no price, or no source. */
    void check(Faults faults) {
        if (cost.isEmpty()) {
            return;
        }
        try {
            per.unless(price())
                    .ifPresent(allowed -> faults.add(
                            cost.get().place(),
                            per.asked(),
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

    private Price price() {
        return per.price(cost.orElseThrow().value());
    }
}
