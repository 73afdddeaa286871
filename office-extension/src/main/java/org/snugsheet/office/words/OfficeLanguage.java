package org.snugsheet.office.words;

import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.XComponentContext;
import org.snugsheet.office.uno.Uno;

/** The language of the office’s own menus, which the menu and the dialogs of the extension speak too. */
public final class OfficeLanguage {

    private static final String PROVIDER = "com.sun.star.configuration.ConfigurationProvider";
    private static final String ACCESS = "com.sun.star.configuration.ConfigurationAccess";
    private static final String SETTINGS = "/org.openoffice.Setup/L10N";

    private OfficeLanguage() {}

    /**
     * The language an office is set to.
     *
     * @param office its context
     * @return that language if it is one of these, otherwise English
     */
    public static Language of(XComponentContext office) {
        try {
            XMultiServiceFactory provider = Uno.as(XMultiServiceFactory.class, Uno.service(office, PROVIDER));
            Object[] where = {Uno.named("nodepath", SETTINGS)};
            XNameAccess settings = Uno.as(XNameAccess.class, provider.createInstanceWithArguments(ACCESS, where));
            return Language.of(String.valueOf(settings.getByName("ooLocale")));
        } catch (com.sun.star.uno.Exception noSettings) {
            // An office without settings of its own has no language either.
            return Language.ENGLISH;
        }
    }
}
