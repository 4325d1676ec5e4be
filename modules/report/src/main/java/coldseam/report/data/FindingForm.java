package coldseam.report.data;

import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;
import static coldseam.report.data.Types.PLACE;
import static coldseam.report.data.Types.TEXTS;
import static coldseam.report.data.Types.WORD;

import coldseam.audit.Breach;
import coldseam.audit.Finding;
import coldseam.audit.Sheet;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.envelope.shell.Surface;
import coldseam.files.JsonForm;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.FindingWords;
import org.eclipse.collections.impl.factory.Lists;

/** What was found. */
final class FindingForm {

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);

    private static final JsonForm<Value> VALUE = JsonForm.<Value>of("ValueData")
            .with("name", TEXT, Value::name)
            .says("what it is of")
            .with("lower", NUMBER, value -> UnitSystem.SI.value(value.value().lower(), value.dimension()))
            .with("upper", NUMBER, value -> UnitSystem.SI.value(value.value().upper(), value.dimension()))
            .says("the same as lower where it is no interval")
            .with("unit", TEXT, value -> UnitSystem.SI.label(value.dimension()))
            .says("empty for plain numbers");

    private static final JsonForm<Breach> BREACH = JsonForm.<Breach>of("BreachData")
            .with("rule", TEXT, Breach::rule)
            .with("values", VALUE.list(), breach -> breach.evidence().values());

    static final JsonForm<Finding> FINDING = JsonForm.<Finding>of("FindingData")
            .with("number", WHOLE, Finding::number)
            .says("as in the drawing")
            .with("rule", TEXT, Finding::rule)
            .says("the leading one")
            .with("severity", WORD, Finding::severity)
            .with("title", TEXT, WORDS::title)
            .with("what", TEXT, WORDS::what)
            .with("place", TEXT, WORDS::place)
            .says("where a person finds it")
            .with("at_m", PLACE, finding -> finding.subject().at())
            .says("on the outer shell: east, north, up")
            .with("length_m", NUMBER, finding -> finding.subject().length())
            .says("zero where it has none")
            .with(
                    "edges",
                    TEXTS,
                    finding -> finding.subject()
                            .match(
                                    Subject.Bridges::edges,
                                    surfaces -> Lists.immutable.empty(),
                                    hole -> Lists.immutable.empty(),
                                    corners -> Lists.immutable.empty()))
            .says("names of all the edges it stands for, the longest first")
            .with(
                    "corners",
                    TEXTS,
                    finding -> finding.subject() instanceof Subject.Corners about
                            ? about.rows().collect(row -> row.corner().name())
                            : Lists.immutable.empty())
            .says("names of all the corners it stands for, the coldest first")
            .maybe("surface", TEXT, finding -> finding.subject().surface().map(Surface::name))
            .maybe("sheet", TEXT, finding -> finding.sheet().map(Sheet::id))
            .says("of the worst junction, point or corner")
            .maybe("loss_W_per_K", BOUNDS, Finding::loss)
            .says("against the best option of the catalogue")
            .maybeNumber("moneyPerYear", Finding::moneyPerYear)
            .says("in the house's currency")
            .with("toDo", TEXT, WORDS::toDo)
            .with("breaches", BREACH.list(), Finding::breaches)
            .says("of rules by it, the leading one first");

    private FindingForm() {}
}
