package org.snugsheet.engine.comparison;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.engine.SciPyReruns;

/** The stored quantiles, p values and limits are what SciPy says today. {@link RatioTest} holds the engine against them. */
class SciPyComparisonsTest {

    /** What the engine is held to; there is no search in these but Brent’s, to 1e−14. */
    private static final double TOLERANCE = 1e-8;

    @Test
    void theStoredComparisonsAreThoseOfSciPy(@TempDir Path folder) throws IOException, InterruptedException {
        SciPyReruns.run("comparison_reference.py", folder);
        SciPyReruns.assertSame(SciPyComparisonsTest.class, "scipy-comparisons.csv", folder, TOLERANCE);
        SciPyReruns.assertSame(SciPyComparisonsTest.class, "scipy-student.csv", folder, TOLERANCE);
    }
}
