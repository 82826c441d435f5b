package org.spile.exporters.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;

/** What the operating system said about a file, in a few words. */
final class DiskTrouble {
    private DiskTrouble() {}

    static String words(IOException trouble) {
        return ownWords(first(trouble));
    }

    /** What it began with: a writer may have wrapped it in words about its format. */
    private static IOException first(IOException trouble) {
        var first = trouble;
        for (var cause = trouble.getCause(); cause != null; cause = cause.getCause()) {
            first = cause instanceof IOException deeper ? deeper : first;
        }
        return first;
    }

    private static String ownWords(IOException trouble) {
        if (trouble instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (trouble instanceof NoSuchFileException) {
            return "no such file or folder";
        }
        if (trouble instanceof FileAlreadyExistsException || trouble instanceof NotDirectoryException) {
            return "a file stands where a folder is needed";
        }
        var said = trouble instanceof FileSystemException withReason && withReason.getReason() != null
                ? withReason.getReason()
                : trouble.getMessage();
        return said == null || said.isBlank()
                ? trouble.getClass().getSimpleName()
                : said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1);
    }
}
