package coldseam.audit.rules;

import coldseam.audit.Breach;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.Sheet;
import coldseam.audit.Subject;
import coldseam.conduction.Interval;
import coldseam.envelope.House;
import coldseam.files.Groups;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** Makes findings of drafts: one for each subject, numbered by weight. */
public final class Findings {

    /** A draft and the rule that found it. */
    private record Drafted(Rule rule, Draft draft) {}

    private Findings() {}

    /**
     * Applies every rule.
     *
     * @return the gravest first; of equal gravity holes, whose loss nobody can tell, then what loses most, then the longest
     */
    public static ImmutableList<Finding> of(Facts facts) {
        ImmutableList<Drafted> drafts =
                Rules.all().flatCollect(rule -> rule.find(facts).collect(draft -> new Drafted(rule, draft)));
        ImmutableList<Finding> found = Groups.by(drafts, each -> each.draft().cause())
                .collect(alike -> joined(facts, alike))
                .toImmutableSortedList(Comparator.comparing(Finding::severity)
                        .thenComparing(finding -> finding.subject() instanceof Subject.Hole ? 0 : 1)
                        .thenComparing(finding -> -loss(finding))
                        .thenComparing(finding -> -finding.subject().length())
                        .thenComparing(Finding::rule));
        return found.collectWithIndex((finding, index) -> numbered(finding, index + 1));
    }

    private static double loss(Finding finding) {
        return finding.loss().map(Interval::middle).orElse(0.0);
    }

    private static Finding joined(Facts facts, ImmutableList<Drafted> drafts) {
        ImmutableList<Drafted> ruled = drafts.toImmutableSortedListBy(each -> Rules.place(each.rule()));
        ImmutableList<Draft> byWeight = ruled.collect(Drafted::draft);
        Draft lead = byWeight.getFirst();
        ImmutableList<BridgeSheet<?>> sheets =
                byWeight.flatCollect(Draft::sheets).distinctBy(BridgeSheet::id);
        // Rules may find fault with different sheets of one detail: the finding is about all of them.
        boolean more = sheets.size() > lead.sheets().size();
        Draft whole = more ? facts.about(sheets, lead.severity(), lead.evidence()) : lead;
        return new Finding(
                0,
                byWeight.collect(Draft::severity).min(),
                ruled.collect(each -> new Breach(each.rule().id(), each.draft().evidence())),
                whole.subject(),
                sheet(whole.subject(), sheets),
                whole.loss(),
                money(facts.house(), whole.loss()));
    }

    private static Optional<? extends Sheet> sheet(Subject subject, ImmutableList<BridgeSheet<?>> sheets) {
        return subject instanceof Subject.Corners corners
                ? corners.rows().getFirst().sheet()
                : sheets.getFirstOptional();
    }

    /** A year's heat for a loss, by degree days, at the house's price. */
    private static OptionalDouble money(House house, Optional<Interval> loss) {
        OptionalDouble price = house.prices().heat();
        OptionalDouble kilowattHours =
                loss.map(each -> house.site().yearly(each.middle())).orElse(OptionalDouble.empty());
        return price.isPresent() && kilowattHours.isPresent()
                ? OptionalDouble.of(kilowattHours.getAsDouble() * price.getAsDouble())
                : OptionalDouble.empty();
    }

    private static Finding numbered(Finding finding, int number) {
        return new Finding(
                number,
                finding.severity(),
                finding.breaches(),
                finding.subject(),
                finding.sheet(),
                finding.loss(),
                finding.moneyPerYear());
    }
}
