package coldseam.files;

import coldseam.files.quantity.Format;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;

/**
 * Reads a YAML or JSON file into a tree that keeps the place of every key and value.
 *
 * <p>What would silently mean something else to another reader is refused: aliases, anchors, merge keys, tags, duplicate
 * keys, a second document, a number with a leading zero.
 */
public final class SourceDocument {

    /** Largest file, bytes; a house of a thousand surfaces has a quarter of it. */
    static final int LARGEST = 1 << 20;

    private static final int DEEPEST = 32;

    /** Longest name, characters; a path of a file beside the house is one, too. */
    private static final int LONGEST_NAME = 200;

    /** Longest text, characters; a paragraph. */
    private static final int LONGEST_TEXT = 2000;

    private static final Pattern PLAIN_NUMBER =
            Pattern.compile("[+-]?(?:0|[1-9]\\d*)(?:\\.\\d*)?(?:[eE][+-]?\\d+)?|[+-]?\\.\\d+(?:[eE][+-]?\\d+)?");

    /** A word that would pass for another; signs such as the Greek mu of a unit pass for nothing. */
    private static final Pattern MIXED_SCRIPTS = Pattern.compile(
            "\\w*(?:\\p{IsLatin}[\\p{IsCyrillic}ΑΒΕΖΗΙΚΜΝΟΡΤΥΧο]|[\\p{IsCyrillic}ΑΒΕΖΗΙΚΜΝΟΡΤΥΧο]\\p{IsLatin})\\w*",
            Pattern.UNICODE_CHARACTER_CLASS);

    /** Characters without a shape that words of some scripts are written with, and the soft hyphen. */
    private static final String JOINING = "\u200c\u200d\u00ad";

    private static final char BROKEN = '\ufffd';

    /** What sets a line in and is neither a space nor a tab, of which the reader tells. */
    private static final Pattern ODD_SPACE = Pattern.compile("[ \\t]*([\\p{Zs}&&[^ ]])");

    private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(DEEPEST)
            .maxNumberLength(100)
            .build();
    private static final JsonFactory JSON =
            JsonFactory.builder().streamReadConstraints(LIMITS).build();
    private static final YAMLFactory YAML =
            YAMLFactory.builder().streamReadConstraints(LIMITS).build();

    private final String file;
    private final Faults faults;
    private final String text;
    private final JsonParser parser;

    private SourceDocument(String file, String text, Faults faults, JsonParser parser) {
        this.file = file;
        this.text = text;
        this.faults = faults;
        this.parser = parser;
    }

    /**
     * Reads a file; JSON where its name ends in {@code .json}, else YAML.
     *
     * @return the tree; empty where the file cannot be read at all, or its syntax is broken
     */
    public static Optional<SourceNode> read(Path path, Faults faults) {
        return content(path, faults).flatMap(bytes -> read(path.toString(), bytes, faults));
    }

