package coldseam.envelope.file.house;

import coldseam.envelope.Submittal;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Noun;
import coldseam.files.SelfChecking;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

@Noun("a submittal")
@Doc("What the audit's first page says of whom it is for; nothing is computed from it.")
record FileSubmittal(
        @Doc("Of the house.") Optional<Located<String>> address,
        @Doc("For whom it is made.") Optional<Located<String>> client,
        @Doc("Who made it.") Optional<Located<String>> preparedBy,
        @Doc("Such as 2026-10-03.") Optional<Located<String>> date,
        @Doc("Such as B.") Optional<Located<String>> revision)
        implements SelfChecking {

    @Override
    public void check(Faults faults) {
        // What is left out is null where something else of the submittal is faulty.
        Stream.of(address, client, preparedBy, revision)
                .filter(Objects::nonNull)
                .flatMap(Optional::stream)
                .forEach(text -> PageText.line(text, faults));
        if (date == null) {
            return;
        }
        try {
            date.map(Located::value).map(LocalDate::parse);
        } catch (DateTimeParseException none) {
            faults.add(
                    date.orElseThrow().place(),
                    "a date is needed",
                    '"' + date.orElseThrow().value() + '"',
                    "year, month and day",
                    "write it as 2026-10-03");
        }
    }

    Submittal submittal() {
        return new Submittal(
                address.map(Located::value),
                client.map(Located::value),
                preparedBy.map(Located::value),
                date.map(Located::value).map(LocalDate::parse),
                revision.map(Located::value));
    }
}
