package org.snugsheet.office.menu;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Our extension as a Java sees it that is too old for it: each class says that it was compiled for a Java of many years from now. What
 * Java then does is in The Java Virtual Machine Specification, Java SE 17, section 4.1: it must not load a class of a later version.
 */
final class NewerClasses {

    /** Where a class file has the larger part of its version. */
    private static final int MAJOR = 7;

    private static final byte MANY_YEARS_FROM_NOW = 120;

    private NewerClasses() {}

    static Path of(Path oxt, Path file) throws IOException {
        try (InputStream in = Files.newInputStream(oxt);
                OutputStream out = Files.newOutputStream(file)) {
            rewrite(in, out);
        }
        return file;
    }

    private static void rewrite(InputStream in, OutputStream out) throws IOException {
        ZipInputStream from = new ZipInputStream(in);
        ZipOutputStream to = new ZipOutputStream(out);
        for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
            to.putNextEntry(new ZipEntry(entry.getName()));
            byte[] bytes = from.readAllBytes();
            if (entry.getName().endsWith(".jar")) {
                ByteArrayOutputStream jar = new ByteArrayOutputStream();
                rewrite(new ByteArrayInputStream(bytes), jar);
                bytes = jar.toByteArray();
            } else if (entry.getName().endsWith(".class")) {
                bytes[MAJOR] = MANY_YEARS_FROM_NOW;
            }
            to.write(bytes);
        }
        to.finish();
    }
}
