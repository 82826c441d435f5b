package org.spile.exporters.drawing;

/**
 * What a mark shows, one layer a kind of thing, in the order they are drawn: later ones lie on top.
 *
 * <p>Names, line types, widths and inks of every format are decided here and nowhere else. Widths follow ISO 128-2's
 * 0.5 group (wide 0.5, narrow 0.25) with 0.7 for cut outlines, as construction drawings do.
 */
public enum Layer {
    /** Lines that show a cut material. */
    HATCHING("hatching", LineType.CONTINUOUS, Pen.NARROW_MM, Ink.GREY),
    /** Edges seen beyond the cut. */
    BEYOND("beyond", LineType.CONTINUOUS, Pen.NARROW_MM, Ink.BLACK),
    /** Outlines of cavities: space, not stuff. */
    CAVITIES("cavities", LineType.DASHED, Pen.NARROW_MM, Ink.BLACK),
    /** Outlines of rooms. */
    ROOMS("rooms", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLACK),
    /** Boards, battens and what else eats a cavity's depth. */
    LININGS("linings", LineType.CONTINUOUS, Pen.NARROW_MM, Ink.BLACK),
    /** Insulation of cavities and ducts. */
    INSULATION("insulation", LineType.CONTINUOUS, Pen.NARROW_MM, Ink.BLACK),
    /** Decks, walls, roofs, frames: cut outlines. */
    STRUCTURE("structure", LineType.CONTINUOUS, Pen.CUT_MM, Ink.BLACK),
    /** What stays: cabinets, rails, studs, pipes. */
    FIXTURES("fixtures", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLACK),
    /** What moves, in the stance shown. */
    MOVERS("movers", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLACK),
    /** Room kept free for air, filters, electrics and hands. */
    SERVICE_ROOM("service-room", LineType.LONG_DASHED_DOUBLE_DOTTED, Pen.NARROW_MM, Ink.GREY),
    /** Units: bodies and spigots. */
    UNITS("units", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLACK),
    /** Duct walls. */
    DUCTS("ducts", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLUE),
    /** Drains, refrigerant pairs, cables. */
    SERVICES("services", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLUE),
    /** Grilles, cowls, hoods, undercuts. */
    TERMINALS("terminals", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLUE),
    /** Known loads and where they act. */
    MASSES("masses", LineType.CONTINUOUS, Pen.NARROW_MM, Ink.BLACK),
    /** Axes of ducts, pipes and symmetry. */
    AXES("axes", LineType.LONG_DASHED_DOTTED, Pen.NARROW_MM, Ink.BLACK),
    /** Where sections are cut. */
    CUTTING_PLANES("cutting-planes", LineType.LONG_DASHED_DOTTED, Pen.NARROW_MM, Ink.BLACK),
    /** Dimensions. */
    DIMENSIONS("dimensions", LineType.CONTINUOUS, Pen.NARROW_MM, Ink.BLACK),
    /** Names, notes, leaders, view titles, tables. */
    NOTES("notes", LineType.CONTINUOUS, Pen.NARROW_MM, Ink.BLACK),
    /** Flags that point at findings, and the gaps they speak of. */
    FINDINGS("findings", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.RED),
    /** The sheet's frame, grid and title block. */
    FRAME("frame", LineType.CONTINUOUS, Pen.WIDE_MM, Ink.BLACK);

    private final String words;
    private final LineType type;
    private final double widthMm;
    private final Ink ink;

    Layer(String words, LineType type, double widthMm, Ink ink) {
        this.words = words;
        this.type = type;
        this.widthMm = widthMm;
        this.ink = ink;
    }

    /** The layer's name as files carry it: lower case, hyphened. */
    public String words() {
        return words;
    }

    /** Line type of marks that don't say otherwise. */
    public LineType type() {
        return type;
    }

    /** Line width of marks that don't say otherwise (mm on paper). */
    public double widthMm() {
        return widthMm;
    }

    /** Colour of all marks. */
    public Ink ink() {
        return ink;
    }

    /** The pen that draws on this layer as the layer says. */
    public Pen pen() {
        return new Pen(this, type, widthMm, "");
    }
}
