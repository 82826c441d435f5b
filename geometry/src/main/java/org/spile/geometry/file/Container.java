package org.spile.geometry.file;

import java.util.Optional;

/** What a thing is in, so far as the file says it in so many words. */
final class Container {
    private Container() {}

    /** The name of what the thing is in whose {@code at} holds this distance. */
    static Optional<String> of(Spot distance, Scribe scribe) {
        String at = distance.parentPath();
        int cut = at.lastIndexOf('.');
        return cut < 0
                ? Optional.empty()
                : Steps.walk(scribe.root(), at.substring(0, cut)).end().flatMap(Container::named);
    }

    /** The name of what a thing says it is in. */
    static Optional<String> named(Spot thing) {
        return thing.child("in")
                .or(() -> thing.child("over"))
                .filter(Spot::isText)
                .map(Spot::text);
    }
}
