package org.snugsheet.engine.comparison;

/**
 * What one jar’s readings say, and what the jar is wrapped in.
 *
 * @param name the wrap; jars with the same name, apart from capitals and outer blanks, are jars of one material
 * @param estimate the jar’s cooling constant
 */
public record NamedEstimate(String name, Estimate estimate) {}
