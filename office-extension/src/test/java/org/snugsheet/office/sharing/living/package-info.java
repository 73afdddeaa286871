/** Living copies, recalculated by another engine than the office’s. */
@NullMarked
package org.snugsheet.office.sharing.living;

import org.jspecify.annotations.NullMarked;
