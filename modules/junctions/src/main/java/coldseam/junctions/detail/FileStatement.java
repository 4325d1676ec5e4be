package coldseam.junctions.detail;

import coldseam.envelope.Control;
import coldseam.envelope.Role;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Key;
import coldseam.files.Marked;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Positional;
import coldseam.files.SelfChecking;
import coldseam.files.Short;
import coldseam.files.Size;
import coldseam.files.Whole;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.LineRange;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A statement of a band drawing as it is written; README.md beside the built-in details explains each.
 *
 * <p>The keys {@code across} and {@code along} are called by the bands of the drawing's kind. What is written as one text, such as
 * a line, is read by {@link BandDrawingReader} in the names of that kind.
 */
@Noun("a drawing statement")
sealed interface FileStatement {

    /** What it says: one statement, of a part all that it draws. */
    ImmutableList<Statement> statements();

    /** The builds that it is for; any where empty. */
    default Optional<FileBuilds> where() {
        return Optional.empty();
    }

    /** A line across the first band, or a cut. */
    record Across(LineRange.End end) {}

    /** A line across the second band or along the seam, or a cut. */
    record Along(LineRange.End end) {}

    /** Where layers of a band end or begin: a line of the other band, or a cut. */
    record Ending(LineRange.End end) {}

    /** A line across the first band. */
    record LineAcross(Expression line) {}

    /** A line across the second band, or along the seam. */
    record LineAlong(Expression line) {}

    /** The level of the ground outdoors. */
    record Level(Expression line) {}

    /** The outer face of a frame; empty where the house's set-back decides alone. */
    record FrameLine(Optional<Expression> line) {}

    /** What a door stands on. */
    record Sill(Expression line) {}

    /** A part by its name: what it draws in this kind. */
    record PartDrawn(ImmutableList<Statement> statements) {}

    /** A band of the kind. */
    record BandName(String name, boolean first) {}

    /** From one line across the first band to another. */
    @Positional
    record RangeAcross(Across from, Across to) {
        LineRange range() {
            return new LineRange(from.end(), to.end());
        }
    }

    /** From one line across the second band, or along the seam, to another. */
    @Positional
    record RangeAlong(Along from, Along to) {
        LineRange range() {
            return new LineRange(from.end(), to.end());
        }
    }

    /** A corner of an outline or of a way. */
    @Positional
    @Noun("a corner")
    record Place(Across across, Along along) {
        Statement.Corner corner() {
            return new Statement.Corner(across.end(), along.end());
        }
    }

    /** The builds that a statement is for, of which all must hold: one, or a list. */
    @Noun("where")
    sealed interface FileBuilds {

        ImmutableList<BandDrawing.Built> all();

        /** One alone. */
        @Short
        record One(BandDrawing.Built build) implements FileBuilds {
            @Override
            public ImmutableList<BandDrawing.Built> all() {
                return Lists.immutable.of(build);
            }
        }

        /** Several. */
        @Whole
        record All(ImmutableList<BandDrawing.Built> all) implements FileBuilds {}
    }

