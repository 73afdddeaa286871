package org.snugsheet.engine.comparison;

/**
 * A material in a {@link Ranking}.
 *
 * @param place its place, 1 for the best; those that share a place cannot be told apart
 * @param name its name, as first typed
 * @param jars its jars; a {@linkplain ReplicateGroup#isSingleJar() single jar} speaks only for itself
 */
public record RankedMaterial(int place, String name, ReplicateGroup jars) {

    /**
     * The cooling constant of the material.
     *
     * @return the estimate for limits of 95 %
     */
    public Estimate estimate() {
        return jars.estimate();
    }
}
