package org.spile.exporters.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version the build wrote beside this class, so that it is said in one place: the parent's project file. */
final class BuildVersion {
    private BuildVersion() {}

    /** The bare version number. */
    static String number() {
        var properties = new Properties();
        try (var in = BuildVersion.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new IllegalStateException("version.properties is missing beside " + BuildVersion.class.getName());
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("version.properties can't be read", e);
        }
        return properties.getProperty("version");
    }
}
