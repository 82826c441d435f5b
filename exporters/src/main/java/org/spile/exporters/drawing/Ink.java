package org.spile.exporters.drawing;

/**
 * The few colours a sheet may use; each stays readable in greyscale, and none carries meaning on its own.
 *
 * <p>Every ink also names its index in the 255-colour table that drawing exchange files share (public format reference).
 */
public enum Ink {
    /** For nearly everything; index 7 turns white on a dark screen. */
    BLACK(0x000000, 7),
    /** For what stands back: hatching, frame grid. */
    GREY(0x707070, 8),
    /** For ducts and services: reads as dark grey without colour. */
    BLUE(0x123F7A, 5),
    /** For findings: reads as dark grey without colour, and always comes with a numbered flag. */
    RED(0xA8001C, 1);

    private final int rgb;
    private final int index;

    Ink(int rgb, int index) {
        this.rgb = rgb;
        this.index = index;
    }

    /** Red, green, blue: eight bits each, red highest. */
    public int rgb() {
        return rgb;
    }

    /** Colour index of drawing exchange files, 1 to 255. */
    public int index() {
        return index;
    }
}
