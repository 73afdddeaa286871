/**
 * Tables of published figures, as data files next to the classes that use them, and lookup of loosely typed names.
 *
 * <p>{@link org.snugsheet.engine.table.DataFile} reads such a file; {@link org.snugsheet.engine.table.Names} finds the
 * meaning of a typed name and suggests one for a typing error; {@link org.snugsheet.engine.table.OtherNames} knows names in
 * other languages, and {@link org.snugsheet.engine.table.Keywords} the fixed words that people type. None of them knows what
 * the figures mean.
 *
 * <p>This package uses no other package of the engine, and is not exported.
 */
package org.snugsheet.engine.table;
