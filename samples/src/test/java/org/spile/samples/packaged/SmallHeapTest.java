package org.spile.samples.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saltmarsh is checked within a heap of 128 MiB, and the answer is the same. */
class SmallHeapTest {
    @TempDir
    private Path folder;

    @Test
    void check_within128MiB() throws Exception {
        var house = SpileJar.ROOT.resolve("samples/saltmarsh/house.yaml").toString();
        var spile = new SpileJar(folder);
        var small = spile.run(List.of("-Xmx128m"), "check", house);
        assertTrue(small.status() < 2, small.err());
        assertEquals(spile.run("check", house), small);
    }
}
