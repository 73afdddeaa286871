package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Installing a packed extension, and the two ways in which that cannot work. */
class InstallIT {
    @Test
    void anInstalledExtensionIsKnownToTheOffice(@TempDir Path folder) throws IOException {
        try (Office office = Office.startWith(SmallExtension.writeTo(folder))) {
            FunctionWizard.Function mittens =
                    office.functionWizard().find(SmallExtension.FUNCTION).orElseThrow();
            assertEquals("Counts mittens.", mittens.description());
            assertEquals(FunctionWizard.Category.ADD_IN, mittens.category());
            int error = office.evaluate("=MITTENS()").error();
            assertNotEquals(0, error, "there is no code behind it");
            assertNotEquals(ErrorCodes.NAME, error, "the name is known");
        }
    }

    @Test
    void theNextOfficeKnowsNothingOfIt() {
        try (Office office = Office.start()) {
            assertTrue(office.functionWizard().find(SmallExtension.FUNCTION).isEmpty());
            assertEquals(ErrorCodes.NAME, office.evaluate("=MITTENS()").error());
        }
    }

    @Test
    void aFileThatIsNoExtensionIsRefused(@TempDir Path folder) throws IOException {
        Path oxt = Files.writeString(folder.resolve("sock.oxt"), "only wool in here");
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> Office.startWith(oxt));
        assertTrue(failure.getMessage().contains("sock.oxt"), failure.getMessage());
    }

    @Test
    void aMissingFileIsNamed(@TempDir Path folder) {
        Path oxt = folder.resolve("lost.oxt");
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> Office.startWith(oxt));
        assertTrue(failure.getMessage().contains("lost.oxt"), failure.getMessage());
        assertFalse(Files.exists(oxt));
    }
}
