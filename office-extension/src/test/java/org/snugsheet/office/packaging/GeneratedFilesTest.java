package org.snugsheet.office.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.lib.uno.typeinfo.TypeInfo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;

/** What is generated says what is declared, and what is committed is what is generated. */
class GeneratedFilesTest {

    static List<FunctionDeclaration> functions() {
        return Families.functions();
    }

    static List<Class<?>> families() {
        return Families.all();
    }

    @Test
    void theCommittedReferenceIsTheGeneratedOne() throws IOException {
        String file = WriteExtension.markdown(Language.ENGLISH);
        List<String> generated =
                FunctionReference.of(Families.all(), Language.ENGLISH).lines().toList();
        List<String> committed = Files.readString(Path.of(file)).lines().toList();
        // Not the whole of both: what to do would scroll off the screen.
        int line = 0;
        while (line < generated.size()
                && line < committed.size()
                && generated.get(line).equals(committed.get(line))) {
            line++;
        }
        assertTrue(
                line == generated.size() && line == committed.size(),
                "Copy target/" + file + " to " + file + " and look at the difference, which begins at line "
                        + (line + 1));
    }

    /** In the other languages it is built and not committed. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void theReferenceInMarkdownHasEveryFunctionWhole(Language language) {
        String markdown = FunctionReference.of(Families.all(), language);
        int end = 0;
        for (FunctionDeclaration declaration : Families.functions()) {
            LocalizedFunction function = new LocalizedFunction(declaration, language);
            int start = markdown.indexOf("\n### " + function.signature() + "\n", end);
            assertTrue(start >= end, function.name() + " is there, in its place");
            int next = markdown.indexOf("\n### ", start + 1);
            end = next < 0 ? markdown.length() : next;
            String entry = markdown.substring(start, end);
            for (String line : lines(function)) {
                assertTrue(entry.contains(line), function.name() + ": " + line);
            }
        }
    }

    /** A reader who asks what an answer rests on finds a formula or a source; these three need neither. */
    @ParameterizedTest
    @MethodSource("functions")
    void everyFunctionSaysWhatItRestsOn(FunctionDeclaration function) {
        boolean nothingToBelieve =
                List.of("COOL.MINUTES", "COLD.GARMENTS", "CHECK.VERSION").contains(function.name());
        boolean says = !function.function().formula().isEmpty()
                || !function.function().source().isEmpty();
        assertEquals(!nothingToBelieve, says, function.name());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void thePageForTheBrowserHasEveryFunctionWhole(Language language) {
        String html = HtmlReference.of(Families.all(), language);
        for (FunctionDeclaration declaration : Families.functions()) {
            LocalizedFunction function = new LocalizedFunction(declaration, language);
            assertTrue(html.contains("<article id=\"" + function.anchor() + "\">"), function.name());
            assertTrue(html.contains("<a href=\"#" + function.anchor() + "\">"), function.name());
            for (String line : lines(function)) {
                assertTrue(html.contains(escaped(line)), function.name() + ": " + line);
            }
        }
        assertTrue(html.contains(escaped(language.words(Caution.SCHOOL_RULES))), "the cautions are there");
        assertFalse(html.matches("(?s).*(src=|<link|@import|url\\().*"), "nothing is loaded from elsewhere");
    }

    private static List<String> lines(LocalizedFunction function) {
        List<String> lines = new ArrayList<>(
                List.of(function.text(), function.formula(), function.source(), function.example(), function.answer()));
        if (function.refuses()) {
            lines.addAll(List.of(function.refused(), function.because()));
        }
        function.arguments().forEach(argument -> lines.addAll(List.of(argument.name(), argument.text())));
        return lines;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    @ParameterizedTest
    @MethodSource("functions")
    void everyTextIsASentence(FunctionDeclaration function) {
        assertTrue(function.function().text().endsWith("."), function.name());
        for (FunctionDeclaration.ArgumentDeclaration argument : function.arguments()) {
            assertTrue(argument.text().endsWith("."), function.name() + " " + argument.name());
            assertTrue(
                    !argument.optional() || argument.text().contains("Left out: "),
                    function.name() + " " + argument.name());
        }
    }

    @ParameterizedTest
    @MethodSource("functions")
    void namesKeepToTheGrammar(FunctionDeclaration function) {
        String service = function.method()
                .getDeclaringClass()
                .getAnnotation(Family.class)
                .service();
        String family = service.substring(service.indexOf('.') + 1);
        assertTrue(function.name().matches("[A-Z]+(\\.[A-Z]+){1,2}"), function.name());
        assertEquals(function.storedName(), "SNUGSHEET." + function.name().replaceFirst("\\.(\\w+)\\.(\\w+)", ".$1$2"));
        assertTrue(function.name().startsWith(family.toUpperCase(Locale.ROOT) + "."));
    }

    @Test
    void noTwoFunctionsShareAName() {
        Set<String> names = new HashSet<>();
        for (FunctionDeclaration function : Families.functions()) {
            assertTrue(names.add(function.name()), function.name());
            assertTrue(names.add(function.storedName()), function.storedName());
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void theThreeDescriptionsOfAnInterfaceNameTheSameThings(Class<?> family) throws Exception {
        List<FunctionDeclaration> functions = FunctionDeclaration.of(family);
        String idl = InterfaceText.of(family, functions);
        String registry = FunctionRegistry.of(List.of(family));
        TypeInfo[] types = (TypeInfo[]) family.getField("UNOTYPEINFO").get(null);

        assertEquals(functions.size(), types.length);
        for (int i = 0; i < types.length; i++) {
            FunctionDeclaration function = functions.get(i);
            String method = function.method().getName();
            assertEquals(method, types[i].getName());
            String parameters = Stream.of(function.method().getParameters())
                    .map(p -> "[^,]* " + p.getName())
                    .collect(Collectors.joining(","));
            assertTrue(idl.matches("(?s).* " + method + "\\(" + parameters + "\\).*"), method);
            assertTrue(registry.contains("oor:name=\"" + method + "\""), method);
        }
        Family declared = family.getAnnotation(Family.class);
        assertTrue(Components.withMenu(Families.services()).contains("\"" + declared.service() + "\""));
        assertFalse(declared.title().isBlank());
    }

    /** People’s files hold these names: this list grows with every new function, but a name on it never changes. */
    @Test
    void namesThatFilesHoldAreForEver() {
        Set<String> stored = Families.functions().stream()
                .map(FunctionDeclaration::storedName)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> kept = new TreeSet<>(Set.of(
                "SNUGSHEET.TEMP.CONVERT",
                "SNUGSHEET.TEMP.CHANGE",
                "SNUGSHEET.COOL.RATE",
                "SNUGSHEET.COOL.RATEERROR",
                "SNUGSHEET.COOL.HALFTIME",
                "SNUGSHEET.COOL.HALFTIMEERROR",
                "SNUGSHEET.COOL.START",
                "SNUGSHEET.COOL.STARTERROR",
                "SNUGSHEET.COOL.SURROUNDINGS",
                "SNUGSHEET.COOL.SURROUNDINGSERROR",
                "SNUGSHEET.COOL.MISFIT",
                "SNUGSHEET.COOL.MODEL",
                "SNUGSHEET.COOL.REPORT",
                "SNUGSHEET.COOL.SENTENCE",
                "SNUGSHEET.COOL.CURVE",
                "SNUGSHEET.COOL.SLOWER",
                "SNUGSHEET.COOL.SLOWERERROR",
                "SNUGSHEET.COOL.VERDICT",
                "SNUGSHEET.COOL.RANK",
                "SNUGSHEET.COOL.SHEET",
                "SNUGSHEET.COOL.MINUTES",
                "SNUGSHEET.COOL.HEAT",
                "SNUGSHEET.COOL.POWER",
                "SNUGSHEET.COOL.MIXED",
                "SNUGSHEET.COOL.TEMP",
                "SNUGSHEET.COOL.TIME",
                "SNUGSHEET.WRAP.LAYER",
                "SNUGSHEET.WRAP.FLAT",
                "SNUGSHEET.WRAP.ROUND",
                "SNUGSHEET.WRAP.CONDUCTIVITY",
                "SNUGSHEET.WRAP.MATERIALS",
                "SNUGSHEET.WRAP.USUAL",
                "SNUGSHEET.WRAP.THICKNESS",
                "SNUGSHEET.WRAP.TURNING",
                "SNUGSHEET.WRAP.SURFACE",
                "SNUGSHEET.WRAP.VESSEL",
                "SNUGSHEET.WRAP.FLOW",
                "SNUGSHEET.WRAP.BETWEEN",
                "SNUGSHEET.WRAP.FACE",
                "SNUGSHEET.WRAP.EXPECT",
                "SNUGSHEET.WRAP.END",
                "SNUGSHEET.WRAP.LEAK",
                "SNUGSHEET.WRAP.MEASURED",
                "SNUGSHEET.WRAP.MEASUREDERROR",
                "SNUGSHEET.WRAP.ONEJAR",
                "SNUGSHEET.WRAP.ONEJARERROR",
                "SNUGSHEET.WRAP.VERDICT",
                "SNUGSHEET.CHECK.WRAP",
                "SNUGSHEET.COLD.WINDCHILL",
                "SNUGSHEET.COLD.FROSTBITE",
                "SNUGSHEET.COLD.GARMENT",
                "SNUGSHEET.COLD.GARMENTS",
                "SNUGSHEET.COLD.OUTFIT",
                "SNUGSHEET.COLD.NEEDED",
                "SNUGSHEET.COLD.NEEDEDWORN",
                "SNUGSHEET.COLD.ANIMAL",
                "SNUGSHEET.COLD.COVERINGS",
                "SNUGSHEET.TEMP.READ",
                "SNUGSHEET.TEMP.ROUND",
                "SNUGSHEET.TEMP.UNIT",
                "SNUGSHEET.PLAN.SAFE",
                "SNUGSHEET.PLAN.MIX",
                "SNUGSHEET.PLAN.MIXHOT",
                "SNUGSHEET.PLAN.MIXCOLD",
                "SNUGSHEET.PLAN.BATH",
                "SNUGSHEET.PLAN.ICE",
                "SNUGSHEET.PLAN.TELLAPART",
                "SNUGSHEET.PLAN.LONGEST",
                "SNUGSHEET.PLAN.INTERVAL",
                "SNUGSHEET.PLAN.READINGS",
                "SNUGSHEET.PLAN.CERTAINTY",
                "SNUGSHEET.PLAN.REPEATS",
                "SNUGSHEET.PLAN.POWER",
                "SNUGSHEET.PLAN.LESSON",
                "SNUGSHEET.CHECK.READINGS",
                "SNUGSHEET.CHECK.ALL",
                "SNUGSHEET.CHECK.SHEET",
                "SNUGSHEET.CHECK.FAIR",
                "SNUGSHEET.CHECK.VERSION"));
        Set<String> newOnes = new TreeSet<>(stored);
        newOnes.removeAll(kept);
        kept.removeAll(stored);
        assertEquals(
                "to be added to this list: [], lost from it: []",
                "to be added to this list: " + newOnes + ", lost from it: " + kept);
    }
}
