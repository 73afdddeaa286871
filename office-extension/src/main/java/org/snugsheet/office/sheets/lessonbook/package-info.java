/**
 * The lesson book: one document that carries a class from the plan to the wall, each thing typed once.
 *
 * <p>{@link org.snugsheet.office.sheets.lessonbook.LessonBook} adds the pages; each has a package with the class that writes it and an enum
 * with its words, and {@code layout} holds what they share. What is typed is on Start and Readings alone. {@link
 * org.snugsheet.office.sheets.lessonbook.behind.Understood} and {@link org.snugsheet.office.sheets.lessonbook.behind.JarsBehind} turn it, on
 * a page behind the others, into what all other pages read, by the names of {@link
 * org.snugsheet.office.sheets.lessonbook.layout.Names}. So no two pages can disagree about a jar.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook;

import org.jspecify.annotations.NullMarked;
