package org.snugsheet.office.uno;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.XComponentContext;
import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;

/** Writes documents into files and reads them, unseen by the user. */
public final class DocumentFile {

    private DocumentFile() {}

    /**
     * Writes a document into a file; the document itself keeps its own.
     *
     * @param document the document
     * @param address the address of the file, which is overwritten
     * @param filter the office’s name of the file’s format
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static void store(Object document, String address, String filter) throws com.sun.star.uno.Exception {
        PropertyValue[] how = {Uno.named("FilterName", filter), Uno.named("Overwrite", true)};
        Uno.as(XStorable.class, document).storeToURL(address, how);
    }

    /**
     * A file as people write it, for a message.
     *
     * @param address the address of the file
     * @return its path on this computer; the address itself if it is elsewhere
     */
    public static String written(String address) {
        try {
            return Path.of(URI.create(address)).toString();
        } catch (IllegalArgumentException | FileSystemNotFoundException elsewhere) {
            return address;
        }
    }

    /**
     * Opens a file without a window.
     *
     * @param office the office’s context
     * @param address the address of the file
     * @return the document, to be closed by the caller
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static XComponent openHidden(XComponentContext office, String address) throws com.sun.star.uno.Exception {
        return Uno.as(XComponentLoader.class, Uno.service(office, "com.sun.star.frame.Desktop"))
                .loadComponentFromURL(address, "_blank", 0, new PropertyValue[] {Uno.named("Hidden", true)});
    }
}
