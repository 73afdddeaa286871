package org.snugsheet.office.words;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;

/** All that has to be translated, with its English words: found in the classes, so that no list of it can be forgotten. */
public final class English {

    private English() {}

    /** Every constant of every enum of phrases in the engine and in this module, by its key. */
    public static Map<String, String> phrases() throws IOException, URISyntaxException, ClassNotFoundException {
        Map<String, String> phrases = new TreeMap<>();
        for (Class<?> ours : List.of(Problem.class, Language.class)) {
            for (String name : classesBeside(ours)) {
                Class<?> found = Class.forName(name, false, English.class.getClassLoader());
                if (found.isEnum() && Phrase.class.isAssignableFrom(found)) {
                    for (Object constant : found.getEnumConstants()) {
                        Phrase phrase = (Phrase) constant;
                        String other = phrases.put(phrase.key(), phrase.english());
                        if (other != null) {
                            throw new IllegalStateException("Two phrases with the key " + phrase.key());
                        }
                    }
                }
            }
        }
        return phrases;
    }

    /** Every text of the declared functions that must be translated. */
    static Map<String, String> functions() {
        Map<String, String> texts = new TreeMap<>();
        for (Class<?> family : Families.all()) {
            texts.put(
                    "title." + family.getSimpleName(),
                    family.getAnnotation(Family.class).title());
        }
        for (FunctionDeclaration function : Families.functions()) {
            texts.put(function.name(), function.function().text());
            if (!function.function().because().isEmpty()) {
                texts.put(function.name() + ".because", function.function().because());
            }
            for (FunctionDeclaration.ArgumentDeclaration argument : function.arguments()) {
                texts.put(argument.key(), argument.text());
                texts.put("argument." + argument.name(), argument.name());
            }
        }
        return texts;
    }

    /** Answers of examples: only those in words differ from language to language. */
    static Map<String, String> answers() {
        Map<String, String> answers = new TreeMap<>();
        for (FunctionDeclaration function : Families.functions()) {
            answers.put(function.name() + ".answer", function.function().answer());
        }
        return answers;
    }

    private static List<String> classesBeside(Class<?> one) throws IOException, URISyntaxException {
        Path place =
                Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
        if (Files.isDirectory(place)) {
            return classesUnder(place);
        }
        try (FileSystem jar = FileSystems.newFileSystem(place, (ClassLoader) null)) {
            return classesUnder(jar.getPath("/"));
        }
    }

    private static List<String> classesUnder(Path root) throws IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            files.map(file -> root.relativize(file).toString())
                    .filter(name -> name.startsWith("org/snugsheet/") && name.endsWith(".class"))
                    .filter(name -> !name.endsWith("-info.class"))
                    .map(name ->
                            name.substring(0, name.length() - ".class".length()).replace('/', '.'))
                    .forEach(names::add);
        }
        return names;
    }
}
