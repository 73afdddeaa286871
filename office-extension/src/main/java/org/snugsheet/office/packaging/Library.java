package org.snugsheet.office.packaging;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Properties;
import org.apache.commons.math3.util.FastMath;

/** A library that is packed into the extension’s jar. What is said of it is read from its own jar, so it is never out of date. */
enum Library {
    /** Least squares, distributions and linear algebra. */
    COMMONS_MATH("org.apache.commons", "commons-math3", "Apache-2.0", FastMath.class);

    private static final List<String> FILES = List.of("LICENSE.txt", "NOTICE.txt");

    private final String group;
    private final String artifact;
    private final String license;
    private final URI jar;

    Library(String group, String artifact, String license, Class<?> one) {
        this.group = group;
        this.artifact = artifact;
        this.license = license;
        jar = URI.create(one.getProtectionDomain().getCodeSource().getLocation().toString());
    }

    String group() {
        return group;
    }

    String artifact() {
        return artifact;
    }

    /** By the SPDX list of licenses. */
    String license() {
        return license;
    }

    String version() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = open("maven/" + group + "/" + artifact + "/pom.properties")) {
            properties.load(in);
        }
        return properties.getProperty("version");
    }

    /** The SHA-256 of its jar. */
    String hash() throws IOException {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(Path.of(jar)));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** Its license and its notice beside our jar, for people to read. */
    void writeLicenseInto(Path folder) throws IOException {
        Path own = folder.resolve("licenses").resolve(artifact);
        Files.createDirectories(own);
        for (String file : FILES) {
            try (InputStream in = open(file)) {
                Files.write(own.resolve(file), in.readAllBytes());
            }
        }
    }

    private InputStream open(String inMetaInf) throws IOException {
        return new URL("jar:" + jar + "!/META-INF/" + inMetaInf).openStream();
    }
}
