package org.snugsheet.office.harness;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What kind of office to start.
 *
 * <pre>{@code
 * try (Office office = OfficeSetup.plain().withExtension(oxt).inLocale(Locale.GERMANY).start()) { ... }
 * }</pre>
 *
 * @param extensions the packed .oxt files to install first, in this order
 * @param locale decides the decimal sign and the names of the functions shown
 * @param soffice the start script; when empty the harness looks for it
 * @param java the folder of the Java that it must take, which need not be there; when empty, it takes one that it finds
 * @param windows whether windows stay open until somebody answers them; an office without closes each one at once
 * @param frugal whether it leaves out what takes long and hardly any test looks at: the small picture of its first page in a saved file, and an
 *     installation of its own where another office of this build has made one
 * @param patience how long a start, an installation or a single call may take before it counts as hung
 * @param home where the folder of its profile is made; when empty, where temporary files go
 */
public record OfficeSetup(
        List<Path> extensions,
        Locale locale,
        Optional<Path> soffice,
        Optional<Path> java,
        boolean windows,
        boolean frugal,
        Duration patience,
        Optional<Path> home) {
    /** Generous, because the first start of an office on a machine reads it from the disk. */
    private static final Duration USUAL_PATIENCE = Duration.ofMinutes(2);

    /** A setup; the extensions are copied. */
    public OfficeSetup {
        extensions = List.copyOf(extensions);
    }

    /** American English, no extension, whichever office is found. */
    public static OfficeSetup plain() {
        return new OfficeSetup(
                List.of(),
                Locale.US,
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                Patience.scaled(USUAL_PATIENCE),
                Optional.empty());
    }

    /** The same with this extension installed as well; the file must end in {@code .oxt}. */
    public OfficeSetup withExtension(Path oxt) {
        List<Path> more = new ArrayList<>(extensions);
        more.add(oxt.toAbsolutePath().normalize());
        return new OfficeSetup(more, locale, soffice, java, windows, frugal, patience, home);
    }

    /** The same with this locale for new documents; menus stay in whatever language is installed. */
    public OfficeSetup inLocale(Locale other) {
        return new OfficeSetup(extensions, other, soffice, java, windows, frugal, patience, home);
    }

    /** The same with this start script, for a machine with several offices. */
    public OfficeSetup using(Path startScript) {
        return new OfficeSetup(
                extensions, locale, Optional.of(startScript.toAbsolutePath()), java, windows, frugal, patience, home);
    }

    /** The same on a machine where Java is missing, or so it seems to the office. */
    public OfficeSetup withoutJava() {
        return withJava(Path.of("no-java-here"));
    }

    /** The same with the Java in this folder and no other: too old a Java, say, or a newer one than the office would take. */
    public OfficeSetup withJava(Path folder) {
        return new OfficeSetup(
                extensions, locale, soffice, Optional.of(folder.toAbsolutePath()), windows, frugal, patience, home);
    }

    /** The same with windows that a test can find and work by their accessibility, although no screen shows them. */
    public OfficeSetup withWindows() {
        return new OfficeSetup(extensions, locale, soffice, java, true, frugal, patience, home);
    }

    /** The same without what takes long and hardly any test looks at. */
    public OfficeSetup frugally() {
        return new OfficeSetup(extensions, locale, soffice, java, windows, true, patience, home);
    }

    /** The same with another limit for anything that can hang. */
    public OfficeSetup withPatience(Duration limit) {
        return new OfficeSetup(extensions, locale, soffice, java, windows, frugal, limit, home);
    }

    /** The same with its profile somewhere below this folder, such as one whose name has blanks in it. */
    public OfficeSetup at(Path folder) {
        return new OfficeSetup(
                extensions, locale, soffice, java, windows, frugal, patience, Optional.of(folder.toAbsolutePath()));
    }

    /**
     * Whether this office can show windows at all. One that was built without them, such as Debian's {@code -nogui} packages, has none
     * of the parts that draw windows, and asks nobody anything.
     */
    public boolean canShowWindows() {
        return Programs.find(soffice).drawWindows();
    }

    /**
     * Starts it.
     *
     * @throws OfficeFailure when it cannot be started in time; nothing is left running and no file is left
     */
    public Office start() {
        return Office.start(this);
    }
}
