/** Living copies, worked out by other programs than the office with the extension. */
@NullMarked
package org.snugsheet.office.sharing.living;

import org.jspecify.annotations.NullMarked;
