package org.spile.geometry.file;

import java.util.Optional;

/**
 * The two halves of a range or a rated point.
 *
 * @param first the words before the joint
 * @param joint {@code ..} or {@code at}
 * @param second the words after it
 */
record PairText(String first, String joint, String second) {
    static Optional<PairText> of(String text) {
        String joint = text.contains("..") ? ".." : " at ";
        int at = text.indexOf(joint);
        return at < 0
                ? Optional.empty()
                : Optional.of(new PairText(text.substring(0, at), joint, text.substring(at + joint.length())));
    }

    PairText withFirst(String words) {
        return new PairText(words, joint, second);
    }

    PairText withSecond(String words) {
        return new PairText(first, joint, words);
    }

    @Override
    public String toString() {
        return first + joint + second;
    }
}
