package coldseam.report.compare;

import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.conduction.Interval;
import coldseam.files.JsonText;
import coldseam.options.Renovation;
import coldseam.options.Renovation.Cold;
import coldseam.options.Renovation.Part;
import coldseam.options.Renovation.Stage;
import coldseam.options.Yearly;
import coldseam.report.compare.HouseData.ChangesData;
import coldseam.report.compare.RenovationData.ColdData;
import coldseam.report.compare.RenovationData.PartData;
import coldseam.report.compare.RenovationData.SideData;
import coldseam.report.compare.RenovationData.StageData;
import coldseam.report.data.BoundsData;
import coldseam.report.data.DataSchema;
import coldseam.report.words.CompareWords;
import java.util.Optional;

/** Two houses compared as data, in SI units; keys carry their unit and intervals both bounds. */
public final class RenovationJson {

    private final Renovation renovation;

    private RenovationJson(Renovation renovation) {
        this.renovation = renovation;
    }

    /** The file's text; the same houses give the same text. */
    public static String text(Renovation renovation) {
        return JsonText.write(new RenovationJson(renovation).data());
    }

    /** Its JSON Schema (draft 2020-12), shipped as {@code coldseam/report/renovation.schema.json} too. */
    public static String schema() {
        return DataSchema.text(RenovationData.class, "Two houses compared, written by coldseam");
    }

    private RenovationData data() {
        return new RenovationData(
                "coldseam renovation",
                1,
                renovation.after().version(),
                side(renovation.before()),
                side(renovation.after()),
                renovation.after().house().prices().currency(),
                BoundsData.of(renovation.more()),
                money(renovation.more()),
                renovation.unlike(),
                renovation.idle(),
                ChangesData.of(renovation.changes()),
                renovation.parts().collect(this::part),
                renovation.cold().collect(RenovationJson::cold),
                renovation.stages().collect(this::stage),
                CompareWords.stageCautions());
    }

    private static SideData side(Audit audit) {
        return new SideData(audit.house().name(), audit.inputDigest(), HouseData.whole(audit));
    }

    private Optional<BoundsData> money(Interval more) {
        return Yearly.money(more.times(-1), renovation.after().house()).map(BoundsData::of);
    }

    private PartData part(Part part) {
        return new PartData(
                part.group(),
                part.name(),
                part.before().map(BoundsData::of),
                part.after().map(BoundsData::of),
                BoundsData.of(part.more()),
                money(part.more()));
    }

    private StageData stage(Stage stage) {
        return new StageData(
                stage.name(),
                HouseData.withoutCorners(stage.audit()),
                BoundsData.of(stage.more()),
                stage.share(),
                money(stage.more()),
                ChangesData.of(stage.changes()),
                stage.open().collect(JunctionRow::name),
                stage.cold().collect(RenovationJson::cold),
                stage.notJudged().collect(JunctionRow::name));
    }

    private static ColdData cold(Cold cold) {
        return new ColdData(
                cold.row().name(),
                cold.row().kindLabel(),
                cold.before(),
                cold.now(),
                cold.need(),
                cold.mould(),
                cold.colder());
    }
}
