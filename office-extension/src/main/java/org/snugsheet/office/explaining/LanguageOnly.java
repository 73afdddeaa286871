package org.snugsheet.office.explaining;

import com.sun.star.beans.PropertyVetoException;
import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertyChangeListener;
import com.sun.star.beans.XPropertySet;
import com.sun.star.beans.XPropertySetInfo;
import com.sun.star.beans.XVetoableChangeListener;
import com.sun.star.lang.Locale;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.words.Language;

/** Replaces the document in a repeated call: a function asks a document only for its language. */
record LanguageOnly(Language language) implements XPropertySet {

    @Override
    public Object getPropertyValue(String name) throws UnknownPropertyException {
        if (name.equals("CharLocale")) {
            return new Locale(language.code(), "", "");
        }
        throw new UnknownPropertyException(name);
    }

    @Override
    public @Nullable XPropertySetInfo getPropertySetInfo() {
        return null;
    }

    @Override
    public void setPropertyValue(String name, Object value) throws PropertyVetoException {
        throw new PropertyVetoException(name);
    }

    @Override
    public void addPropertyChangeListener(String name, XPropertyChangeListener listener) {
        // Nothing ever changes.
    }

    @Override
    public void removePropertyChangeListener(String name, XPropertyChangeListener listener) {
        // None was kept.
    }

    @Override
    public void addVetoableChangeListener(String name, XVetoableChangeListener listener) {
        // Nothing ever changes.
    }

    @Override
    public void removeVetoableChangeListener(String name, XVetoableChangeListener listener) {
        // None was kept.
    }
}
