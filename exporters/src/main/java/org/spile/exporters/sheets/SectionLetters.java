package org.spile.exporters.sheets;

/** Letters of sections in order: A to Z without I and O, as ISO 128-3 has it, then AA, AB ... */
final class SectionLetters {
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private SectionLetters() {}

    /** The letter or letters of a section, counted from 0. */
    static String letter(int index) {
        String last = String.valueOf(LETTERS.charAt(index % LETTERS.length()));
        return index < LETTERS.length() ? last : letter(index / LETTERS.length() - 1) + last;
    }
}
