package org.snugsheet.office.packaging;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.menu.Reference;
import org.snugsheet.office.words.Language;

/** The build’s step that writes the generated files of the extension. */
public final class WriteExtension {

    private static final System.Logger LOG = System.getLogger(WriteExtension.class.getName());

    private WriteExtension() {}

    /**
     * Writes the files.
     *
     * @param arguments the folder of the extension, the folder for what is published beside it, the version, and the address
     *     where releases are published
     * @throws IOException if a file cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Path beside = Path.of(arguments[1]);
        Description description = new Description(arguments[2], arguments[3]);
        writeAll(folder, description.files());
        write(beside.resolve(Description.FEED), description.feed());
        for (Library library : Library.values()) {
            library.writeLicenseInto(folder);
        }
        write(folder.resolve("bom.json"), BillOfMaterials.of(arguments[2]));
        writeInterfaces(folder);
        writeAll(folder, SetUpCheck.files());
        for (Language language : Language.values()) {
            write(folder.resolve(Reference.path(language)), HtmlReference.of(Families.all(), language));
            write(beside.resolve(markdown(language)), FunctionReference.of(Families.all(), language));
        }
    }

    /** Where the reference in Markdown is written; the English one is also committed, at the same path below this module’s folder. */
    static String markdown(Language language) {
        return language == Language.ENGLISH ? "functions.md" : "reference/functions_" + language.code() + ".md";
    }

    private static void writeInterfaces(Path folder) throws IOException {
        List<String> interfaceFiles = new ArrayList<>();
        for (Class<?> family : Families.all()) {
            String file = "idl/" + family.getSimpleName() + ".idl";
            interfaceFiles.add(file);
            write(folder.resolve(file), InterfaceText.of(family, FunctionDeclaration.of(family)));
        }
        write(folder.resolve("CalcAddIns.xcu"), FunctionRegistry.of(Families.all()));
        write(folder.resolve("Addons.xcu"), MenuRegistry.menu());
        write(folder.resolve("Accelerators.xcu"), MenuRegistry.keys());
        write(folder.resolve("ProtocolHandler.xcu"), MenuRegistry.handler());
        write(folder.resolve("snugsheet.components"), Components.withMenu(Families.services()));
        write(folder.resolve("META-INF/manifest.xml"), Manifest.withMenu(interfaceFiles));
    }

    private static void writeAll(Path folder, Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            write(folder.resolve(file.getKey()), file.getValue());
        }
    }

    private static void write(Path file, String text) throws IOException {
        LOG.log(System.Logger.Level.DEBUG, "Writing {0}", file);
        Files.createDirectories(file.getParent());
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
