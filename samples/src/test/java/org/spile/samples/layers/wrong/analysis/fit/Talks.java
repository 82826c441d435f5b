package org.spile.samples.layers.wrong.analysis.fit;

import java.io.IOException;
import java.util.Properties;

/** Speaks with the console and the process. */
final class Talks {

    private Talks() {}

    static void prints(String words) {
        System.out.print(words);
    }

    static int reads() throws IOException {
        return System.in.read();
    }

    static void exits() {
        System.exit(1);
    }

    static Properties asks() {
        return System.getProperties();
    }

    static void traces(Exception fault) {
        fault.printStackTrace();
    }
}
