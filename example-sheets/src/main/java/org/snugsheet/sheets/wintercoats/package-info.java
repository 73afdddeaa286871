/**
 * Wind chill, outfits, and the coats of animals: {@link org.snugsheet.sheets.wintercoats.WinterCoats}.
 */
@NullMarked
package org.snugsheet.sheets.wintercoats;

import org.jspecify.annotations.NullMarked;
