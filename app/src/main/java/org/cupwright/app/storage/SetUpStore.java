package org.cupwright.app.storage;

import java.util.Optional;

/** The course that is being set up in a folder, with every step that it came. */
public interface SetUpStore {
    /** As it stands; empty where none was begun. */
    Optional<SettingUp> find();

    void add(SettingUp stands);
}
