package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.engine.Sample;
import coldseam.files.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class OwnerWordsTest {

    private static void begins(String expected, String yaml) {
        String said = OwnerWords.of(Sample.audit(yaml, Sample.good()), new Print(UnitSystem.SI));
        assertTrue(said.startsWith(expected), said);
    }

    /** The sheets have 20.5 °C: 20 °C on the first page would be of another house. */
    @Test
    void theDesignTemperaturesAreThoseOfTheFile() {
        begins("To keep 20 °C indoors while it is -10 °C outdoors", Sample.yaml());
        begins(
                "To keep 20.5 °C indoors while it is -9.4 °C outdoors",
                Sample.yaml()
                        .replace("indoor-temperature: 20 °C", "indoor-temperature: 20.5 °C")
                        .replace("outdoor-temperature: -10 °C", "outdoor-temperature: -9.4 °C"));
    }
}
