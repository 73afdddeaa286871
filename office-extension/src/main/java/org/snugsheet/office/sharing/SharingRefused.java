package org.snugsheet.office.sharing;

/** Says in plain words why a copy cannot be made or formulas cannot be brought back. */
public final class SharingRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    SharingRefused(String sentence) {
        super(sentence);
    }

    SharingRefused(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
