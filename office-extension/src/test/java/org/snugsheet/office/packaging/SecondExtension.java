package org.snugsheet.office.packaging;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.FunctionDeclaration;

/**
 * Packs one family of functions that is no part of Snugsheet as an extension of its own, with the same generated files as
 * Snugsheet. So both can be in one office, to be compared.
 */
public final class SecondExtension {

    private static final String DESCRIPTION = """
            <?xml version="1.0" encoding="UTF-8"?>
            <description xmlns="http://openoffice.org/extensions/description/2006">
              <identifier value="%s"/><version value="1.0"/>
            </description>
            """;

    private SecondExtension() {}

    /**
     * Packs it.
     *
     * @param file where to write it; must end in {@code .oxt}
     * @param family an interface with {@link Family}
     * @param implementation its class, which must have the office’s {@code __getComponentFactory}
     * @return the file
     */
    public static Path write(Path file, Class<?> family, Class<?> implementation) throws IOException {
        String service = family.getAnnotation(Family.class).service();
        String idl = "idl/" + family.getSimpleName() + ".idl";
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("description.xml", utf8(DESCRIPTION.formatted(family.getName())));
        files.put(idl, utf8(InterfaceText.of(family, FunctionDeclaration.of(family))));
        files.put("CalcAddIns.xcu", utf8(FunctionRegistry.of(List.of(family))));
        files.put("snugsheet.components", utf8(Components.of(Map.of(service, implementation))));
        files.put("META-INF/manifest.xml", utf8(Manifest.of(List.of(idl))));
        files.put("snugsheet.jar", jar(implementation));
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return file;
    }

    /** The classes of its package, from the folder they were compiled into, and none of ours, which the office would take for those of our own jar. */
    private static byte[] jar(Class<?> registration) throws IOException {
        java.util.jar.Manifest manifest = new java.util.jar.Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().putValue("RegistrationClassName", registration.getName());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
            String folder = registration.getPackageName().replace('.', '/');
            for (Path compiled : classes(registration)) {
                jar.putNextEntry(new ZipEntry(folder + "/" + compiled.getFileName()));
                jar.write(Files.readAllBytes(compiled));
            }
        }
        return bytes.toByteArray();
    }

    private static List<Path> classes(Class<?> one) throws IOException {
        Path root = Path.of(java.net.URI.create(
                one.getProtectionDomain().getCodeSource().getLocation().toString()));
        Path folder = root.resolve(one.getPackageName().replace('.', '/'));
        try (var all = Files.list(folder)) {
            return all.filter(path -> path.toString().endsWith(".class"))
                    .sorted()
                    .toList();
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
