package org.snugsheet.office.sharing;

import org.snugsheet.office.words.Language;

/** Says in plain words why a copy cannot be made or formulas cannot be brought back. */
public final class SharingRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final SharingWords reason;
    private final String what;

    SharingRefused(SharingWords reason) {
        this(reason, "");
    }

    SharingRefused(SharingWords reason, String what) {
        super(Language.ENGLISH.say(reason, what));
        this.reason = reason;
        this.what = what;
    }

    /**
     * The reason in a language.
     *
     * @param language the language to say it in
     * @return a sentence that says what to do
     */
    public String sentence(Language language) {
        return language.say(reason, what);
    }
}
