package org.cupwright.app.storage;

import java.util.HexFormat;

/** A photo as it is kept. */
public final class Photo {
    /** The part of an entry that holds a photo's hash. */
    public static final String PART = "photo";

    private final byte[] bytes;

    private Photo(byte[] bytes) {
        this.bytes = bytes;
    }

    /** A photo as it was kept. */
    public static Photo kept(byte[] bytes) {
        return new Photo(bytes.clone());
    }

    /** The name it is kept under: the SHA-256 of its content. */
    public String hash() {
        return HexFormat.of().formatHex(Sha256.digest().digest(bytes));
    }

    public byte[] bytes() {
        return bytes.clone();
    }
}
