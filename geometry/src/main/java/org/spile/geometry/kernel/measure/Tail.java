package org.spile.geometry.kernel.measure;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Parse.Understood;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/**
 * Words with their trailing origin and {@code out} taken off.
 *
 * @param faults the refusals of these words
 * @param body what is left
 * @param origin the origin named, or typed
 * @param out whether {@code out} was there
 */
record Tail(Faults faults, String body, Origin origin, boolean out) {

    static Parse<Tail> of(Faults faults, String text, boolean outAllowed) {
        String body = text;
        Optional<Origin> origin = Optional.empty();
        boolean out = false;
        while (true) {
            int space = body.lastIndexOf(' ');
            String last = body.substring(space + 1);
            Optional<Origin> named = Origin.named(last);
            if (named.isEmpty() && !last.equals("out")) {
                break;
            }
            if ((named.isPresent() && origin.isPresent()) || (named.isEmpty() && out)) {
                return faults.of(Reason.SURPLUS, ": one word too many.", "One of measured, assumed, maker; then out.");
            }
            if (named.isEmpty() && !outAllowed) {
                return faults.of(Reason.OUT, ": \"out\" belongs to a distance from a face.");
            }
            origin = named.isPresent() ? named : origin;
            out = out || named.isEmpty();
            body = space < 0 ? "" : body.substring(0, space);
        }
        if (body.isEmpty()) {
            return text.isEmpty() ? faults.empty() : faults.of(Reason.NO_NUMBER, " has no number.");
        }
        return new Understood<>(new Tail(faults, body, origin.orElse(Origin.TYPED), out));
    }
}
