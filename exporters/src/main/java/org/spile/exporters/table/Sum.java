package org.spile.exporters.table;

import java.util.List;
import org.spile.analysis.finding.Quantity;

/**
 * One sum from a few words, with all that was found on the way.
 *
 * @param spile the version
 * @param topic as {@code duct}
 * @param title what was asked
 * @param groups the answers, in order
 * @param cautions what the answers leave out, one sentence each
 */
public record Sum(String spile, String topic, String title, List<Group> groups, List<String> cautions) {
    /** Copies the lists. */
    public Sum {
        groups = List.copyOf(groups);
        cautions = List.copyOf(cautions);
    }

    /**
     * Answers that belong together.
     *
     * @param key in JSON
     * @param title for people
     * @param lines in order
     */
    public record Group(String key, String title, List<Line> lines) {
        /** Copies the list. */
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One answer.
     *
     * @param key in JSON
     * @param label for people
     * @param found what came out
     * @param note a few words behind it; empty if none
     */
    public record Line(String key, String label, Found found, String note) {}

    /** What came out. */
    public sealed interface Found {
        /** One quantity; {@code decimals} are shown to people. */
        record One(Quantity quantity, int decimals) implements Found {}

        /** A quantity that lies between two others of the same unit. */
        record Between(Quantity low, Quantity value, Quantity high, int decimals) implements Found {}

        /** A word or two. */
        record Said(String words) implements Found {}

        /** Nothing, because. */
        record Open(String because) implements Found {}
    }
}
