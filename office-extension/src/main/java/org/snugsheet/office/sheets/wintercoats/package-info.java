/**
 * Wind chill, outfits, and the coats of animals: {@link org.snugsheet.office.sheets.wintercoats.WinterCoats}.
 */
@NullMarked
package org.snugsheet.office.sheets.wintercoats;

import org.jspecify.annotations.NullMarked;
