package org.spile.geometry.file;

import java.util.List;

/**
 * A list.
 *
 * @param place where it begins
 * @param span its characters
 * @param flow whether it was written between brackets
 * @param items its values, counted from 1 in paths
 */
record ListNode(Place place, Span span, boolean flow, List<Node> items) implements Node {
    ListNode {
        items = List.copyOf(items);
    }

    @Override
    public boolean sameAs(Node other) {
        if (!(other instanceof ListNode that) || items.size() != that.items.size()) {
            return false;
        }
        for (int i = 0; i < items.size(); i++) {
            if (!items.get(i).sameAs(that.items.get(i))) {
                return false;
            }
        }
        return true;
    }
}
