package org.snugsheet.office;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which package of the extension may use which, and which of them may see the office. */
class ArchitectureTest {

    private static final String EXTENSION = "org.snugsheet.office";
    private static final String OFFICE = "com.sun.star..";

    private static final JavaClasses CLASSES =
            new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests())).importPackages(EXTENSION);

    @Test
    void dependenciesRunOneWay() {
        mayUse("uno");
        mayUse("words", "uno");
        mayUse("cells", "words");
        mayUse("declare", "words");
        mayUse("functions", "cells", "declare", "words");
        mayUse("page", "uno", "words");
        mayUse("dialog", "uno", "words");
        mayUse("sharing", "declare", "functions", "page", "uno", "words");
        mayUse("drawing", "cells", "dialog", "functions", "page", "uno", "words");
        mayUse("sheets", "functions", "page", "uno", "words");
        mayUse("explaining", "cells", "declare", "functions", "page", "uno", "words");
        mayUse(
                "menu",
                "declare",
                "dialog",
                "drawing",
                "explaining",
                "functions",
                "page",
                "sharing",
                "sheets",
                "uno",
                "words");
        mayUse("packaging", "declare", "functions", "menu", "sheets", "words");
        slices().matching(EXTENSION + ".(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    /** Its pages meet in what they share and in the one class that puts them together. */
    @Test
    void pagesOfTheLessonBookDoNotGoInCircles() {
        String book = EXTENSION + ".sheets.lessonbook";
        slices().matching(book + ".(*)").should().beFreeOfCycles().check(CLASSES);
        noClasses()
                .that()
                .resideInAPackage(book + ".layout")
                .should()
                .dependOnClassesThat(resideInAPackage(book + "..").and(resideOutsideOfPackage(book + ".layout")))
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAPackage(book + ".*")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(book)
                .check(CLASSES);
    }

    /** It is left out of the packed extension, and so would be what it calls for. */
    @Test
    void onlyTheBuildUsesPackaging() {
        noClasses()
                .that()
                .resideOutsideOfPackage(EXTENSION + ".packaging..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(EXTENSION + ".packaging..")
                .check(CLASSES);
    }

    /** A sentence is chosen by a language; three classes ask the office which. */
    @Test
    void wordsKnowNoOffice() {
        classes()
                .that()
                .resideInAPackage(EXTENSION + ".words..")
                .and()
                .doNotHaveSimpleName("DocumentLanguage")
                .and()
                .doNotHaveSimpleName("DocumentRegion")
                .and()
                .doNotHaveSimpleName("OfficeLanguage")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackages(OFFICE, EXTENSION + ".uno.."))
                .check(CLASSES);
    }

    /** What a function may see is its arguments and the document’s language: so it runs in plain Java too. */
    @Test
    void functionsWorkOnNoDocument() {
        classes()
                .that()
                .resideInAnyPackage(EXTENSION + ".functions..", EXTENSION + ".cells..", EXTENSION + ".declare..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage(OFFICE)
                        .or(resideInAnyPackage(
                                "com.sun.star.beans..",
                                "com.sun.star.lang..",
                                "com.sun.star.lib..",
                                "com.sun.star.uno.."))
                        .or(simpleName("NoConvergenceException")))
                .check(CLASSES);
    }

    /** The build only reads which library is packed. */
    @Test
    void calculationsAreTheEngines() {
        noClasses()
                .that()
                .resideOutsideOfPackage(EXTENSION + ".packaging..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.math3..")
                .check(CLASSES);
    }

    private static void mayUse(String one, String... others) {
        String[] allowed = Stream.concat(Stream.of(one), Arrays.stream(others))
                .map(name -> EXTENSION + "." + name + "..")
                .toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage(EXTENSION + "." + one + "..")
                .should()
                .onlyDependOnClassesThat(
                        resideOutsideOfPackage(EXTENSION + "..").or(resideInAnyPackage(allowed)))
                .check(CLASSES);
    }
}
