package org.snugsheet.engine.cooling;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.engine.SciPyReruns;

/** The stored fits are what SciPy says today. {@link CoolingFitReferenceTest} holds the engine against them. */
class SciPyFitsTest {

    /** As tight as the loosest check against the engine; SciPy’s own search stops at about 1e−8 in the parameters. */
    private static final double TOLERANCE = 1e-6;

    @Test
    void theStoredFitsAreThoseOfSciPy(@TempDir Path folder) throws IOException, InterruptedException {
        SciPyReruns.run("cooling_reference.py", folder);
        SciPyReruns.assertSame(SciPyFitsTest.class, "scipy-fits.csv", folder, TOLERANCE);
    }
}
