@NullMarked
package org.snugsheet.office.sharing.lean;

import org.jspecify.annotations.NullMarked;
