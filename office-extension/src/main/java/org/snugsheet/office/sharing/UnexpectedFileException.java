package org.snugsheet.office.sharing;

import java.util.Optional;

/** A file is not as the offices known so far write it. */
final class UnexpectedFileException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * For a file.
     *
     * @param missing what it does not have
     */
    UnexpectedFileException(String missing) {
        super(missing);
    }

    /**
     * For a part that cannot be read or written.
     *
     * @param part its name
     * @param cause why
     */
    UnexpectedFileException(String part, Exception cause) {
        super(part, cause);
    }

    /** What must be there. */
    static <T> T unless(Optional<T> there, String missing) throws UnexpectedFileException {
        return there.orElseThrow(() -> new UnexpectedFileException(missing));
    }
}
