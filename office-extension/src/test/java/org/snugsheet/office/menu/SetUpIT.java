package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.script.provider.XScriptProvider;
import com.sun.star.script.provider.XScriptProviderFactory;
import java.io.File;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.harness.SharedOffice;

/** The one line of the menu that must answer when no Java is there to answer. */
@ExtendWith(SharedOffice.class)
class SetUpIT {

    @Test
    void withJavaItSaysThatAllIsWell(Office office) {
        assertEquals(SetUpWords.READY.english(), sentence(office));
    }

    @Test
    void withoutJavaItSaysWhatToDo(Office office) {
        try (Office bare = office.setup().withoutJava().start()) {
            assertEquals(SetUpWords.MISSING.english(), sentence(bare));
            assertErrorsAreThoseOfTheSentence(bare);
            assertF1IsTheOffices(bare);
        }
    }

    @Test
    void withAJavaThatIsTooOldItSaysWhatToDo(@TempDir Path folder) throws IOException {
        Path oxt = NewerClasses.of(
                Path.of(System.getProperty(SharedOffice.OXT_PROPERTY, "")), folder.resolve("newer-classes.oxt"));
        try (Office old = OfficeSetup.plain().withExtension(oxt).start()) {
            assertEquals(SetUpWords.MISSING.english(), sentence(old));
            assertTrue(sentence(old).contains("Java 17 or newer"));
            assertErrorsAreThoseOfTheSentence(old);
        }
    }

    /** On request: {@code -Djavas=/opt/java11:/opt/java21}, each the folder of a Java, whose file {@code release} tells its age. */
    @Test
    @EnabledIfSystemProperty(
            named = "javas",
            matches = ".+",
            disabledReason = "A comparison of Javas, made when asked for")
    void itSaysOfEachJavaWhetherItWillDo(Office office) throws IOException {
        for (String folder : System.getProperty("javas").split(File.pathSeparator, -1)) {
            Path java = Path.of(folder);
            Properties release = new Properties();
            try (Reader lines = Files.newBufferedReader(java.resolve("release"))) {
                release.load(lines);
            }
            String version = release.getProperty("JAVA_VERSION", "").replace("\"", "");
            boolean willDo = Runtime.Version.parse(version).feature() >= 17;
            try (Office other = office.setup().withJava(java).start()) {
                assertEquals((willDo ? SetUpWords.READY : SetUpWords.MISSING).english(), sentence(other), version);
                if (!willDo) {
                    assertErrorsAreThoseOfTheSentence(other);
                    assertF1IsTheOffices(other);
                }
            }
        }
    }

    private static void assertErrorsAreThoseOfTheSentence(Office bare) {
        assertEquals(
                ErrorCodes.PARAMETER_LIST, bare.evaluate("=WRAP.LAYER(20;0.04)").error());
        assertEquals(ErrorCodes.NO_RESULT, bare.evaluate("=CHECK.VERSION()").error());
    }

    /** Without Java Snugsheet cannot help; the key must still work. */
    private static void assertF1IsTheOffices(Office bare) {
        try (CalcDocument sheet = bare.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            Menu.select(bare, sheet, "A1");
            assertFalse(Menu.answers(bare, sheet, FunctionHelp.ADDRESS));
        }
    }

    private static String sentence(Office office) {
        return office.call("asking the macro", () -> {
            XScriptProvider macros = office.service(
                            "com.sun.star.script.provider.MasterScriptProviderFactory", XScriptProviderFactory.class)
                    .createScriptProvider("");
            return String.valueOf(
                    macros.getScript("vnd.sun.star.script:Snugsheet.SetUp.Sentence?language=Basic&location=application")
                            .invoke(new Object[0], new short[1][], new Object[1][]));
        });
    }
}
