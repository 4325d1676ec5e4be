package coldseam.junctions.detail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.files.ResourceFolder;
import coldseam.junctions.catalogue.CatalogueFile;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.junit.jupiter.api.Test;

class CautionsTest {

    private static final ImmutableList<Detail> ALL =
            CatalogueFile.builtIn().details().distinctBy(Detail::id);

    /** What two details caution of is told once, and nothing else is. */
    @Test
    void whatSeveralDetailsGiveStandsInOneFile() {
        MutableSet<String> several = ALL.flatCollect(Detail::cautions)
                .toBag()
                .selectByOccurrences(times -> times > 1)
                .toSet();
        assertEquals(
                Sets.mutable.empty(),
                several.symmetricDifference(Cautions.byName().toSet()),
                "give what two details or more caution of a name in cautions.yaml, and nothing else");
    }

    /** A copy in full would stay as it is where the text is mended. */
    @Test
    void whatHasANameIsGivenByIt() {
        ImmutableList<String> files = Lists.immutable
                .of("/details/", "/points/", "/corners/")
                .flatCollect(
                        folder -> new ResourceFolder(folder).read((tree, content, faults) -> Optional.of(content)));
        assertEquals(
                Lists.immutable.empty(),
                Cautions.byName()
                        .keyValuesView()
                        .select(each -> files.anySatisfy(file -> file.contains(each.getTwo())))
                        .collect(each -> "write \"" + each.getOne() + "\" in place of: " + each.getTwo())
                        .toSortedList());
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
