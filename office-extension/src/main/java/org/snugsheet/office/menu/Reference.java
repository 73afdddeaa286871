package org.snugsheet.office.menu;

import com.sun.star.deployment.XPackageInformationProvider;
import com.sun.star.system.SystemShellExecuteFlags;
import com.sun.star.system.XSystemShellExecute;
import com.sun.star.ucb.XSimpleFileAccess;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;
import org.snugsheet.office.words.Language;

/** Opens the function reference that is installed with the extension, in the office’s language. */
final class Reference {

    private static final String EXTENSION = "org.snugsheet";
    private static final String PROVIDER = "/singletons/com.sun.star.deployment.PackageInformationProvider";

    private Reference() {}

    /**
     * Opens it in the program that shows web pages, unless the choice is quiet.
     *
     * @return its address
     * @throws Declined if this extension was packed without it
     */
    static String open(Choice choice) throws com.sun.star.uno.Exception {
        String address = address(choice.office(), choice.language());
        if (!choice.isQuiet()) {
            Uno.as(XSystemShellExecute.class, Uno.service(choice.office(), "com.sun.star.system.SystemShellExecute"))
                    .execute(address, "", SystemShellExecuteFlags.URIS_ONLY);
        }
        return address;
    }

    private static String address(XComponentContext office, Language language) throws com.sun.star.uno.Exception {
        String folder = Uno.as(XPackageInformationProvider.class, office.getValueByName(PROVIDER))
                .getPackageLocation(EXTENSION);
        XSimpleFileAccess files =
                Uno.as(XSimpleFileAccess.class, Uno.service(office, "com.sun.star.ucb.SimpleFileAccess"));
        for (Language tried : List.of(language, Language.ENGLISH)) {
            String address = folder + "/reference/functions_" + tried.code() + ".html";
            if (files.exists(address)) {
                return address;
            }
        }
        throw new Declined(MenuWords.NO_REFERENCE);
    }
}
