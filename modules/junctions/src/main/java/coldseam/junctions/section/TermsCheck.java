package coldseam.junctions.section;

import coldseam.files.quantity.Phrase;
import coldseam.junctions.detail.DrawingTerms;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Whether layers are such as a drawing asks for; a reason for each thing that is not.
 *
 * @param who the detail in words
 * @param reasons to which those are added why it does not fit
 */
public record TermsCheck(String who, DrawingTerms terms, MutableList<Phrase> reasons) {

    /** m: round-off of unit conversions. */
    private static final double SLACK = 1e-9;

    /** @param bands by their names in the drawing; empty where a band has no layers */
    public void layers(Function<String, Optional<Band>> bands) {
        for (DrawingTerms.Need need : terms.needs()) {
            bands.apply(need.band())
                    .filter(band -> !band.has(need.role()))
                    .ifPresent(band -> reasons.add(
                            Phrase.of(who + " needs " + DrawingNames.word(need.role()) + " in the " + need.band()
                                    + "; its assembly has none. Choose another detail or give that layer its role.")));
        }
        for (DrawingTerms.Thickness limit : terms.thicknesses()) {
            bands.apply(limit.band()).ifPresent(band -> thickness(limit, band));
        }
    }

    private void thickness(DrawingTerms.Thickness limit, Band band) {
        double thickness = limit.role()
                .map(role -> band.strata()
                        .select(each -> each.role() == role)
                        .sumOfDouble(each -> each.outside() - each.inside()))
                .orElse(band.thickness());
        if (!(thickness >= limit.least() - SLACK && thickness <= limit.most() + SLACK)) {
            reasons.add(Phrase.of(who + " takes " + limit.words() + " of ")
                    .andMillimetres(limit.least())
                    .and(" to ")
                    .andMillimetres(limit.most())
                    .and("; here it is ")
                    .andMillimetres(thickness)
                    .and(". Choose another detail."));
        }
    }

    /** @param value of an expression: m, or a number */
    public void conditions(ToDoubleFunction<Expression> value) {
        ImmutableList<String> parameters = terms.parameters().collect(DetailParameter::name);
        terms.conditions().forEach(each -> each.missed(who, value, parameters).ifPresent(reasons::add));
    }
}
