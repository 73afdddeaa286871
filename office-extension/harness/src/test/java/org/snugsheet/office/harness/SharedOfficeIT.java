package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;

/** One office for many tests, until one of them breaks it. */
@ExtendWith(SharedOffice.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SharedOfficeIT {
    private final List<Office> seen = new ArrayList<>();

    @Test
    @Order(1)
    void oneTestUsesIt(@WithoutExtension Office office) {
        assertEquals(1, office.evaluate("=1").number());
        seen.add(office);
    }

    @Test
    @Order(2)
    void theNextGetsTheSameAndBreaksIt(@WithoutExtension Office office) {
        assertSame(seen.get(0), office);
        office.processes().forEach(ProcessHandle::destroyForcibly);
        office.processes().forEach(process -> process.onExit().join());
        assertFalse(office.isAlive());
    }

    @Test
    @Order(3)
    void theOneAfterThatGetsANewOne(@WithoutExtension Office office) {
        assertNotSame(seen.get(0), office);
        assertEquals(1, office.evaluate("=1").number());
    }
}
