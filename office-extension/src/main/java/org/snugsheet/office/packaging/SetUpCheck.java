package org.snugsheet.office.packaging;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.menu.SetUpWords;
import org.snugsheet.office.words.Language;

/**
 * A macro in the office’s own Basic that says whether the office has a Java for the extension: the one thing that cannot be said in Java. It
 * asks for a service of the extension, which the office can only make if it can load the extension’s classes.
 */
final class SetUpCheck {

    private static final String FOLDER = "basic/Snugsheet";
    private static final String SERVICE = "snugsheet.Check";

    /** What the office calls from the menu. */
    static final String ADDRESS = "vnd.sun.star.script:Snugsheet.SetUp.Tell?language=Basic&location=application";

    private static final String MACRO = """
            Option Explicit

            Sub Tell
                MsgBox Sentence(), 64, "Snugsheet"
            End Sub

            Function Sentence() As String
                Dim service As Object
                On Error Resume Next
                service = createUnoService("%s")
                On Error GoTo 0
                Sentence = Words(Not IsNull(service), Spoken())
            End Function

            Function Spoken() As String
                Dim path(0) As New com.sun.star.beans.PropertyValue
                Dim settings As Object
                path(0).Name = "nodepath"
                path(0).Value = "/org.openoffice.Setup/L10N"
                settings = createUnoService("com.sun.star.configuration.ConfigurationProvider")
                settings = settings.createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", path())
                Spoken = Left(settings.getByName("ooLocale"), 2)
            End Function

            Function Words(ready As Boolean, language As String) As String
                Select Case language
            %s    End Select
            End Function
            """;

    private SetUpCheck() {}

    /** What the manifest lists. */
    static String folder() {
        return FOLDER;
    }

    /** The files by their paths in the extension. */
    static Map<String, String> files() {
        return Map.of(FOLDER + "/script.xlb", """
                <?xml version="1.0" encoding="UTF-8"?>
                <!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
                <library:library xmlns:library="http://openoffice.org/2000/library" library:name="Snugsheet" library:readonly="false" library:passwordprotected="false">
                 <library:element library:name="SetUp"/>
                </library:library>
                """, FOLDER + "/dialog.xlb", """
                <?xml version="1.0" encoding="UTF-8"?>
                <!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
                <library:library xmlns:library="http://openoffice.org/2000/library" library:name="Snugsheet" library:readonly="false" library:passwordprotected="false"/>
                """, FOLDER + "/SetUp.xba", """
                <?xml version="1.0" encoding="UTF-8"?>
                <!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
                <script:module xmlns:script="http://openoffice.org/2000/script" script:name="SetUp" script:language="StarBasic">
                %s</script:module>
                """.formatted(
                        macro().replace("&", "&amp;").replace("<", "&lt;")));
    }

    private static String macro() {
        String cases = Stream.concat(
                        Language.translated().stream()
                                .map(language -> branch("Case \"" + language.code() + "\"", language)),
                        Stream.of(branch("Case Else", Language.ENGLISH)))
                .collect(Collectors.joining());
        return MACRO.formatted(SERVICE, cases);
    }

    private static String branch(String when, Language language) {
        return "    " + when + "\n        Words = IIf(ready, " + quoted(language, SetUpWords.READY) + ", "
                + quoted(language, SetUpWords.MISSING) + ")\n";
    }

    private static String quoted(Language language, Phrase words) {
        return "\"" + language.words(words).replace("\"", "\"\"") + "\"";
    }
}
