/**
 * What worked sheets share: the rows at their head with what can hurt, the cautions beside a cell, invented readings and the words
 * that say so, a dash where there is no answer.
 */
@NullMarked
package org.snugsheet.office.sheets.shared;

import org.jspecify.annotations.NullMarked;
