package coldseam.audit.house;

import coldseam.audit.Audit;
import coldseam.audit.Digests;
import coldseam.audit.Work;
import coldseam.audit.engine.Auditor;
import coldseam.audit.engine.Progress;
import coldseam.audit.engine.Sections;
import coldseam.envelope.Alternatives;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.PointBridges;
import coldseam.envelope.file.house.HouseFile;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.SourceDocument;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.pair.PairComputing;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A house that is read and checked, ready to be audited: every command, test and page comes through here, and so gets the
 * same checks.
 *
 * <p>The file is read once. The digest in the audit is that of the very bytes that were read, whatever becomes of the file
 * meanwhile.
 */
public final class HouseAudit {

    private final LoadedHouse loaded;
    private final Digests digests;
    private final Shell shell;
    private final Catalogue catalogue;
    private final Workshop workshop;

    private HouseAudit(LoadedHouse loaded, Digests digests, Shell shell, Catalogue catalogue, Workshop workshop) {
        this.loaded = loaded;
        this.digests = digests;
        this.shell = shell;
        this.catalogue = catalogue;
        this.workshop = workshop;
    }

    /**
     * Reads a house file and the details it names, builds the shell, and checks each against the others.
     *
     * @param workshop where details come from and what computes them
     * @throws FileFaultException with every fault of the files, or of the shape they describe
     */
    public static HouseAudit of(Path path, Workshop workshop) {
        return of(path, workshop, () -> {});
    }

    /**
     * The same.
     *
     * @param catalogued hears when the catalogue is read, on all cores; the house is read on one
     */
    public static HouseAudit of(Path path, Workshop workshop, Runnable catalogued) {
        byte[] content = content(path);
        KnownNames details = workshop.known(path);
        catalogued.run();
        LoadedHouse loaded = HouseFile.read(
                path.toString(), content, details, workshop.knownPoints(path), workshop.knownCorners(path));
        House house = loaded.house();
        Faults faults = new Faults();
        Optional<Catalogue> catalogue =
                read(() -> workshop.catalogue(loaded.alternatives().allNamed(withFoundChoices(house)), path), faults);
        faults.throwIfAny();
        Shell shell = loaded.shell();
        foundShell(loaded);
        readAhead(catalogue.orElseThrow(), house, shell);
        LateChecks.refuse(loaded, shell, catalogue.orElseThrow());
        return new HouseAudit(
                loaded,
                new Digests(sha256(content), details(catalogue.orElseThrow(), path)),
                shell,
                catalogue.orElseThrow().priced(house.prices()),
                workshop);
    }

    /** A house that names the details it was found with as well. */
    private static House withFoundChoices(House house) {
        return house.asFound()
                .map(found -> house.withChoices(house.choices().newWithAll(found.choices())))
                .orElse(house);
    }

    /** The details that the plan will ask for, on all cores instead of one by one. */
    private static void readAhead(Catalogue catalogue, House house, Shell shell) {
        catalogue.options(shell.edges()
                .<BridgeKind>collect(Edge::kind)
                .newWithAll(house.points()
                        .flatCollect(points -> points.kind().stream().toList()))
                .toImmutableSet());
    }

    private static Optional<Shell> foundShell(LoadedHouse loaded) {
        return loaded.house().asFound().map(found -> loaded.changed(found).shell());
    }

    private static byte[] content(Path path) {
        Faults faults = new Faults();
        Optional<byte[]> content = SourceDocument.content(path, faults);
        faults.throwIfAny();
        return content.orElseThrow();
    }

    private static <T> Optional<T> read(Supplier<T> files, Faults faults) {
        try {
            return Optional.of(files.get());
        } catch (FileFaultException refused) {
            refused.faults().forEach(faults::add);
            return Optional.empty();
        }
    }

    /** As its file describes it. */
    public House house() {
        return loaded.house();
    }

    /** What might be built otherwise. */
    public Alternatives alternatives() {
        return loaded.alternatives();
    }

    /**
     * The same house, changed: what its file names stands as it does, its details are the same, and what was solved for one
     * is remembered for the other.
     *
     * @param changed with the same names of surfaces, openings and points
     * @param details those that are compared, of the kinds that the house chooses a detail for
     * @throws FileFaultException where the changed house has no shell
     */
    public HouseAudit changed(House changed, ImmutableSet<String> details) {
        LoadedHouse other = loaded.changed(changed);
        House house = loaded.house();
        boolean sameShape = changed.body() == house.body()
                && changed.assemblies() == house.assemblies()
                && changed.openings() == house.openings()
                && changed.seams() == house.seams();
        Shell built = sameShape ? shell : other.shell();
        ImmutableSet<BridgeKind> open = built.edges()
                .select(edge -> changed.choices().noneSatisfy(choice -> edge.isMeantBy(choice.which())))
                .<BridgeKind>collect(Edge::kind)
                .newWithAll(changed.points()
                        .flatCollect(points -> points.kind().stream().toList()))
                .toImmutableSet();
        return new HouseAudit(
                other, digests, built, catalogue.narrowed(withFoundChoices(changed), open, details), workshop);
    }

