package org.spile.geometry.file;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Words the YAML parser's faults for people who don't know YAML. */
final class YamlFault {
    private YamlFault() {}

    static Problem worded(String file, String text, YamlEngineException fault) {
        if (!(fault instanceof MarkedYamlEngineException marked)) {
            return Problem.error(Place.whole(file), "", "This can't be read as YAML.", firstLine(fault.getMessage()));
        }
        String found = marked.getProblem() == null ? "" : marked.getProblem();
        Optional<Mark> mark = marked.getProblemMark().or(marked::getContextMark);
        Place place = mark.map(m -> new Place(file, m.getLine() + 1, m.getColumn() + 1))
                .orElse(Place.whole(file));
        String line = mark.map(m -> line(text, m.getLine())).orElse("");
        String context = marked.getContext() == null ? "" : marked.getContext();
        String opened = marked.getContextMark()
                .map(m -> "line " + (m.getLine() + 1) + ", column " + (m.getColumn() + 1))
                .orElse("");
        return said(place, found, context, opened, line);
    }

    private static Problem said(Place place, String found, String context, String opened, String line) {
        if (found.contains("\\t(TAB)") || (line.isBlank() && line.contains("\t"))) {
            return error(place, "A tab indents this line.", "Indent with spaces.");
        }
        if (found.contains("mapping values are not allowed")) {
            return error(
                    place,
                    "A second \": \" stands here.",
                    "Quote text that holds \": \"; or indent this line like its neighbours.");
        }
        if (found.contains("cannot start any token")) {
            String sign = found.replaceFirst("(?s).*found character '(.).*", "$1");
            return error(place, "A value can't begin with \"" + sign + "\".", "Quote it: \"" + sign + " ...\".");
        }
        if (context.contains("quoted scalar")) {
            return error(place, "The quote opened in " + opened + " is never closed.", "Close it in its own line.");
        }
        if (context.contains("flow mapping")) {
            return error(place, "The { opened in " + opened + " is not closed here.", "Put a comma or } before this.");
        }
        if (context.contains("flow sequence")) {
            return error(place, "The [ opened in " + opened + " is not closed here.", "Put a comma or ] before this.");
        }
        if (found.contains("sequence entries are not allowed")) {
            return error(place, "A dash can't begin a value here.", "Begin lists on their own line, or write [a, b].");
        }
        if (found.contains("could not find expected ':'")) {
            return error(place, "A line before this is no key with a value.", "Write key: value.");
        }
        if (context.contains("block mapping") || context.contains("block collection")) {
            return error(
                    place,
                    "This does not fit what " + opened + " began.",
                    "Indent keys of one thing by the same spaces.");
        }
        return error(place, "This can't be read as YAML: " + firstLine(found) + ".", "");
    }

    private static Problem error(Place place, String says, String advice) {
        return Problem.error(place, "", says, advice);
    }

    private static String firstLine(String text) {
        return text == null ? "" : text.lines().findFirst().orElse("").strip();
    }

    private static String line(String text, int number) {
        return text.lines().skip(number).findFirst().orElse("");
    }
}
