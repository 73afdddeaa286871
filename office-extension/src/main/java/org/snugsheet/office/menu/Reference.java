package org.snugsheet.office.menu;

import com.sun.star.deployment.XPackageInformationProvider;
import com.sun.star.system.SystemShellExecuteFlags;
import com.sun.star.system.XSystemShellExecute;
import com.sun.star.ucb.XSimpleFileAccess;
import com.sun.star.uno.XComponentContext;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** Opens the function reference that is installed with the extension, in the office’s language. */
public final class Reference {

    private static final System.Logger LOG = System.getLogger(Reference.class.getName());

    /** What the office knows the extension by. */
    public static final String EXTENSION = "org.snugsheet";

    private static final String PROVIDER = "/singletons/com.sun.star.deployment.PackageInformationProvider";

    private static final String SIGNPOST_NAME = "snugsheet-help-";

    private static final String SIGNPOST = """
        <!DOCTYPE html>
        <html><head><meta charset="utf-8"><meta http-equiv="refresh" content="0; url=%1$s"><title>Snugsheet</title></head>
        <body><a href="%1$s">Snugsheet</a></body></html>
        """;

    private Reference() {}

    /**
     * Where the page for a language is in the extension.
     *
     * @param language the language
     * @return its path
     */
    public static String path(Language language) {
        return "reference/functions_" + language.code() + ".html";
    }

    /**
     * Opens it in the program that shows web pages, unless the choice is quiet.
     *
     * @return its address
     * @throws DeclinedException if this extension was packed without it
     */
    static String open(MenuInvocation choice) throws com.sun.star.uno.Exception {
        String address = address(choice.office(), choice.language());
        if (!choice.isQuiet()) {
            show(choice, address);
        }
        return address;
    }

    /**
     * Opens it at one function, unless the choice is quiet.
     *
     * @return the address of that place
     * @throws DeclinedException if this extension was packed without it
     */
    static String openAt(MenuInvocation choice, FunctionDeclaration function) throws com.sun.star.uno.Exception {
        String address = address(choice.office(), choice.language());
        String place = address + "#" + function.anchor();
        if (!choice.isQuiet()) {
            show(choice, signpost(temporary(), place).orElse(address));
        }
        return place;
    }

    private static void show(MenuInvocation choice, String address) throws com.sun.star.uno.Exception {
        Uno.as(XSystemShellExecute.class, Uno.service(choice.office(), "com.sun.star.system.SystemShellExecute"))
                .execute(address, "", SystemShellExecuteFlags.URIS_ONLY);
    }

    /** A page that leads on to the place: the office drops what follows the # when it opens a file. */
    static Optional<String> signpost(Path folder, String place) {
        try {
            forgetSignposts(folder);
            Path page = Files.createTempFile(folder, SIGNPOST_NAME, ".html");
            Files.writeString(page, SIGNPOST.formatted(place));
            return Optional.of(page.toUri().toString());
        } catch (IOException noRoom) {
            LOG.log(
                    System.Logger.Level.WARNING,
                    "The reference opens at its beginning: no page could be written",
                    noRoom);
            return Optional.empty();
        }
    }

    /**
     * Deletes the pages that led on before: by now the browser has followed them. The office ends without telling, so that one is
     * always left; the next start of it takes that one away.
     */
    static void forgetSignposts(Path folder) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, SIGNPOST_NAME + "*.html")) {
            for (Path page : left) {
                Files.deleteIfExists(page);
            }
        } catch (IOException | DirectoryIteratorException othersOwn) {
            // In a folder shared with others one of theirs may be in the way.
            LOG.log(System.Logger.Level.DEBUG, "An old page was left in " + folder, othersOwn);
        }
    }

    /** The folder for what is soon gone. */
    static Path temporary() {
        return Path.of(System.getProperty("java.io.tmpdir"));
    }

    private static String address(XComponentContext office, Language language) throws com.sun.star.uno.Exception {
        String folder = Uno.as(XPackageInformationProvider.class, office.getValueByName(PROVIDER))
                .getPackageLocation(EXTENSION);
        XSimpleFileAccess files =
                Uno.as(XSimpleFileAccess.class, Uno.service(office, "com.sun.star.ucb.SimpleFileAccess"));
        for (Language tried : List.of(language, Language.ENGLISH)) {
            String address = folder + "/" + path(tried);
            if (files.exists(address)) {
                return address;
            }
        }
        throw new DeclinedException(MenuWords.NO_REFERENCE);
    }
}
