package coldseam.envelope.file.house;

import coldseam.envelope.Submittal;
import coldseam.files.BadValueException;
import coldseam.files.Doc;
import coldseam.files.Noun;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

@Noun("a submittal")
@Doc("What the audit's first page says of whom it is for; nothing is computed from it.")
record FileSubmittal(
        @Doc("Of the house.") Optional<String> address,
        @Doc("For whom it is made.") Optional<String> client,
        @Doc("Who made it.") Optional<String> preparedBy,
        @Doc("Such as 2026-10-03.") Optional<String> date,
        @Doc("Such as B.") Optional<String> revision) {

    FileSubmittal {
        address.ifPresent(text -> PageText.require("address", text));
        client.ifPresent(text -> PageText.require("client", text));
        preparedBy.ifPresent(text -> PageText.require("preparedBy", text));
        revision.ifPresent(text -> PageText.require("revision", text));
        try {
            date.map(LocalDate::parse);
        } catch (DateTimeParseException none) {
            throw new BadValueException(
                    "date",
                    "a date is needed",
                    '"' + date.get() + '"',
                    "year, month and day",
                    "write it as 2026-10-03");
        }
    }

    Submittal submittal() {
        return new Submittal(address, client, preparedBy, date.map(LocalDate::parse), revision);
    }
}
