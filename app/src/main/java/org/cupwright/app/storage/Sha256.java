package org.cupwright.app.storage;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256, which every Java has. */
public final class Sha256 {
    private Sha256() {}

    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
