package org.spile.samples.houses;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.whole.Checks;
import org.spile.exporters.sheets.Sheets;
import org.spile.exporters.sheets.Subject;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;

/** A sample's folder, and what comes of its house. */
record Sample(Path folder) {
    private static final Path SAMPLES =
            Path.of(System.getProperty("spile.root", "..")).resolve("samples");

    /** Every folder with a house file, by name. */
    static Stream<Sample> all() {
        try (Stream<Path> folders = Files.list(SAMPLES)) {
            return folders.filter(folder -> Files.exists(folder.resolve("house.yaml"))).sorted().toList().stream()
                    .map(Sample::new);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Sample named(String name) {
        return new Sample(SAMPLES.resolve(name));
    }

    Path file() {
        return folder.resolve("house.yaml");
    }

    House house(String... edits) {
        HouseResult result = HouseFile.house(file(), List.of(), List.of(edits));
        if (result instanceof HouseResult.Sound sound) {
            return sound.house();
        }
        throw new AssertionError(((HouseResult.Wrong) result).problems().toString());
    }

    Findings findings(String... edits) {
        return Checks.answer(house(edits));
    }

    Sheets.Drawn sheets() {
        House house = house();
        return Sheets.of(Subject.of("house", house, Checks.answer(house).worstFirst()));
    }

    @Override
    public String toString() {
        return folder.getFileName().toString();
    }
}
