package org.spile.exporters.drawing;

import java.util.List;

/**
 * What the title block says: the fields of ISO 7200 and what a builder needs beside them. Fields left empty print as
 * blanks to fill in by hand; a date is never taken from the clock.
 *
 * @param owner legal owner
 * @param number identification number
 * @param issued date of issue, ISO 8601
 * @param title of the drawing
 * @param supplement second line of the title
 * @param createdBy whose hand
 * @param approvedBy who answers for it
 * @param documentType such as {@code general arrangement}
 * @param tolerance general tolerance
 * @param revisions oldest first; the last one's index is the drawing's
 */
public record TitleBlock(
        String owner,
        String number,
        String issued,
        String title,
        String supplement,
        String createdBy,
        String approvedBy,
        String documentType,
        String tolerance,
        List<Revision> revisions) {
    /** Copies the revisions and cleans the words. */
    public TitleBlock {
        owner = Lettering.printable(owner);
        number = Lettering.printable(number);
        issued = Lettering.printable(issued);
        title = Lettering.printable(title);
        supplement = Lettering.printable(supplement);
        createdBy = Lettering.printable(createdBy);
        approvedBy = Lettering.printable(approvedBy);
        documentType = Lettering.printable(documentType);
        tolerance = Lettering.printable(tolerance);
        revisions = List.copyOf(revisions);
    }

    /**
     * A block with the fields no drawing does without; the rest blank.
     *
     * @param title of the drawing
     * @param documentType such as {@code general arrangement}
     * @param number identification number
     */
    public static TitleBlock of(String title, String documentType, String number) {
        return new TitleBlock("", number, "", title, "", "", "", documentType, "", List.of());
    }

    /** The same block of an owner. */
    public TitleBlock ownedBy(String name) {
        return new TitleBlock(
                name, number, issued, title, supplement, createdBy, approvedBy, documentType, tolerance, revisions);
    }

    /** The same block with a second line of title. */
    public TitleBlock supplemented(String line) {
        return new TitleBlock(
                owner, number, issued, title, line, createdBy, approvedBy, documentType, tolerance, revisions);
    }

    /** The same block with a date of issue (ISO 8601) and the hands it went through. */
    public TitleBlock issued(String date, String created, String approved) {
        return new TitleBlock(
                owner, number, date, title, supplement, created, approved, documentType, tolerance, revisions);
    }

    /** The same block with a general tolerance. */
    public TitleBlock tolerated(String general) {
        return new TitleBlock(
                owner, number, issued, title, supplement, createdBy, approvedBy, documentType, general, revisions);
    }

    /** The same block with its revisions, oldest first. */
    public TitleBlock revised(List<Revision> all) {
        return new TitleBlock(
                owner, number, issued, title, supplement, createdBy, approvedBy, documentType, tolerance, all);
    }

    /** The index of the last revision; empty before the first. */
    public String revision() {
        return revisions.isEmpty() ? "" : revisions.get(revisions.size() - 1).index();
    }
}
