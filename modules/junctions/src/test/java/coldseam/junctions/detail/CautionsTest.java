package coldseam.junctions.detail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.junctions.catalogue.CatalogueFile;
import org.eclipse.collections.api.bag.ImmutableBag;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

class CautionsTest {

    private static final ImmutableList<Detail> ALL =
            CatalogueFile.builtIn().details().distinctBy(Detail::id);

    /** What two details caution of is told once, and nothing else is. */
    @Test
    void whatSeveralDetailsGiveStandsInOneFile() {
        ImmutableBag<String> given = ALL.flatCollect(Detail::cautions).toBag().toImmutable();
        assertEquals(
                given.selectByOccurrences(times -> times > 1).toSortedSet(),
                Cautions.byName().toSortedSet(),
                "what two details or more caution of has a name in cautions.yaml, and nothing else has");
    }

    /** A name that stands for none would be printed as it is written. */
    @Test
    void everyCautionIsASentence() {
        assertEquals(
                Lists.immutable.empty(),
                ALL.flatCollect(Detail::cautions)
                        .reject(each -> each.endsWith("."))
                        .distinct());
    }
}
