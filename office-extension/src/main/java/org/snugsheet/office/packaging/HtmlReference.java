package org.snugsheet.office.packaging;

import java.util.List;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.words.Language;

/**
 * The reference of all functions as one page for a browser: nothing is loaded from elsewhere, it follows the reader’s choice of
 * light or dark, and it prints.
 */
final class HtmlReference {

    private static final String STYLE = """
            :root { color-scheme: light dark; --ink: #1d2730; --paper: #fff; --faint: #5b6770; --line: #d5dce1; --code: #eef3f6;
              --link: #0b5c94; }
            @media (prefers-color-scheme: dark) {
              :root { --ink: #e6ebef; --paper: #14191d; --faint: #a3b0b9; --line: #38424a; --code: #222b32; --link: #7cc0f0; }
            }
            body { color: var(--ink); background: var(--paper); font: 1rem/1.5 system-ui, sans-serif; max-width: 50rem;
              margin: 0 auto; padding: 1rem 1.2rem 4rem; }
            a { color: var(--link); }
            aside { border-left: .3rem solid #c77700; padding-left: .8rem; } aside p { margin: .3rem 0; }
            nav ul { columns: 14rem; padding-left: 1.2rem; }
            h2 { border-bottom: 2px solid var(--line); margin-top: 2.5rem; }
            article { border-bottom: 1px solid var(--line); padding-bottom: .8rem; break-inside: avoid; }
            h3 { margin-bottom: .3rem; overflow-wrap: anywhere; }
            h3 small { font-weight: normal; color: var(--faint); }
            code { background: var(--code); border-radius: .2rem; padding: .1rem .3rem; overflow-wrap: anywhere; }
            dl { display: grid; grid-template-columns: max-content 1fr; gap: .2rem .8rem; margin: .5rem 0; }
            dt { color: var(--faint); } dd { margin: 0; }
            @media (max-width: 34rem) { dl { display: block; } dd { margin: 0 0 .4rem 1rem; } }
            @media print {
              :root { --ink: #000; --paper: #fff; --faint: #333; --line: #999; --code: #fff; --link: #000; }
              body { max-width: none; font-size: 10pt; } nav { display: none; } a { text-decoration: none; }
            }
            """;

    private final StringBuilder html = new StringBuilder();
    private final Language language;

    private HtmlReference(Language language) {
        this.language = language;
    }

    static String of(List<Class<?>> families, Language language) {
        HtmlReference page = new HtmlReference(language);
        page.head();
        page.contents(families);
        for (Class<?> family : families) {
            page.html
                    .append("<section id=\"")
                    .append(family.getSimpleName())
                    .append("\">\n<h2>")
                    .append(escaped(LocalizedFunction.title(family, language)))
                    .append("</h2>\n");
            LocalizedFunction.of(family, language).forEach(page::add);
            page.html.append("</section>\n");
        }
        return page.html.append("</body>\n</html>\n").toString();
    }

    private void head() {
        String title = "Snugsheet – " + words(ReferenceWords.TITLE);
        html.append("<!DOCTYPE html>\n<html lang=\"").append(language.code()).append("\">\n<head>\n");
        html.append("<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n<title>");
        html.append(title).append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<h1>");
        html.append(title).append("</h1>\n");
        paragraph(words(ReferenceWords.HOW_TO_READ));
        paragraph(words(ReferenceWords.RANGES));
        paragraph(words(ReferenceWords.NOT_IN_ERRORS));
        paragraph(words(ReferenceWords.SYMBOLS));
        cautions();
    }

    /** Teachers who plan or read a jar of warm water with this page see them here. */
    private void cautions() {
        html.append("<aside>\n");
        for (Caution caution : Caution.ofEveryLesson()) {
            paragraph(escaped(language.words(caution)));
        }
        html.append("</aside>\n");
    }

    private void contents(List<Class<?>> families) {
        html.append("<nav>\n<h2>").append(words(ReferenceWords.CONTENTS)).append("</h2>\n");
        for (Class<?> family : families) {
            html.append("<p>")
                    .append(escaped(LocalizedFunction.title(family, language)))
                    .append("</p>\n<ul>\n");
            for (LocalizedFunction function : LocalizedFunction.of(family, language)) {
                html.append("<li><a href=\"#").append(function.anchor()).append("\">");
                html.append(function.name()).append("</a></li>\n");
            }
            html.append("</ul>\n");
        }
        html.append("</nav>\n");
    }

    private void add(LocalizedFunction function) {
        String arguments = function.signature().substring(function.name().length());
        html.append("<article id=\"")
                .append(function.anchor())
                .append("\">\n<h3>")
                .append(function.name());
        html.append("<small>").append(escaped(arguments)).append("</small></h3>\n");
        paragraph(escaped(function.text()));
        html.append("<dl>\n");
        for (LocalizedFunction.Argument argument : function.arguments()) {
            row(code(argument.name()), escaped(argument.text()));
        }
        html.append("</dl>\n<dl>\n");
        line(ReferenceWords.FORMULA, code(function.formula()));
        line(ReferenceWords.SOURCE, escaped(function.source()));
        line(ReferenceWords.EXAMPLE, code(function.example()) + " → " + escaped(function.answer()));
        if (function.refuses()) {
            line(ReferenceWords.REFUSED, code(function.refused()) + " – " + escaped(function.because()));
        }
        line(ReferenceWords.STORED, code(function.storedName()));
        html.append("</dl>\n</article>\n");
    }

    private void line(ReferenceWords label, String shown) {
        if (!shown.isEmpty()) {
            row(words(label), shown);
        }
    }

    private void row(String label, String shown) {
        html.append("<dt>").append(label).append("</dt><dd>").append(shown).append("</dd>\n");
    }

    private void paragraph(String text) {
        html.append("<p>").append(text).append("</p>\n");
    }

    private String words(ReferenceWords words) {
        return escaped(language.words(words));
    }

    private static String code(String text) {
        return text.isEmpty() ? "" : "<code>" + escaped(text) + "</code>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
