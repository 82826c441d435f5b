package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everything found wrong so far; told in the order of the file. */
final class Troubles {
    private final Map<String, Integer> order;
    private final Set<Trouble> found = new LinkedHashSet<>();

    /**
     * @param order rank of each thing's path in the file
     */
    Troubles(Map<String, Integer> order) {
        this.order = order;
    }

    /** Something is wrong. */
    void wrong(String path, String says, String advice) {
        found.add(new Trouble(path, says, advice, false));
    }

    /** Something is doubtful: nothing is guessed until it is settled. */
    void doubt(String path, String says, String advice) {
        found.add(new Trouble(path, says, advice, true));
    }

    boolean none() {
        return found.isEmpty();
    }

    List<Trouble> inOrder() {
        List<Trouble> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt(trouble -> rank(trouble.path())));
        return sorted;
    }

    private int rank(String path) {
        String at = path;
        while (!at.isEmpty()) {
            Integer rank = order.get(at);
            if (rank != null) {
                return rank;
            }
            int dot = Math.max(at.lastIndexOf('.'), at.lastIndexOf('['));
            at = dot < 0 ? "" : at.substring(0, dot);
        }
        return Integer.MAX_VALUE;
    }
}
