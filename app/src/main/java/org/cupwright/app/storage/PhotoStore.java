package org.cupwright.app.storage;

import java.util.Optional;

/** Photos, each once, by the hash of its content. */
public interface PhotoStore {
    /** Keeps a photo; one that is there already stays as it is. */
    void add(Photo photo);

    Optional<Photo> find(String hash);
}
