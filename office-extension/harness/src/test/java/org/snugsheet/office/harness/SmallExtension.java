package org.snugsheet.office.harness;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The smallest extension whose presence can be seen from outside: it tells the office that there is a function
 * MITTENS, without any code for it. So the tests of the harness need no extension of the project.
 */
final class SmallExtension {
    static final String FUNCTION = "MITTENS";

    private static final String DESCRIPTION = """
        <?xml version="1.0" encoding="UTF-8"?>
        <description xmlns="http://openoffice.org/extensions/description/2006"
            xmlns:xlink="http://www.w3.org/1999/xlink">
          <identifier value="org.snugsheet.harness.mittens"/><version value="1.0"/>
          <registration>
            <simple-license accept-by="admin" default-license-id="warm">
              <license-text xlink:href="LICENSE" lang="en" license-id="warm"/>
            </simple-license>
          </registration>
        </description>
        """;

    private static final String MANIFEST = """
        <?xml version="1.0" encoding="UTF-8"?>
        <manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
          <manifest:file-entry manifest:full-path="CalcAddIns.xcu"
              manifest:media-type="application/vnd.sun.star.configuration-data"/>
        </manifest:manifest>
        """;

    private static final String ADD_INS = """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:component-data xmlns:oor="http://openoffice.org/2001/registry" oor:name="CalcAddIns"
            oor:package="org.openoffice.Office">
          <node oor:name="AddInInfo">
            <node oor:name="org.snugsheet.harness.Mittens" oor:op="replace">
              <node oor:name="AddInFunctions">
                <node oor:name="mittens" oor:op="replace">
                  <prop oor:name="DisplayName"><value xml:lang="en">MITTENS</value></prop>
                  <prop oor:name="Description"><value xml:lang="en">Counts mittens.</value></prop>
                  <prop oor:name="Category"><value>Add-In</value></prop>
                </node>
              </node>
            </node>
          </node>
        </oor:component-data>
        """;

    private SmallExtension() {}

    static Path writeTo(Path folder) throws IOException {
        Path oxt = folder.resolve("mittens.oxt");
        Map<String, String> files = Map.of(
                "description.xml",
                DESCRIPTION,
                "META-INF/manifest.xml",
                MANIFEST,
                "CalcAddIns.xcu",
                ADD_INS,
                "LICENSE",
                "Keep warm.");
        try (OutputStream out = Files.newOutputStream(oxt);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return oxt;
    }
}
