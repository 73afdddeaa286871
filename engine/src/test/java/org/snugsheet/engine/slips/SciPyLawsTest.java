package org.snugsheet.engine.slips;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.engine.SciPyReruns;

/** The stored fits of the finder’s laws are what SciPy says today. {@link LawFitTest} compares the engine with them. */
class SciPyLawsTest {

    @Test
    void theStoredFitsAreThoseOfSciPy(@TempDir Path folder) throws IOException, InterruptedException {
        SciPyReruns.run("slip_law_reference.py", folder);
        SciPyReruns.assertSame(SciPyLawsTest.class, "scipy-laws.csv", folder, 1e-5);
    }
}
