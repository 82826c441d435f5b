package org.spile.samples.layers;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.spile.samples.layers.SourceRules.Source;

/** Where the project's sources and compiled classes lie. */
final class Tree {

    /** The modules that hold code, lowest first. */
    static final List<String> MODULES = List.of("geometry", "analysis", "exporters");

    private static final Path ROOT = Path.of(System.getProperty("spile.root", ".."));

    private Tree() {}

    /** The compiled main classes of every module, read from their folders. */
    static JavaClasses classes() {
        return new ClassFileImporter()
                .importPaths(MODULES.stream()
                        .map(module -> ROOT.resolve(module).resolve("target/classes"))
                        .toList());
    }

    /** The Java files of one folder of every module, such as {@code src/main/java}, in order of their paths. */
    static List<Source> sources(String folder) throws IOException {
        var found = new ArrayList<Source>();
        for (var module : MODULES) {
            var start = ROOT.resolve(module).resolve(folder);
            if (Files.isDirectory(start)) {
                for (var file : javaFiles(start)) {
                    var path = ROOT.relativize(file).toString().replace('\\', '/');
                    found.add(new Source(path, Files.readString(file)));
                }
            }
        }
        return List.copyOf(found);
    }

    private static List<Path> javaFiles(Path start) throws IOException {
        try (var files = Files.walk(start)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }
}
