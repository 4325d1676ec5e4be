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

    /** Years in which somebody hands in such an audit (judgement). */
    private static final int FIRST = 2000;

    private static final int LAST = 2099;

    @Override
    public void check(Faults faults) {
        // What is left out is null where something else of the submittal is faulty.
        Stream.of(address, client, preparedBy, revision)
                .filter(Objects::nonNull)
                .flatMap(Optional::stream)
                .forEach(text -> PageText.line(text, faults));
        // Who prepared it may be certified himself.
        Stream.of(address, client, revision)
                .filter(Objects::nonNull)
                .flatMap(Optional::stream)
                .forEach(text -> PageText.praise(text, faults));
        if (date != null) {
            date.filter(text -> !isDate(text.value()))
                    .ifPresent(text -> faults.add(
                            text.place(),
                            "a date is needed",
                            '"' + text.value() + '"',
                            "year, month and day, of the years " + FIRST + " to " + LAST,
                            "write it as 2026-10-03"));
        }
    }

    private static boolean isDate(String text) {
        try {
            int year = LocalDate.parse(text).getYear();
            return year >= FIRST && year <= LAST;
        } catch (DateTimeParseException none) {
            return false;
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
