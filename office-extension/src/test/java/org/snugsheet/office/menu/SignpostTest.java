package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page through which F1 reaches a place of the reference: there is never more than one. */
class SignpostTest {

    @Test
    void oneIsLeftHoweverOftenHelpWasAskedFor(@TempDir Path folder) throws IOException {
        Path other = Files.createFile(folder.resolve("somebody-else.html"));
        assertTrue(
                Reference.signpost(folder, "file:///reference.html#cool-rate").isPresent());
        String last =
                Reference.signpost(folder, "file:///reference.html#wrap-flat").orElseThrow();
        Path page = Path.of(URI.create(last));
        assertTrue(Files.readString(page).contains("url=file:///reference.html#wrap-flat"));
        assertEquals(2, files(folder).size());
        Reference.forgetSignposts(folder);
        assertEquals(List.of(other), files(folder));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
        }
    }
}
