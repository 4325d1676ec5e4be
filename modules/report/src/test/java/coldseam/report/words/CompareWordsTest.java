package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.conduction.Interval;
import coldseam.files.quantity.UnitSystem;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CompareWordsTest {

    private final CompareWords words = new CompareWords(UnitSystem.SI);

    @Test
    void heatIsPrintedToTheDigitsThatInputsAllow() {
        assertEquals("6.9 W/K less", words.heat(new Interval(-6.9412, -6.9209)));
        assertEquals("0.34 W/K more", words.heat(new Interval(0.3366, 0.3373)));
    }

    @Test
    void whatIsWiderThanTheLastDigitKeepsBothBoundsOutwards() {
        assertEquals("0.30…0.34 W/K more", words.heat(new Interval(0.3049, 0.3373)));
        assertEquals("between 0.02 W/K less and 0.31 W/K more", words.heat(new Interval(-0.0187, 0.3101)));
    }

    @Test
    void whatIsTooLittleToBeReadIsNotPrintedAsNothing() {
        assertEquals("under 0.01 W/K less", words.heat(new Interval(-0.0033, -0.0031)));
        assertEquals("under 0.01 W/K more", words.heat(new Interval(0.0031, 0.0033)));
        assertEquals("the same", words.heat(Interval.of(0)));
    }

    @Test
    void whatRoundsToNothingIsToldFromNone() {
        assertEquals(", under 1 % of the whole", CompareWords.share(OptionalDouble.of(0.0006)));
        assertEquals(", 0 % of the whole", CompareWords.share(OptionalDouble.of(0)));
        assertEquals(", 84 % of the whole", CompareWords.share(OptionalDouble.of(0.838)));
        assertEquals("under 1", Print.money(0.31));
        assertEquals("0", Print.money(0));
        assertEquals("1", Print.money(0.51));
        assertEquals("1\u2009234", Print.spacedMoney(1234));
    }
}
