package org.spile.samples.layers.wrong.analysis.fit;

import java.security.SecureRandom;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.DoubleSupplier;

/** Answers differently each time. */
final class Dice {

    private Dice() {}

    static DoubleSupplier byReference() {
        return Math::random;
    }

    static Random seeded() {
        return new Random(1);
    }

    static double inThread() {
        return ThreadLocalRandom.current().nextDouble();
    }

    static SecureRandom secure() {
        return new SecureRandom();
    }

    static UUID id() {
        return UUID.randomUUID();
    }

    static void shuffled(List<String> names) {
        Collections.shuffle(names);
    }

    static int identity(Object thing) {
        return System.identityHashCode(thing);
    }
}
