package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.star.lang.XServiceInfo;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Offices that are started in other than the usual way. */
class StartIT {
    @Test
    void germanReadsAndShowsADecimalComma() {
        try (Office office = OfficeSetup.plain().inLocale(Locale.GERMANY).start()) {
            assertEquals(new CellResult.OfNumber(21.5, "21,5"), office.evaluate("=VALUE(\"21,5\")"));
        }
    }

    @Test
    void americanDoesNot() {
        try (Office office = Office.start()) {
            assertEquals(new CellResult.OfNumber(21.5, "21.5"), office.evaluate("=VALUE(\"21.5\")"));
            assertNotEquals(0, office.evaluate("=VALUE(\"21,5\")").error());
        }
    }

    @Test
    void bySocketItIsTheSameOffice() {
        System.setProperty(OfficeProcess.SOCKET, "true");
        try (Office office = Office.start()) {
            assertEquals(4, office.evaluate("=2+2").number());
        } finally {
            System.clearProperty(OfficeProcess.SOCKET);
        }
    }

    /** The service is one that the office itself brings, written in Java. */
    @Test
    void javaCanBeTakenAway() {
        String service = "com.sun.star.script.provider.ScriptProviderForJava";
        try (Office office = Office.start()) {
            assertNotNull(office.service(service, XServiceInfo.class));
        }
        try (Office office = OfficeSetup.plain().withoutJava().start()) {
            assertThrows(OfficeFailure.class, () -> office.service(service, XServiceInfo.class));
            assertEquals(4, office.evaluate("=2+2").number(), "built-in functions need no Java");
        }
    }
}
