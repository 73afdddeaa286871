/**
 * Writes what describes the cell functions to the office, from their declarations: the interfaces in the office’s language,
 * the registration of the functions with all their texts, the list of components, the manifest, and the function reference.
 *
 * <p>Only the build uses this package; it is left out of the packed extension.
 */
@NullMarked
package org.snugsheet.office.packaging;

import org.jspecify.annotations.NullMarked;
