package org.spile.geometry.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Where each value of a house file stands. Immutable. */
public final class Places {
    private final Place whole;
    private final Map<String, Place> byPath;

    Places(Place whole, Map<String, Place> byPath) {
        this.whole = whole;
        this.byPath = Collections.unmodifiableMap(new LinkedHashMap<>(byPath));
    }

    /**
     * The place of a path; of what it would stand in, where the file doesn't type it.
     *
     * @param path as {@code cavities.loft.ceiling.drop}
     */
    public Place of(String path) {
        String at = path;
        while (!at.isEmpty()) {
            if (byPath.containsKey(at)) {
                return byPath.get(at);
            }
            int cut = Math.max(at.lastIndexOf('.'), at.lastIndexOf('['));
            at = cut < 0 ? "" : at.substring(0, cut);
        }
        return whole;
    }

    /** Whether the file types a value at that path, itself or by a copy. */
    public boolean typed(String path) {
        return byPath.containsKey(path);
    }
}
