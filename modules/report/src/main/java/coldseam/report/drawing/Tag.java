package coldseam.report.drawing;

/** What a part of a document is, for readers that do not see it (ISO 32000-1:2008 14.8, from memory). */
public enum Tag {
    TITLE,
    HEADING,
    SUBHEADING,
    PARAGRAPH,
    /** A drawing; its words are said by its alternative text. */
    FIGURE,
    /** A list of contents; it holds paragraphs. */
    CONTENTS,
    /** A table; it holds rows. */
    TABLE,
    /** A row; it holds cells. */
    ROW,
    HEAD_CELL,
    CELL;

    /** Whether it holds other parts and nothing drawn. */
    public boolean holdsParts() {
        return this == CONTENTS || this == TABLE || this == ROW;
    }
}
