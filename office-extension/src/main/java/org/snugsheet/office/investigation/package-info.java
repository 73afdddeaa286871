/**
 * Lays out a sheet for an investigation: cautions, cells to type into, checks, results and chart, ready to print.
 *
 * <p>An {@link org.snugsheet.office.investigation.Investigation} is what the teacher plans, asked for by {@link
 * org.snugsheet.office.investigation.InvestigationForm} or given by a macro; {@link org.snugsheet.office.investigation.InvestigationSheet}
 * writes it on a new sheet. Everything on that sheet is formulas over the cells to type into.
 *
 * <p>This package uses pages and curves, the declared functions by their names, and the engine’s cautions.
 */
@NullMarked
package org.snugsheet.office.investigation;

import org.jspecify.annotations.NullMarked;
