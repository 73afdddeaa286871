/**
 * In which language the user is told something.
 *
 * <p>Everything a person reads is a {@link org.snugsheet.engine.Phrase}: a constant of an enum with its English words beside it,
 * so that a reader of the code reads the sentence. Its words in Spanish, French and German are in
 * {@code phrases_es.properties}, {@code phrases_fr.properties} and {@code phrases_de.properties} under its key; those of the
 * declared functions in {@code functions_….properties}. A sentence is always whole, never put together from parts; values go
 * into it by {@link java.text.MessageFormat}. {@link org.snugsheet.office.words.Language} finds the words and writes the
 * numbers as that language does.
 *
 * <p>A cell speaks the language of its document, menus and dialogs that of the office. A language that is not among these is
 * spoken to in English.
 *
 * <p>This package uses the engine’s phrases and, to ask for a locale, the office and {@link org.snugsheet.office.uno}.
 */
@NullMarked
package org.snugsheet.office.words;

import org.jspecify.annotations.NullMarked;
