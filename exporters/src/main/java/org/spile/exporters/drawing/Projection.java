package org.spile.exporters.drawing;

/** Where neighbouring views stand; the symbol on the sheet says which (ISO 5456-2). */
public enum Projection {
    /** The view from the left stands at the right: the usual choice in Europe. */
    FIRST_ANGLE("first angle"),
    /** The view from the left stands at the left: the usual choice in North America, common in Australia. */
    THIRD_ANGLE("third angle");

    private final String words;

    Projection(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
