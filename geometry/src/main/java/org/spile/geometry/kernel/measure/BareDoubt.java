package org.spile.geometry.kernel.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words the question about a bare length: in which other unit would it be usual? */
final class BareDoubt {
    private static final List<Unit> OTHERS =
            List.of(Unit.MILLIMETRE, Unit.CENTIMETRE, Unit.INCH, Unit.METRE, Unit.FOOT);

    private BareDoubt() {}

    static Optional<Doubt> of(Reading reading, Unit bare, Usual usual) {
        String number = Written.number(bare.fromBase(reading.value()), 6);
        var likelier = new ArrayList<String>();
        String usually = "";
        for (Unit other : OTHERS) {
            double mm = other.toBase(bare.fromBase(reading.value()));
            if (other != bare && usual.holds(mm)) {
                usually = likelier.isEmpty() ? Written.in(bare, mm, 2) : usually;
                likelier.add(number + " " + other.symbol());
            }
        }
        if (likelier.isEmpty()) {
            return Optional.empty();
        }
        String typed = number + " " + bare.symbol();
        return Optional.of(new Doubt(
                reading.words(),
                typed + " is unlikely, " + usually + " is usual.",
                "Write " + String.join(" or ", likelier) + "; or " + typed + " if you mean it."));
    }
}