    /**
     * The same, that knows another house's details as well.
     *
     * @param other whose details of one name are the same
     */
    public HouseAudit knowing(HouseAudit other) {
        return new HouseAudit(loaded, digests, shell, catalogue.with(other.catalogue), workshop);
    }

    /**
     * The same, that calls its own details by other names where those of another house have their names and other drawings.
     *
     * @param other that it is compared with
     */
    public HouseAudit apartFrom(HouseAudit other) {
        ImmutableSet<String> both = digests.details()
                .select(own -> other.digests
                        .details()
                        .anySatisfy(its ->
                                its.file().equals(own.file()) && !its.digest().equals(own.digest())))
                .collect(Digests.OfDetail::file)
                .toImmutableSet();
        if (both.isEmpty()) {
            return this;
        }
        UnaryOperator<String> apart = detail -> both.contains(detail) ? detail + " (after)" : detail;
        House house = house();
        House renamed = house.withChoices(house.choices()
                        .collect(each ->
                                new JunctionChoice(each.which(), apart.apply(each.detail()), each.parameters())))
                .withPoints(house.points()
                        .collect(each -> new PointBridges(
                                each.name(),
                                each.surface(),
                                each.kind(),
                                each.detail().map(apart),
                                each.count(),
                                each.parameters())));
        Catalogue called = new Catalogue(both.toImmutableList()
                .flatCollect(file -> catalogue.find(file).stream().toList())
                .collect(detail -> detail.ofHouse(apart.apply(detail.id()))));
        return new HouseAudit(loaded.changed(renamed), digests, shell, catalogue.with(called), workshop);
    }

    /** The sections that audits of some houses need. */
    public static Sections sections(Iterable<HouseAudit> houses) {
        return Sections.of(computer -> houses.forEach(each -> new Auditor(each.catalogue, computer, ToolVersion.read())
                .audit(each.house(), each.shell, each.digests, Progress.SILENT)));
    }

    /** Solves sections ahead, so that audits find them remembered. */
    public void solve(Sections sections, Progress progress) {
        sections.solve(workshop.computer(), progress);
    }

    /** The closed shell. */
    public Shell shell() {
        return shell;
    }

    /** The details it may choose among, of junctions, points and corners, its own ones included, at its prices. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** The workshop's solvers, which leave room for all that will be kept. */
    private Auditor.Solving roomy(Work work) {
        Workshop shop = workshop.within(workshop.budget()
                .keeping(
                        Runtime.getRuntime().maxMemory(),
                        work.details(),
                        work.inSections() / Work.SOLVES,
                        Work.SOLVES * work.corners(),
                        work.inBodies()));
        return new Auditor.Solving(shop.computer(), shop.vertices(), shop.pairs());
    }

    /** Audits the house without telling anyone how far it has come; see {@link #compute(Progress)}. */
    public Audit compute() {
        return compute(Progress.SILENT);
    }

    /**
     * Audits the house.
     *
     * @param progress hears how far it has come; what it throws ends the audit
     */
    public Audit compute(Progress progress) {
        return new Auditor(catalogue, this::roomy, workshop.vertices().isPresent(), ToolVersion.read())
                .audit(house(), shell, foundShell(loaded), digests, progress);
    }

    /**
     * Audits the house with its vertices, and its seams that touch, only named: its heat loss is then a sum over sections, which
     * sets of changes to it can be compared by. What hinders that two seams are solved together is found all the same.
     */
    public Audit computeSections() {
        Auditor.Solving named = new Auditor.Solving(
                workshop.computer(), Optional.empty(), workshop.pairs().map(PairComputing::unsolved));
        return new Auditor(catalogue, work -> named, false, ToolVersion.read())
                .audit(house(), shell, digests, Progress.SILENT);
    }

    /** Read a second time, just after the catalogue has read them. */
    private static ImmutableList<Digests.OfDetail> details(Catalogue catalogue, Path house) {
        return CatalogueFile.own(catalogue)
                .collect(name -> new Digests.OfDetail(
                        name, sha256(content(house.toAbsolutePath().resolveSibling(name)))));
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
