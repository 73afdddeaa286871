package org.snugsheet.office.packaging;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The contents of the extension, for people who must list them: CycloneDX 1.5, in JSON. Without time and serial number, which
 * the standard leaves free, so that two builds are equal.
 */
final class BillOfMaterials {

    private static final String HEAD = """
            {
              "bomFormat": "CycloneDX",
              "specVersion": "1.5",
              "version": 1,
              "metadata": {
                "component": %s
              },
              "components": [
                %s
              ],
              "dependencies": [
                { "ref": "%s", "dependsOn": ["%s"] },
                { "ref": "%s", "dependsOn": [%s] }
              ]
            }
            """;

    private static final String COMPONENT =
            "{ \"type\": \"%s\", \"bom-ref\": \"%s\", \"group\": \"%s\", \"name\": \"%s\", \"version\": \"%s\","
                    + " \"purl\": \"%2$s\", \"licenses\": [{ \"license\": { \"id\": \"%s\" } }]%s }";

    private BillOfMaterials() {}

    static String of(String version) throws IOException {
        String own = address("org.snugsheet", "office-extension", version);
        String engine = address("org.snugsheet", "engine", version);
        List<String> parts = new ArrayList<>();
        List<String> below = new ArrayList<>();
        parts.add(ours("library", engine, "engine", version));
        for (Library library : Library.values()) {
            String address = address(library.group(), library.artifact(), library.version());
            below.add("\"" + address + "\"");
            parts.add(COMPONENT.formatted(
                    "library",
                    address,
                    library.group(),
                    library.artifact(),
                    library.version(),
                    library.license(),
                    ", \"hashes\": [{ \"alg\": \"SHA-256\", \"content\": \"" + library.hash() + "\" }]"));
        }
        return HEAD.formatted(
                ours("application", own, "office-extension", version),
                String.join(",\n    ", parts),
                own,
                engine,
                engine,
                String.join(", ", below));
    }

    private static String ours(String type, String address, String name, String version) {
        return COMPONENT.formatted(type, address, "org.snugsheet", name, version, "Apache-2.0", "");
    }

    private static String address(String group, String artifact, String version) {
        return "pkg:maven/" + group + "/" + artifact + "@" + version;
    }
}
