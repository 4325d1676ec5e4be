package coldseam.benchmarks;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.JunctionKind;
import java.io.FileDescriptor;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Times new audits of a house in a JVM that lives on and is warm, with what was solved for earlier ones remembered: from the
 * text of the house file, after one choice of a detail, after another thickness of the wall.
 *
 * <p>Arguments: the house file, a folder to work in, how often to audit beforehand, and how many of each.
 */
public final class LivingAudit {

    /** The wall's insulation in the demo house. */
    private static final String LAYER = "thickness: 200 mm";

    private LivingAudit() {}

    /** Runs everything and prints a row for each. */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = Measured.printing(FileDescriptor.out);
        String text = Files.readString(Path.of(arguments[0]));
        Path file = Files.createDirectories(Path.of(arguments[1])).resolve("house.yaml");
        int times = Integer.parseInt(arguments[3]);
        Workshop workshop = new BuiltInWorkshop();
        Files.writeString(file, text);
        for (int warm = 0; warm < Integer.parseInt(arguments[2]); warm++) {
            HouseAudit.of(file, workshop).compute();
        }
        MutableList<Double> again = Lists.mutable.empty();
        for (int i = 0; i < times; i++) {
            again.add(seconds(() -> HouseAudit.of(file, workshop).compute()));
        }
        row(out, "read and audited again, nothing new to solve", again);

        HouseAudit base = HouseAudit.of(file, workshop);
        ImmutableList<House> chosen = otherChoices(base.house(), workshop, file);
        row(out, "one choice changed, for the first time", chosen.collect(each -> seconds(() -> changed(base, each))));
        row(out, "one choice changed back to one that was", chosen.collect(each -> seconds(() -> changed(base, each))));

        MutableList<Double> sections = Lists.mutable.empty();
        MutableList<Double> corners = Lists.mutable.empty();
        for (int i = 0; i < times; i++) {
            Files.writeString(file, text.replaceFirst(LAYER, "thickness: " + (161 + i) + " mm"));
            sections.add(seconds(() -> HouseAudit.of(file, workshop).computeSections()));
            corners.add(seconds(() -> HouseAudit.of(file, workshop).compute()));
        }
        row(out, "another thickness of the wall, every section it is part of solved", sections);
        row(out, "the corners of the same, solved", corners);

        MutableList<Double> whole = Lists.mutable.empty();
        for (int i = 0; i < times; i++) {
            Files.writeString(file, text.replaceFirst(LAYER, "thickness: " + (161 + times + i) + " mm"));
            whole.add(seconds(() -> HouseAudit.of(file, workshop).compute()));
        }
        row(out, "another thickness of the wall, all of it at once", whole);
    }

    private static Object changed(HouseAudit base, House house) {
        return base.changed(house, Sets.immutable.empty()).compute();
    }

    /** The house with each of its choices in turn changed to the kind's first other option. */
    private static ImmutableList<House> otherChoices(House house, Workshop workshop, Path file) {
        ImmutableList<JunctionChoice> choices = house.choices();
        return choices.collectWithIndex((choice, index) -> {
            JunctionKind kind = (JunctionKind) workshop.catalogue(house, file)
                    .find(choice.detail())
                    .orElseThrow()
                    .kind();
            String other = workshop.catalogue(house, file)
                    .options(kind)
                    .detect(each -> !each.id().equals(choice.detail()))
                    .id();
            MutableList<JunctionChoice> changed = choices.toList();
            changed.set(index, new JunctionChoice(choice.which(), other, Maps.immutable.empty()));
            return house.withChoices(changed.toImmutable());
        });
    }

    private static double seconds(Supplier<?> work) {
        long start = System.nanoTime();
        work.get();
        return 1e-9 * (System.nanoTime() - start);
    }

    private static void row(PrintStream out, String what, Iterable<Double> seconds) {
        double[] all =
                Lists.mutable.withAll(seconds).collectDouble(each -> each).toArray();
        out.printf(
                Locale.ROOT,
                "%s: least %.3f s, median %.3f s of %d%n",
                what,
                Measured.least(all),
                Measured.median(all),
                all.length);
    }
}
