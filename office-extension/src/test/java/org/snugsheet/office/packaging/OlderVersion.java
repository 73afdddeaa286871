package org.snugsheet.office.packaging;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** The packed extension with another number: what the user installed long ago. */
final class OlderVersion {

    private OlderVersion() {}

    static Path of(Path oxt, String version, String older, Path file) throws IOException {
        try (InputStream in = Files.newInputStream(oxt);
                OutputStream out = Files.newOutputStream(file)) {
            rewrite(in, out, version, older);
        }
        return file;
    }

    private static void rewrite(InputStream in, OutputStream out, String version, String older) throws IOException {
        ZipInputStream from = new ZipInputStream(in);
        ZipOutputStream to = new ZipOutputStream(out);
        for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
            to.putNextEntry(new ZipEntry(entry.getName()));
            byte[] bytes = from.readAllBytes();
            if (entry.getName().endsWith(".jar")) {
                ByteArrayOutputStream jar = new ByteArrayOutputStream();
                rewrite(new ByteArrayInputStream(bytes), jar, version, older);
                bytes = jar.toByteArray();
            } else if (entry.getName().equals("description.xml")
                    || entry.getName().endsWith("version.properties")) {
                bytes = new String(bytes, StandardCharsets.UTF_8)
                        .replace(version, older)
                        .getBytes(StandardCharsets.UTF_8);
            }
            to.write(bytes);
        }
        to.finish();
    }
}
