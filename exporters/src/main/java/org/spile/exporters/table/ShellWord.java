package org.spile.exporters.table;

import java.util.List;
import java.util.stream.Collectors;

/** Words as they are typed at a shell's prompt (POSIX.1-2017, Shell Command Language, 2.2.2 single-quotes). */
final class ShellWord {
    private static final String HARMLESS = "._-+=,:/%@";

    private ShellWord() {}

    static String quoted(String word) {
        boolean harmless = !word.isEmpty()
                && word.chars().allMatch(c -> c < 128 && (Character.isLetterOrDigit(c) || HARMLESS.indexOf(c) >= 0));
        return harmless ? word : "'" + word.replace("'", "'\\''") + "'";
    }

    static String settings(List<String> set) {
        return set.stream().map(edit -> "--set " + quoted(edit)).collect(Collectors.joining(" "));
    }
}