    /** The layers of a band. */
    @Marked("band")
    @Noun("a band statement")
    record Band(
            BandName band,
            Optional<Ending> to,
            Optional<Ending> from,
            @Default("") ImmutableList<Named<Ending>> ends,
            @Default("") ImmutableSet<Role> only,
            @Default("") ImmutableSet<Role> without,
            Optional<FileBuilds> where)
            implements FileStatement, SelfChecking {

        /** Which layers of a role end somewhere: the nth from the inside, or the outermost, or all. */
        private static final Pattern WHICH = Pattern.compile("(?:(innermost|outermost) )?(.+?)(?: ([1-9][0-9]?))?");

        @Override
        public void check(Faults faults) {
            ends(faults);
        }

        @Override
        public ImmutableList<Statement> statements() {
            ImmutableSet<Role> painted =
                    (only.isEmpty() ? Sets.immutable.with(Role.values()) : only).difference(without);
            return Lists.immutable.of(new Statement.PaintBand(
                    band.name(),
                    band.first(),
                    to.map(Ending::end),
                    from.map(Ending::end),
                    ends(new Faults()),
                    painted));
        }

        private ImmutableMap<Statement.Which, LineRange.End> ends(Faults faults) {
            MutableMap<Statement.Which, LineRange.End> read = Maps.mutable.empty();
            for (Named<Ending> each : ends) {
                Optional<Statement.Which> which = which(each.name());
                if (which.isEmpty()) {
                    faults.add(
                            each.place(),
                            "a role is needed",
                            '"' + each.name() + '"',
                            TermsReader.words().makeString(", "),
                            "write one of them; of several layers innermost or outermost before it, or a number after it");
                } else if (read.put(which.get(), each.value().end()) != null) {
                    faults.add(
                            each.place(),
                            "each layer ends once",
                            '"' + each.name() + '"',
                            "one key for a layer; innermost is the first",
                            "remove one of the two");
                }
            }
            return read.toImmutable();
        }

        /** {@code insulation}, {@code outermost insulation}, {@code innermost insulation} or {@code insulation 2}. */
        private static Optional<Statement.Which> which(String key) {
            Matcher match = WHICH.matcher(key);
            if (!match.matches() || match.group(1) != null && match.group(3) != null) {
                return Optional.empty();
            }
            int nth = match.group(3) != null
                    ? Integer.parseInt(match.group(3))
                    : match.group(1) == null
                            ? Statement.Which.ALL
                            : match.group(1).equals("innermost") ? 1 : Statement.Which.OUTERMOST;
            return TermsReader.named(match.group(2)).map(role -> new Statement.Which(role, nth));
        }
    }

    /** Something between lines. */
    @Marked("block")
    @Noun("a block statement")
    record Block(
            String block,
            RangeAcross across,
            RangeAlong along,

            @Doc("Such as softwood, or same as wall.insulation.")
            Statement.MaterialChoice material,

            Optional<Role> role,
            @Default("false") boolean drawnOnly,
            Optional<FileBuilds> where)
            implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return Lists.immutable.of(
                    new Statement.PaintBlock(block, across.range(), along.range(), material, role, drawnOnly));
        }
    }

    /** Something of any outline. */
    @Marked("shape")
    @Noun("a shape statement")
    record Shape(
            String shape,
            @Size(min = 3) ImmutableList<Place> corners,

            @Doc("Such as softwood, or same as wall.insulation.")
            Statement.MaterialChoice material,

            Optional<Role> role,
            @Default("false") boolean drawnOnly,
            Optional<FileBuilds> where)
            implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return Lists.immutable.of(
                    new Statement.PaintShape(shape, corners.collect(Place::corner), material, role, drawnOnly));
        }
    }

    /** A sheet that carries control layers on. */
    @Marked("strip")
    @Noun("a strip statement")
    record Strip(
            String strip,

            @Doc("Such as [air].") @Size(min = 1, fewer = "write such as: carries: [air]")
            ImmutableSet<Control> carries,

            @Doc("Such as airtight membrane.") Statement.MaterialChoice.Named material,
            @Size(min = 2) ImmutableList<Place> corners,
            Optional<FileBuilds> where)
            implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return Lists.immutable.of(
                    new Statement.PaintStrip(strip, carries, corners.collect(Place::corner), material));
        }
    }

    /** Takes away what lies between lines. */
    @Marked("clear")
    @Noun("a clear statement")
    record Clear(String clear, RangeAcross across, RangeAlong along, Optional<FileBuilds> where)
            implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return Lists.immutable.of(new Statement.Clear(across.range(), along.range()));
        }
    }

    /** Where something that is not drawn parts two spaces outside the rooms. */
    @Marked("divide")
    @Noun("a divide statement")
    record Divide(String divide, LineAcross across, LineAlong along) implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return Lists.immutable.of(new Statement.Divide(across.line(), along.line()));
        }
    }

    /** The ground outdoors. */
    @Marked("ground")
    @Noun("a ground statement")
    record Ground(Level ground) implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return Lists.immutable.of(new Statement.Ground(ground.line()));
        }
    }

    /** The frame of a window or door. */
    @Marked("frame")
    @Noun("a frame statement")
    record Frame(FrameLine frame, Optional<Sill> sill) implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return Lists.immutable.of(new Statement.Frame(frame.line(), sill.map(Sill::line)));
        }
    }

    /** What many drawings have in common. */
    @Marked("part")
    @Noun("a part")
    record Part(@Key("part") PartDrawn drawn) implements FileStatement {
        @Override
        public ImmutableList<Statement> statements() {
            return drawn.statements();
        }
    }
}
