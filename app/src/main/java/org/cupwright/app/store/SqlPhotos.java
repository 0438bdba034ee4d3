package org.cupwright.app.store;

import java.time.Clock;
import java.util.Optional;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.PhotoStore;

record SqlPhotos(Sql sql, Dialect dialect, Clock clock) implements PhotoStore {
    @Override
    public void add(Photo photo) {
        sql.add(
                "photo",
                "id",
                new CheckedRow()
                        .with("hash", photo.hash())
                        .with("recorded_at", clock.instant().toString())
                        .with("content", photo.bytes()),
                dialect.unlessThere("hash"));
    }

    @Override
    public Optional<Photo> find(String hash) {
        return sql.checked(row -> Photo.kept(row.getBytes("content")), "photo", "WHERE hash = ?", hash).stream()
                .findFirst();
    }
}
