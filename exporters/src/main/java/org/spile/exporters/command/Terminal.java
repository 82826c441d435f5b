package org.spile.exporters.command;

import java.lang.reflect.InvocationTargetException;
import java.util.Objects;

/** The screen the command was started from, if it was. */
final class Terminal {
    private Terminal() {}

    /** Whether a person looks at a screen that shows colours, and didn't ask for none by setting NO_COLOR. */
    static boolean showsColours() {
        var noColour = System.getenv("NO_COLOR");
        return isThere() && (noColour == null || noColour.isEmpty()) && !Objects.equals(System.getenv("TERM"), "dumb");
    }

    @SuppressWarnings("SystemConsoleNull") // asked further where a console that is there says nothing
    private static boolean isThere() {
        var console = System.console();
        if (console == null) {
            return false;
        }
        try {
            // From Java 22 on there always is a console, and it has this question, which Java 17 can't name.
            return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException before22) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }
}
