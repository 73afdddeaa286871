package org.snugsheet.office.menu;

import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import org.junit.jupiter.api.condition.EnabledIf;

/**
 * On tests that see windows, or type into cells as a person does: without windows (Debian’s {@code -nogui} packages) the office ends
 * when it is to show its bars for that.
 */
@Retention(RetentionPolicy.RUNTIME)
@EnabledIf(
        value = "org.snugsheet.office.menu.WindowsIT#theOfficeCanShowWindows",
        disabledReason = "This LibreOffice was built without windows")
@interface NeedsWindows {}
