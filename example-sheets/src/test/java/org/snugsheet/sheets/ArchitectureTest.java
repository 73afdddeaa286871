package org.snugsheet.sheets;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.snugsheet.office.sheets.WorkedSheets;

/** Which package of the worked sheets may use which. */
class ArchitectureTest {

    private static final String SHEETS = "org.snugsheet.office.sheets";
    private static final String PROGRAM = "org.snugsheet.sheets";
    private static final String OFFICE = "org.snugsheet.office";

    private static final JavaClasses CLASSES =
            new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests())).importPackages(SHEETS);

    @Test
    void aSheetFillsAnyDocumentAndOnlyTheProgramStartsAnOffice() {
        noClasses()
                .that()
                .resideInAPackage(SHEETS + ".*..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(OFFICE + ".harness..", PROGRAM)
                .check(CLASSES);
    }

    @Test
    void aSheetUsesThePagesOfTheExtensionAndNotItsMenuOrPackaging() {
        classes()
                .that()
                .resideInAPackage(SHEETS + ".*..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage(OFFICE + "..")
                        .or(resideInAnyPackage(
                                SHEETS + ".*..",
                                OFFICE + ".page..",
                                OFFICE + ".uno..",
                                OFFICE + ".words..",
                                OFFICE + ".functions..")))
                .check(CLASSES);
    }

    @Test
    void dependenciesRunOneWay() {
        mayUse("builder");
        mayUse("shared", "builder");
        mayUse("readings", "builder", "shared");
        for (String sheet : packagesOfSheets()) {
            mayUse(sheet, "builder", "shared", "readings");
        }
        slices().matching(SHEETS + ".(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    /** JUnit is not packed with the program, so what needs it is left out. */
    @Test
    void theProgramIsPackedWithoutWhatNeedsJUnit() throws IOException {
        JavaClasses harness = new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests()))
                .importPackages(OFFICE + ".harness");
        List<String> leftOut = harness.stream()
                .filter(one -> one.getDirectDependenciesFromSelf().stream()
                        .anyMatch(to -> to.getTargetClass().getPackageName().startsWith("org.junit")))
                .map(one -> one.getName().replace('.', '/').replaceFirst("\\$.*", ""))
                .distinct()
                .toList();
        String build = Files.readString(Path.of("pom.xml"));
        assertFalse(leftOut.isEmpty());
        for (String name : leftOut) {
            assertTrue(build.contains("<exclude>" + name + "*</exclude>"), name);
        }
    }

    /** All but the three that the sheets share. */
    private static List<String> packagesOfSheets() {
        return WorkedSheets.all().stream()
                .map(sheet -> sheet.getClass().getPackageName().substring(SHEETS.length() + 1))
                .toList();
    }

    private static void mayUse(String one, String... others) {
        String[] allowed = Stream.concat(Stream.of(one), Arrays.stream(others))
                .map(name -> SHEETS + "." + name + "..")
                .toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage(SHEETS + "." + one + "..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage(SHEETS + "..").or(resideInAnyPackage(allowed)))
                .check(CLASSES);
    }
}
