/**
 * Tables of published figures, as data files that lie beside the classes that use them, and names found in them however
 * loosely typed.
 *
 * <p>{@link org.snugsheet.engine.table.DataFile} reads such a file; {@link org.snugsheet.engine.table.Names} finds what a
 * typed name stands for and suggests one for a slip; {@link org.snugsheet.engine.table.OtherNames} knows names in other languages,
 * and {@link org.snugsheet.engine.table.Keywords} the fixed words that people type. None knows what the figures mean.
 *
 * <p>This package uses nothing of the engine, and only the engine’s own packages use it: it is not exported.
 */
package org.snugsheet.engine.table;
