package org.cupwright.app.store;

import java.time.Clock;
import java.util.Optional;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.PhotoStore;

record SqlPhotos(Sql sql, Dialect dialect, Clock clock) implements PhotoStore {
    @Override
    public void add(Photo photo) {
        sql.change(
                "INSERT INTO photo (hash, recorded_at, content) VALUES (?, ?, ?)" + dialect.unlessThere("hash"),
                photo.hash(),
                clock.instant().toString(),
                photo.bytes());
    }

    @Override
    public Optional<Photo> find(String hash) {
        return sql.find(row -> Photo.kept(row.getBytes(1)), "SELECT content FROM photo WHERE hash = ?", hash);
    }
}
