package org.snugsheet.engine;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rooms of the house, and which doors are open between them. */
class PackagesTest {

    private static final String ENGINE = "org.snugsheet.engine";
    private static final String COMMONS_MATH = "org.apache.commons.math3..";

    private static final JavaClasses CLASSES =
            new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests())).importPackages(ENGINE);

    @Test
    void theEngineKnowsNothingButJavaAndCommonsMath() {
        classes()
                .that()
                .resideInAPackage(ENGINE + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java..", ENGINE + "..", COMMONS_MATH, "org.jspecify.annotations..")
                .check(CLASSES);
    }

    @Test
    void onlyTheSolverSeesTheOptimizersOfCommonsMath() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ENGINE + ".solver..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.commons.math3.fitting..", "org.apache.commons.math3.optim..")
                .check(CLASSES);
    }

    @Test
    void comparisonsSeeOnlyTheDistributionsOfCommonsMath() {
        classes()
                .that()
                .resideInAPackage(ENGINE + ".comparison..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage(COMMONS_MATH)
                        .or(resideInAnyPackage("org.apache.commons.math3.distribution..")))
                .check(CLASSES);
    }

    @Test
    void dependenciesRunOneWay() {
        opens("table");
        opens("quantity");
        opens("solver");
        opens("water", "quantity");
        opens("heat", "quantity", "water");
        opens("reading", "quantity", "table");
        opens("comparison", "solver");
        opens("cooling", "quantity", "heat", "reading", "solver", "comparison");
        opens("insulation", "quantity", "table");
        opens("winter", "quantity");
        opens("clothing", "quantity", "table", "insulation");
        opens("surface", "quantity", "water", "table");
        opens("jar", "quantity", "water", "heat", "table", "insulation", "surface", "cooling", "comparison");
        opens("lesson", "quantity", "water", "heat", "reading", "cooling", "comparison");
        opens("slips", "quantity", "reading", "solver", "cooling");
        opens("summary", "quantity", "reading", "comparison", "cooling", "lesson", "slips", "winter");
        opens("fairness", "quantity", "heat", "reading", "comparison", "cooling", "jar");
    }

    private static void opens(String room, String... doors) {
        String[] allowed = new String[doors.length + 2];
        allowed[0] = ENGINE;
        allowed[1] = ENGINE + "." + room + "..";
        for (int i = 0; i < doors.length; i++) {
            allowed[i + 2] = ENGINE + "." + doors[i] + "..";
        }
        classes()
                .that()
                .resideInAPackage(ENGINE + "." + room + "..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage(ENGINE + "..").or(resideInAnyPackage(allowed)))
                .check(CLASSES);
    }
}
