/**
 * The lesson book: one document that carries a class from the plan to the wall, each thing typed once.
 *
 * <p>{@link org.snugsheet.office.sheets.lessonbook.LessonBook} adds the pages; each has a class that writes it and an enum with its words.
 * What is typed is on Start and Readings alone. {@link org.snugsheet.office.sheets.lessonbook.Understood} and {@link
 * org.snugsheet.office.sheets.lessonbook.JarsBehind} turn it, on a page behind the others, into what all other pages read, by the names
 * of {@link org.snugsheet.office.sheets.lessonbook.Names}. So no two pages can disagree about a jar.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook;

import org.jspecify.annotations.NullMarked;
