package org.cupwright.app.store;

import java.time.Clock;
import java.util.Optional;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.PhotoStore;

final class SqlPhotos implements PhotoStore {
    private final Sql sql;
    private final Clock clock;

    SqlPhotos(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    @Override
    public void add(Photo photo) {
        sql.change(
                "INSERT INTO photo (hash, recorded_at, content) VALUES (?, ?, ?) ON CONFLICT (hash) DO NOTHING",
                photo.hash(),
                clock.instant().toString(),
                photo.bytes());
    }

    @Override
    public Optional<Photo> find(String hash) {
        return sql.find(row -> Photo.kept(row.getBytes(1)), "SELECT content FROM photo WHERE hash = ?", hash);
    }
}
