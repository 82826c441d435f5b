package org.spile.samples.layers;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree.Kind;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.lang.model.element.Modifier;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** The rules that only the source text shows; each answers with what breaks it, one line each. */
final class SourceRules {

    private static final Set<Kind> TYPES = Set.of(Kind.CLASS, Kind.RECORD, Kind.INTERFACE, Kind.ENUM);

    private SourceRules() {}

    /**
     * One Java file.
     *
     * @param path its path, {@code /} between the folders
     * @param text all of it
     */
    record Source(String path, String text) {}

    /** Public types without a doc comment, or whose first sentence doesn't end in a full stop. */
    static List<String> undocumented(List<Source> sources) throws IOException {
        var found = new ArrayList<String>();
        eachType(sources, (type, firstSentence) -> {
            if (type.getModifiers().getFlags().contains(Modifier.PUBLIC) && !firstSentence.endsWith(".")) {
                found.add(type.getSimpleName() + " is public; its doc comment's first sentence reads: "
                        + (firstSentence.isEmpty() ? "nothing" : firstSentence));
            }
        });
        return found;
    }

    /** Classes that name their published source but have no test class of their name. */
    static List<String> untestedFormulas(List<Source> sources, List<Source> tests) throws IOException {
        var tested = tests.stream().map(test -> fileName(test.path())).toList();
        var found = new ArrayList<String>();
        eachType(sources, (type, firstSentence) -> {
            var namesSource = type.getMembers().stream()
                    .anyMatch(member -> member instanceof VariableTree field
                            && field.getName().contentEquals("SOURCE"));
            if (namesSource && !tested.contains(type.getSimpleName() + "Test.java")) {
                found.add(type.getSimpleName() + " has a SOURCE and no " + type.getSimpleName() + "Test");
            }
        });
        return found;
    }

    /** Folders with Java files but without a {@code package-info.java}. */
    static List<String> packagesWithoutTour(List<Source> sources) {
        var folders = new LinkedHashSet<String>();
        var toured = new LinkedHashSet<String>();
        for (var source : sources) {
            if (fileName(source.path()).equals("package-info.java")) {
                toured.add(folder(source.path()));
            } else if (!fileName(source.path()).equals("module-info.java")) {
                folders.add(folder(source.path()));
            }
        }
        folders.removeAll(toured);
        return List.copyOf(folders);
    }

    /** Files longer than any reader should have to hold in mind. */
    static List<String> tooLong(List<Source> sources, int mostLines) {
        return sources.stream()
                .filter(source -> source.text().lines().count() > mostLines)
                .map(source -> source.path() + " has more than " + mostLines + " lines")
                .toList();
    }

    /** Lines that put work off, name an author or silence every warning. */
    static List<String> lineFaults(List<Source> sources) {
        var words = List.of("TO" + "DO", "FIX" + "ME", "@auth" + "or", "@SuppressWarnings(\"a" + "ll\")");
        var found = new ArrayList<String>();
        for (var source : sources) {
            for (var word : words) {
                if (source.text().contains(word)) {
                    found.add(source.path() + " holds " + word);
                }
            }
        }
        return found;
    }

    private static String fileName(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private static String folder(String path) {
        return path.substring(0, path.lastIndexOf('/') + 1);
    }

    @FunctionalInterface
    private interface TypeReader {
        void read(ClassTree type, String firstSentence);
    }

    private static void eachType(List<Source> sources, TypeReader reader) throws IOException {
        var compiler = ToolProvider.getSystemJavaCompiler();
        var files = sources.stream().map(SourceRules::inMemory).toList();
        var task = (JavacTask) compiler.getTask(null, null, null, List.of("-proc:none"), null, files);
        var docs = DocTrees.instance(task);
        for (var unit : task.parse()) {
            scan(unit, docs, reader);
        }
    }

    private static void scan(CompilationUnitTree unit, DocTrees docs, TypeReader reader) {
        new TreePathScanner<Void, Void>() {
            @Override
            public Void visitClass(ClassTree type, Void nothing) {
                if (TYPES.contains(type.getKind()) && !type.getSimpleName().isEmpty()) {
                    var comment = docs.getDocCommentTree(getCurrentPath());
                    reader.read(
                            type,
                            comment == null
                                    ? ""
                                    : comment.getFirstSentence().stream()
                                            .map(Object::toString)
                                            .collect(Collectors.joining())
                                            .strip());
                }
                return super.visitClass(type, null);
            }
        }.scan(unit, null);
    }

    private static JavaFileObject inMemory(Source source) {
        return new SimpleJavaFileObject(URI.create("memory:///" + source.path()), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return source.text();
            }
        };
    }
}
