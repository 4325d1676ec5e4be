package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.JunctionRow;
import coldseam.audit.Subject;
import coldseam.audit.engine.Sample;
import coldseam.audit.rules.RuleHouses;
import coldseam.audit.rules.Rules;
import coldseam.conduction.Interval;
import coldseam.files.quantity.UnitSystem;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class FindingWordsTest {

    private static final FindingWords SI = new FindingWords(UnitSystem.SI);
    private static final FindingWords US = new FindingWords(UnitSystem.US);

    private static Finding points(String line) {
        return Sample.audit(Sample.yaml() + "points:\n  " + line + "\n", Sample.good())
                .findings()
                .getOnly();
    }

    @Test
    void everyRuleHasWordsAndNoWordsAreLeftOver() {
        ImmutableList<String> worded = RuleWords.worded().collect(Class::getName);
        ImmutableList<String> found = Rules.all()
                .collect(rule -> rule.getClass().getName() + "$Found")
                .distinct();
        ImmutableList<String> missing = found.reject(worded::contains);
        ImmutableList<String> idle = worded.reject(found::contains);
        assertTrue(
                missing.isEmpty() && idle.isEmpty(),
                () -> "add to RuleWords: " + missing + "; delete from RuleWords: " + idle);
        assertEquals(worded.toSortedList(), worded, "alphabetical");
    }

    @TestFactory
    Stream<DynamicTest> everyRuleSpeaksInSentences() {
        return RuleHouses.breaking().entrySet().stream()
                .map(house -> dynamicTest(house.getKey(), () -> {
                    for (Finding finding : house.getValue().get().findings()) {
                        for (FindingWords words : new FindingWords[] {SI, US}) {
                            assertTrue(words.title(finding).matches("\\p{Lu}.*[^.]"), words.title(finding));
                            assertTrue(words.what(finding).matches("(?s)[\\p{Lu}\\d\"].*[^.]\\."), words.what(finding));
                            assertTrue(words.toDo(finding).matches("\\p{Lu}.*[^.]\\."), words.toDo(finding));
                            assertFalse(words.place(finding).isBlank());
                            assertFalse(words.what(finding).contains("null"), words.what(finding));
                        }
                        assertFalse(
                                US.what(finding).matches(".*\\d (m²|W/K|W/\\(m.*K\\)|mm|m²·K/W|kg/m²)( .*|[,;.].*)?"),
                                US.what(finding));
                    }
                }));
    }

    /** What fits instead is a question that one command answers. */
    @Test
    void whoseDetailDoesNotFitIsToldWhereToLook() {
        Finding misfit = RuleHouses.breaking()
                .get("detail-out-of-range")
                .get()
                .findings()
                .detect(each -> each.rule().equals("detail-out-of-range"));
        assertTrue(
                SI.toDo(misfit).contains("coldseam catalogue --house HOUSE --kind \"outside corner\""),
                SI.toDo(misfit));
    }

    /** Boards may be there already, and not be named for what they do. */
    @Test
    void whoHasNamedNoLayerForHeatIsToldHow() {
        Finding bare = RuleHouses.breaking()
                .get("surface-without-heat-layer")
                .get()
                .findings()
                .detect(each -> each.rule().equals("surface-without-heat-layer"));
        assertTrue(
                SI.toDo(bare).startsWith("Name the layer that insulates, under controls in the house file, or add "),
                SI.toDo(bare));
    }

    @Test
    void aHoleSaysWhereItsEdgesLie() {
        Audit audit = RuleHouses.breaking().get("open-edge").get();
        Finding hole = audit.findings().getFirst();
        String place = SI.place(hole);
        assertTrue(place.contains("where lowest floor should meet"), place);
        assertTrue(place.contains(", 8.00 m long; "), place);
        assertTrue(place.contains(" m high"), place);
        assertTrue(SI.what(hole).contains("4 edges"), SI.what(hole));
        assertTrue(US.place(hole).contains(" ft "), US.place(hole));
        assertFalse(US.place(hole).contains(" m high"), US.place(hole));
    }

    @Test
    void whatFollowsFromABreakIsToldWithIt() {
        var corner = Sample.Made.good("corner-good", coldseam.envelope.JunctionKind.OUTSIDE_CORNER);
        Finding finding = Sample.audit(
                        Sample.yaml(), Sample.goodBut(corner.broken().psi(0.4).fRsi(0.5)))
                .findings()
                .getOnly();
        assertEquals("Insulation broken at the outside corner", SI.title(finding));
        assertTrue(SI.what(finding).contains("fRsi is 0.500"), SI.what(finding));
        assertTrue(
                SI.what(finding).contains("; psi is 0.400 W/(m·K) in external dimensions, the limit"),
                SI.what(finding));
        assertTrue(US.what(finding).contains("Btu/(h·ft·°F)"), US.what(finding));
    }

    /** What breaks nothing goes before what loses less: whoever reads both numbers is told why. */
    @Test
    void aBestOptionThatLosesMoreSaysWhyItIsBest() {
        var corner = Sample.Made.good("corner-good", coldseam.envelope.JunctionKind.OUTSIDE_CORNER);
        Finding cheap = Sample.audit(
                        Sample.yaml(), Sample.goodBut(corner.broken().psi(-0.5)))
                .findings()
                .getOnly();
        Finding dear = Sample.audit(
                        Sample.yaml(), Sample.goodBut(corner.broken().psi(0.4)))
                .findings()
                .getOnly();
        Phrases say = new Phrases(UnitSystem.SI);
        BridgeSheet<?> cheapSheet = (BridgeSheet<?>) cheap.sheet().orElseThrow();
        BridgeSheet<?> dearSheet = (BridgeSheet<?>) dear.sheet().orElseThrow();
        String told = say.dearer(cheapSheet, dearSheet.result());
        assertTrue(
                told.startsWith("; that is more than what was computed here loses, psi -0.500 W/(m·K), but less is"),
                told);
        assertEquals("", say.dearer(dearSheet, cheapSheet.result()));
        Finding hardly = Sample.audit(
                        Sample.yaml(), Sample.goodBut(corner.broken().psi(0.4004)))
                .findings()
                .getOnly();
        // "More than" beside two numbers that read the same would be taken for a mistake.
        assertEquals("", say.dearer(dearSheet, ((BridgeSheet<?>) hardly.sheet().orElseThrow()).result()));
    }

    /** What is the same of all that nobody chose is told once, and nothing that differs is lost by it. */
    @Test
    void whatNobodyChoseIsToldOnceWhereThereIsMuchOfIt() {
        Finding open = points("hood: {surface: ground floor north wall, kind: duct, number: 3}");
        FindingWords.Unchosen told = SI.unchosen(open).orElseThrow();
        assertTrue(told.standIn().startsWith("\"Metal duct in an open gap\", chi "), told.standIn());
        assertTrue(SI.what(open).contains(told.standIn().replace("\", chi", "\" with chi")), SI.what(open));
        assertTrue(SI.toDo(open).endsWith("the catalogue's best here is " + told.best() + "."), SI.toDo(open));
        assertTrue(SI.toldOnce(Lists.immutable.of(open, open)).isEmpty());
        String once = SI.toldOnce(Lists.immutable.of(open, open, open)).orElseThrow();
        assertTrue(once.startsWith("Of 3 kinds of seams and points nobody chose"), once);
        Finding hood = points("hood: {surface: ground floor north wall, detail: duct-in-open-gap, number: 1}");
        assertTrue(SI.unchosen(hood).isEmpty());
    }

    /** What would be printed as 0.00 is told from what loses nothing. */
    @Test
    void littleThatIsLostIsToldFromNothing() {
        assertEquals("0.01 W/K", new Print(UnitSystem.SI).lost(Interval.of(0.0051)));
        assertEquals("under 0.01 W/K", new Print(UnitSystem.SI).lost(Interval.of(0.0049)));
        assertEquals("under 0.01 Btu/(h·°F)", new Print(UnitSystem.US).lost(Interval.of(0.0025)));
        assertEquals("nothing", new Print(UnitSystem.SI).lost(Interval.of(0)));
    }

    /** So that the lengths told add up to the finding's. */
    @Test
    void placesAlikeAreCounted() {
        var corner = Sample.Made.good("corner-good", coldseam.envelope.JunctionKind.OUTSIDE_CORNER);
        Finding four = Sample.audit(Sample.yaml(), Sample.goodBut(corner.broken()))
                .findings()
                .getOnly();
        ImmutableList<JunctionRow> rows =
                ((Subject.Bridges) four.subject()).rows().selectInstancesOf(JunctionRow.class);
        JunctionRow one = rows.get(0);
        JunctionRow other = rows.get(1);
        String first = SI.place(about(four, one));
        String second = SI.place(about(four, other));
        assertEquals("2 × " + first + "; " + second, SI.place(about(four, one, other, one)));
        assertEquals("2 × " + first, SI.firstPlace(about(four, one, one)));
        assertEquals(first + " and other places", SI.firstPlace(about(four, one, other)));
    }

    private static Finding about(Finding finding, JunctionRow... rows) {
        return new Finding(
                finding.number(),
                finding.severity(),
                finding.breaches(),
                new Subject.Bridges(Lists.immutable.of(rows)),
                finding.sheet(),
                finding.loss(),
                finding.moneyPerYear());
    }

    @Test
    void whatGoesThroughIsSaidOfPoints() {
        Finding hood = points("hood: {surface: ground floor north wall, detail: duct-in-open-gap, number: 1}");
        assertTrue(SI.title(hood).startsWith("Air and vapour control broken at a duct"), SI.title(hood));
        assertTrue(SI.place(hood).startsWith("hood, "), SI.place(hood));
        Finding open = points("hood: {surface: ground floor north wall, kind: duct, number: 3}");
        assertTrue(
                SI.what(open)
                        .contains(
                                "3 of them are built; the worst option stands in, \"Metal duct in an open gap\" with chi"),
                SI.what(open));
        assertTrue(SI.toDo(open).contains("under points; the catalogue's best here is"), SI.toDo(open));
    }
}
