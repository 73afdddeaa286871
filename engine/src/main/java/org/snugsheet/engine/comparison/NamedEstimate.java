package org.snugsheet.engine.comparison;

/**
 * The estimate of one jar with the name of its wrap.
 *
 * @param name the wrap; jars with the same name, apart from capitals and outer blanks, are jars of one material
 * @param estimate the jar’s cooling constant
 */
public record NamedEstimate(String name, Estimate estimate) {}
