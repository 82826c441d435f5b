package org.spile.exporters;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Programs not written here that read our files back. A test that needs one is skipped with a message where it is missing,
 * unless {@code SPILE_READERS_REQUIRED=true} says that it must be there.
 */
public final class Readers {
    private static final boolean REQUIRED = "true".equals(System.getenv("SPILE_READERS_REQUIRED"));
    private static final String PYTHON =
            Files.isExecutable(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";

    private Readers() {}

    private record Ended(int status, String out) {}

    /** What the strict Python reader finds in a DXF, one fact a line. */
    public static List<String> ezdxf(Path file) throws IOException, InterruptedException {
        need("python3-ezdxf", PYTHON, "-c", "import ezdxf");
        return read(PYTHON, script("read-dxf.py"), file.toString());
    }

    /** What the two JavaScript readers count in a DXF, one fact a line. */
    public static List<String> javascript(Path file) throws IOException, InterruptedException {
        need("npm dxf-parser and dxf", "node", "-e", "require('dxf-parser'); require('dxf')");
        return read("node", script("read-dxf.js"), file.toString());
    }

    /** Draws an SVG at so many dots per inch. */
    public static void draw(Path svg, int dpi, Path png) throws IOException, InterruptedException {
        need("librsvg2-bin", "rsvg-convert", "--version");
        var dots = Integer.toString(dpi);
        read("rsvg-convert", "-d", dots, "-p", dots, "-b", "white", "-o", png.toString(), svg.toString());
    }

    private static void need(String what, String... command) throws InterruptedException {
        boolean there;
        try {
            there = run(command).status() == 0;
        } catch (IOException e) {
            there = false;
        }
        if (REQUIRED) {
            assertTrue(there, what + " is required (SPILE_READERS_REQUIRED) but missing");
        }
        assumeTrue(there, "skipped: " + what + " is not installed");
    }

    private static List<String> read(String... command) throws IOException, InterruptedException {
        var ended = run(command);
        assertEquals(0, ended.status(), String.join(" ", command) + "\n" + ended.out());
        return ended.out().lines().toList();
    }

    private static Ended run(String... command) throws IOException, InterruptedException {
        var builder = new ProcessBuilder(command).redirectErrorStream(true);
        var modules = Path.of(System.getProperty("spile.root", ".."), ".readers", "node_modules");
        builder.environment().putIfAbsent("NODE_PATH", modules.toString());
        builder.environment().put("PYTHONIOENCODING", "utf-8");
        var process = builder.start();
        process.getOutputStream().close();
        var out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "did not end: " + String.join(" ", command));
        return new Ended(process.exitValue(), out);
    }

    private static String script(String name) throws IOException {
        var copy = Files.createTempFile("read", name);
        copy.toFile().deleteOnExit();
        try (var in = Readers.class.getResourceAsStream("/readers/" + name)) {
            Files.write(copy, in.readAllBytes());
        }
        return copy.toString();
    }
}
