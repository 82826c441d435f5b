package org.spile.samples.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the jar holds, read with the JDK's own jar reader, and what it says when started. */
class RunnableJarTest {

    private static final Path ROOT = Path.of(System.getProperty("spile.root", ".."));
    private static final Path JAR = ROOT.resolve("exporters/target/spile.jar");

    private record Ended(int status, String out, String err) {}

    @TempDir
    private Path folder;

    private static List<JarEntry> entries() throws IOException {
        try (var jar = new JarFile(JAR.toFile())) {
            return jar.stream().filter(entry -> !entry.isDirectory()).toList();
        }
    }

    /** Every class's package without the folder that a class for later Java versions lies in. */
    private static Set<String> packages() throws IOException {
        var version = Pattern.compile("META-INF/versions/\\d+/");
        return entries().stream()
                .map(JarEntry::getName)
                .filter(name -> name.endsWith(".class"))
                .map(name -> version.matcher(name).replaceFirst(""))
                .map(name ->
                        name.substring(0, Math.max(name.lastIndexOf('/'), 0)).replace('/', '.'))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyForeignPackageHasItsLicenceNamed() throws IOException {
        var named = Files.readAllLines(ROOT.resolve("docs/third-party.txt")).stream()
                .filter(line -> line.matches("[a-z.]+ {2,}\\S.* {2,}\\S.*"))
                .map(line -> line.substring(0, line.indexOf(' ')))
                .filter(name -> !name.equals("package"))
                .toList();
        assertTrue(named.contains("org.locationtech.jts"), named::toString);
        var found = packages();
        assertEquals(
                List.of(),
                found.stream()
                        .filter(name -> !name.startsWith("org.spile."))
                        .filter(name -> named.stream().noneMatch(lib -> (name + ".").startsWith(lib + ".")))
                        .toList());
        assertEquals(
                List.of(),
                named.stream()
                        .filter(lib -> found.stream().noneMatch(name -> (name + ".").startsWith(lib + ".")))
                        .toList(),
                "named, but no longer in the jar");
    }

    @Test
    void licencesAreInside() throws IOException {
        var names = entries().stream().map(JarEntry::getName).toList();
        for (var text :
                List.of("META-INF/licence.txt", "META-INF/third-party.txt", "META-INF/LICENSE", "META-INF/NOTICE")) {
            assertTrue(names.contains(text), text);
        }
    }

    @Test
    void noSignatureNoModuleDescriptorNothingTwice() throws IOException {
        var names = entries().stream().map(JarEntry::getName).toList();
        assertEquals(
                List.of(),
                names.stream()
                        .filter(name -> name.matches("META-INF/.*\\.(SF|RSA|DSA|EC)|(.*/)?module-info\\.class"))
                        .toList());
        assertEquals(names.size(), Set.copyOf(names).size());
    }

    /** Libraries keep the times they came with; what we build carries the instant that the parent project states. */
    @Test
    void ourEntriesCarryTheBuildsInstant() throws IOException {
        var project = Files.readString(ROOT.resolve("pom.xml"));
        var stated = Pattern.compile("<project.build.outputTimestamp>(.*)Z</").matcher(project);
        assertTrue(stated.find());
        assertEquals(
                Set.of(LocalDateTime.parse(stated.group(1))),
                entries().stream()
                        .filter(entry -> entry.getName().startsWith("org/spile/"))
                        .map(JarEntry::getTimeLocal)
                        .collect(Collectors.toSet()));
    }

    @Test
    void manifestNamesTheCommand() throws IOException {
        try (var jar = new JarFile(JAR.toFile())) {
            var manifest = jar.getManifest();
            assertNotNull(manifest);
            assertEquals(
                    "org.spile.exporters.command.Spile",
                    manifest.getMainAttributes().getValue("Main-Class"));
            assertEquals("true", manifest.getMainAttributes().getValue("Multi-Release"));
        }
    }

    @Test
    void startsAndSaysTheBuildsVersion() throws Exception {
        var ended = start("--version");
        assertEquals(0, ended.status(), ended.err());
        try (var jar = new JarFile(JAR.toFile())) {
            var version = jar.getManifest().getMainAttributes().getValue("Implementation-Version");
            assertEquals("spile " + version, ended.out().strip());
        }
    }

    @Test
    void refusesAnUnknownOptionWithStatusTwo() throws Exception {
        var ended = start("--hlep");
        assertEquals(2, ended.status());
        assertEquals("", ended.out());
        assertEquals(2, ended.err().lines().count(), ended.err());
    }

    private Ended start(String word) throws IOException, InterruptedException {
        var out = folder.resolve("out.txt");
        var err = folder.resolve("err.txt");
        var java = Path.of(System.getProperty("java.home"), "bin", "java");
        var process = new ProcessBuilder(java.toString(), "-jar", JAR.toString(), word)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        return new Ended(process.waitFor(), Files.readString(out), Files.readString(err));
    }
}