    /**
     * The bytes of a file, for callers that need them beside the tree.
     *
     * @return empty where the file cannot be read, or is too large
     */
    public static Optional<byte[]> content(Path path, Faults faults) {
        Position start = new Position(path.toString(), 1, 1);
        if (Files.isDirectory(path)) {
            faults.add(start, "a file is needed", "a folder", "name the file in it");
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(path)) {
            // Never more than one byte too many: a device or a file that grows has no size to ask for.
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length <= LARGEST) {
                return Optional.of(bytes);
            }
            tooLarge(start, Math.max(bytes.length, Files.size(path)), faults);
        } catch (NoSuchFileException none) {
            faults.add(start, "the file does not exist", "", "check its name and folder");
        } catch (IOException unreadable) {
            faults.add(start, "the file cannot be read", unreadable.toString(), "check its permissions");
        }
        return Optional.empty();
    }

    /** Reads the content of a file; see {@link #read(Path, Faults)}. */
    public static Optional<SourceNode> read(String file, byte[] content, Faults faults) {
        if (content.length > LARGEST) {
            tooLarge(new Position(file, 1, 1), content.length, faults);
            return Optional.empty();
        }
        Optional<String> text = decoded(file, content, faults);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        boolean json = file.toLowerCase(Locale.ROOT).endsWith(".json");
        if (!json && isSetInOddly(file, text.get(), faults)) {
            return Optional.empty();
        }
        StringReader reader = new StringReader(text.get());
        try (JsonParser parser = json ? JSON.createParser(reader) : YAML.createParser(reader)) {
            return new SourceDocument(file, text.get(), faults, parser).document();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Lines copied from a page on the web may be set in by what looks like a space, and YAML takes it for a letter. */
    private static boolean isSetInOddly(String file, String text, Faults faults) {
        if (text.chars().noneMatch(c -> c > '~' && Character.getType(c) == Character.SPACE_SEPARATOR)) {
            return false;
        }
        MutableList<Position> places = Lists.mutable.empty();
        int line = 1;
        int odd = 0;
        for (String each : text.lines().toList()) {
            Matcher begins = ODD_SPACE.matcher(each);
            if (begins.lookingAt()) {
                places.add(new Position(file, line, begins.start(1) + 1));
                odd = each.codePointAt(begins.start(1));
            }
            line++;
        }
        if (places.notEmpty()) {
            faults.add(
                    places.getFirst(),
                    "lines are set in with spaces",
                    Format.of("U+%04X, a space of another width", odd)
                            + (places.size() > 1 ? ", on " + places.size() + " lines" : ""),
                    "the space bar's",
                    "replace them all in the editor");
        }
        return places.notEmpty();
    }

    private static void tooLarge(Position start, long size, Faults faults) {
        faults.add(
                start,
                "the file is too large",
                size + " bytes",
                "up to " + LARGEST + " bytes",
                "check that this is the right file");
    }

    private static Optional<String> decoded(String file, byte[] content, Faults faults) {
        // What stands for broken bytes may stand there itself.
        String whole = new String(content, StandardCharsets.UTF_8);
        if (whole.indexOf(BROKEN) < 0) {
            return Optional.of(unmarked(whole));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer bytes = ByteBuffer.wrap(content);
        CharBuffer chars = CharBuffer.allocate(content.length + 1);
        CoderResult result = decoder.decode(bytes, chars, true);
        String text = chars.flip().toString();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            int column = text.length() - text.lastIndexOf('\n');
            faults.add(
                    new Position(file, line, column),
                    "the file is not in UTF-8",
                    Format.of("byte 0x%02X", content[bytes.position()]),
                    "text in UTF-8",
                    "save the file as UTF-8");
            return Optional.empty();
        }
        return Optional.of(unmarked(text));
    }

    private static String unmarked(String text) {
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    private Optional<SourceNode> document() throws IOException {
        try {
            if (parser.nextToken() == null) {
                faults.add(
                        new Position(file, 1, 1),
                        "the file is empty",
                        "",
                        "begin with a file that works: coldseam start writes a house");
                return Optional.empty();
            }
            SourceNode root = node();
            if (parser.nextToken() != null) {
                faults.add(place(), "a file holds one document", "a second one", "put it into a file of its own");
            }
            return Optional.of(root);
        } catch (StreamConstraintsException tooDeep) {
            faults.add(
                    at(parser.currentLocation()),
                    "the file nests too deeply or holds too long a number",
                    "",
                    "up to " + DEEPEST + " levels, numbers up to 100 digits",
                    "check the indentation");
        } catch (JsonProcessingException broken) {
            faults.add(SyntaxFault.of(file, text, broken));
        }
        return Optional.empty();
    }

    private SourceNode node() throws IOException {
        if (isRefused()) {
            return new SourceNode.Scalar(place(), SourceNode.Kind.REFUSED, "");
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> mapping();
            case START_ARRAY -> sequence();
            default -> scalar();
        };
    }

    /** Refuses what only YAML has; whether the value itself cannot be used. */
    private boolean isRefused() throws IOException {
        if (!(parser instanceof YAMLParser yaml)) {
            return false;
        }
        if (yaml.isCurrentAlias()) {
            faults.add(
                    place(),
                    "a YAML alias is refused, since readers disagree on what it means",
                    "*" + parser.getText(),
                    "write the value out, or give it a name under materials or assemblies");
            return true;
        }
        if (yaml.getObjectId() != null) {
            faults.add(
                    place(),
                    "a YAML anchor is refused, since nothing may refer to it",
                    "&" + yaml.getObjectId(),
                    "remove the anchor");
        }
        if (yaml.getTypeId() != null) {
            faults.add(place(), "a YAML tag is refused", "!" + yaml.getTypeId(), "remove the tag");
        }
        return false;
    }

    private SourceNode mapping() throws IOException {
        Position start = place();
        MutableList<SourceNode.Entry> entries = Lists.mutable.empty();
        MutableMap<String, Position> seen = Maps.mutable.empty();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            Position place = place();
            Position first = seen.putIfAbsent(Words.aloud(key), place);
            parser.nextToken();
            SourceNode value = node();
            if (isRefused(place, "a name", key, LONGEST_NAME)) {
                continue;
            }
            if (key.equals("<<")) {
                faults.add(
                        place,
                        "a YAML merge key is refused, since readers disagree on what it means",
                        "<<",
                        "write the merged keys out");
            } else if (first != null) {
                faults.add(
                        place,
                        entries.anySatisfy(each -> each.key().equals(key))
                                ? "a key stands twice"
                                : "two keys read alike",
                        '"' + key + '"',
                        "each key once",
                        "it first stands at line " + first.line() + ": remove or rename one of the two");
            } else {
                entries.add(new SourceNode.Entry(key, place, value));
            }
        }
        return new SourceNode.Mapping(start, entries.toImmutable());
    }

    private SourceNode sequence() throws IOException {
        Position start = place();
        MutableList<SourceNode> items = Lists.mutable.empty();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node());
        }
        return new SourceNode.Sequence(start, items.toImmutable());
    }

    /** Refuses what is too long, or holds what no one can see and no file name or page can hold. */
    private boolean isRefused(Position place, String what, String text, int longest) {
        if (text.length() > longest) {
            faults.add(
                    place,
                    what + " is too long",
                    text.length() + " characters",
                    "up to " + longest + " characters",
                    "shorten it");
            return true;
        }
        OptionalInt unseen = isPlain(text)
                ? OptionalInt.empty()
                : text.codePoints().filter(SourceDocument::isUnseen).findFirst();
        unseen.ifPresent(each -> faults.add(
                place,
                what + " holds a character that cannot be shown",
                Format.of("U+%04X", each),
                "letters, digits, signs and spaces",
                "remove it"));
        if (unseen.isPresent() || isPlain(text)) {
            return unseen.isPresent();
        }
        Matcher mixed = MIXED_SCRIPTS.matcher(text);
        if (mixed.find()) {
            faults.add(
                    place,
                    what + " has a word of letters of two scripts that look alike",
                    '"' + mixed.group() + '"',
                    "words of one script",
                    "type the word again");
            return true;
        }
        return false;
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    /** Marks of direction turn what is printed round, so that a name could say something else than it holds. */
    private static boolean isUnseen(int character) {
        int type = Character.getType(character);
        return Character.isISOControl(character) && "\n\r\t".indexOf(character) < 0
                || type == Character.SURROGATE
                || type == Character.FORMAT && JOINING.indexOf(character) < 0;
    }

    private SourceNode scalar() throws IOException {
        Position place = place();
        String text = parser.getText();
        if (isRefused(place, "a text", text, LONGEST_TEXT)) {
            return new SourceNode.Scalar(place, SourceNode.Kind.REFUSED, "");
        }
        return switch (parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                // A number that YAML 1.1 reads in another base, such as 012 or 1_000, stays a text, and is refused
                // where a number is needed.
                new SourceNode.Scalar(
                        place,
                        PLAIN_NUMBER.matcher(text).matches() ? SourceNode.Kind.NUMBER : SourceNode.Kind.TEXT,
                        text);
            case VALUE_TRUE, VALUE_FALSE ->
                // YAML 1.1 takes yes, no, on and off for truth values; here they are words.
                new SourceNode.Scalar(
                        place,
                        text.equals("true") || text.equals("false") ? SourceNode.Kind.BOOLEAN : SourceNode.Kind.TEXT,
                        text);
            case VALUE_NULL -> new SourceNode.Scalar(place, SourceNode.Kind.EMPTY, "");
            default ->
                new SourceNode.Scalar(place, text.isBlank() ? SourceNode.Kind.EMPTY : SourceNode.Kind.TEXT, text);
        };
    }

    private Position place() {
        return at(parser.currentTokenLocation());
    }

    private Position at(JsonLocation location) {
        return location == null
                ? new Position(file, 1, 1)
                : new Position(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }
}
