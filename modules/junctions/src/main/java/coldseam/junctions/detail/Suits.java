package coldseam.junctions.detail;

import coldseam.envelope.Body;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/**
 * What an option can be built in.
 *
 * @param work new builds, old houses, or both; never none
 * @param takesDown parts of an old house that must come down for it, such as a parapet
 */
public record Suits(ImmutableSet<Work> work, ImmutableList<String> takesDown) {

    /** A new build as well as an old house, of which nothing comes down. */
    public static final Suits EVERYWHERE = new Suits(Sets.immutable.with(Work.values()), Lists.immutable.empty());

    /** What is done to a house. */
    public enum Work {
        NEW_BUILD,
        /** The old structure stays. */
        RETROFIT
    }

    /** Such as {@code new build; retrofit, once the parapet is taken down}. */
    public String words() {
        String retrofit = "retrofit" + (takesDown.isEmpty() ? "" : ", once taken down: " + takesDown.makeString(", "));
        return Lists.immutable
                .with(Work.values())
                .select(work::contains)
                .collect(each -> each == Work.NEW_BUILD ? "new build" : retrofit)
                .makeString("; ");
    }

    /** Whether an option could be built at a junction, were but the parts taken down that it asks for and that the house keeps. */
    public boolean waitsForParts(Optional<Retrofit> house, ImmutableList<Surface> beside) {
        return work.contains(Work.RETROFIT)
                && house.filter(old -> beside.anySatisfy(each -> each.staysIn(old))
                                && standing(old, beside).notEmpty())
                        .isPresent();
    }

    /** What it needs taken down and the house keeps; of a roof or walls that are built new nothing old is left. */
    private ImmutableList<String> standing(Retrofit house, ImmutableList<Surface> beside) {
        boolean newRoof = beside.anySatisfy(each -> each.use() == Body.Use.ROOF && !each.staysIn(house));
        ImmutableList<Surface> walls = beside.select(each -> each.use() == Body.Use.WALL);
        boolean newWalls = walls.notEmpty() && walls.noneSatisfy(each -> each.staysIn(house));
        return takesDown.reject(part -> house.takesDown(part)
                || newRoof && Retrofit.isOfTheRoof(part)
                || newWalls && Retrofit.ofTheWall().contains(part));
    }

    /**
     * Why an option cannot be built at a junction.
     *
     * @param who the option, for the message
     * @param house what stays of it; empty for a new build
     * @param beside the surfaces that meet there
     */
    public Optional<String> hindrance(String who, Optional<Retrofit> house, ImmutableList<Surface> beside) {
        if (house.filter(old -> beside.anySatisfy(each -> each.staysIn(old))).isEmpty()) {
            return work.contains(Work.NEW_BUILD)
                    ? Optional.empty()
                    : Optional.of(who
                            + " is for old structure that stays; here all of it is built new. Choose an option for a"
                            + " new build, or say retrofit in the house file.");
        }
        if (!work.contains(Work.RETROFIT)) {
            return Optional.of(
                    who + " needs new structure; here old structure stays. Choose an option for a retrofit, or name"
                            + " what is built new under retrofit.");
        }
        ImmutableList<String> standing = standing(house.orElseThrow(), beside);
        return standing.isEmpty()
                ? Optional.empty()
                : Optional.of(who + " needs taken down: " + standing.makeString(", ")
                        + ", which the house keeps. Choose an option that leaves it, or name it under taken-down.");
    }
}
