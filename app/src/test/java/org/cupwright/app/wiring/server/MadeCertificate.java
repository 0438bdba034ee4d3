package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.EncryptedPrivateKeyInfo;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.cupwright.app.cli.command.Serving.Tls;

/** A certificate of this machine for itself, made by the tool that comes with Java, as the files that people give. */
public final class MadeCertificate {
    private static final String NAME = "office";
    private static final char[] STORED = "invented".toCharArray();

    private final Certificate certificate;
    private final byte[] key;
    private final Tls files;

    /**
     * Makes one.
     *
     * @param folder where its files come to lie
     * @param kind RSA or EC
     */
    public MadeCertificate(Path folder, String kind)
            throws IOException, InterruptedException, GeneralSecurityException {
        Path store = Files.createDirectories(folder).resolve("made.p12");
        Process tool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-keystore",
                        store.toString(),
                        "-storetype",
                        "PKCS12",
                        "-storepass",
                        new String(STORED),
                        "-alias",
                        NAME,
                        "-keyalg",
                        kind,
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "SAN=dns:localhost,ip:127.0.0.1",
                        "-validity",
                        "2")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("keytool.out").toFile())
                .start();
        assertThat(tool.waitFor()).as("keytool").isZero();
        KeyStore made = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(store)) {
            made.load(in, STORED);
        }
        certificate = made.getCertificate(NAME);
        key = made.getKey(NAME, STORED).getEncoded();
        // names that an address of a file would have to write otherwise
        files = new Tls(folder.resolve("the office #1.pem"), folder.resolve("its key 100%.pem"));
        Files.writeString(files.certificate(), pem("CERTIFICATE", certificate.getEncoded()));
        Files.writeString(files.key(), pem("PRIVATE KEY", key));
    }

    public Tls files() {
        return files;
    }

    /** The key as it lies when a password is needed for it. */
    public String encryptedKey() throws GeneralSecurityException, IOException {
        String way = "PBEWithSHA1AndDESede";
        Cipher cipher = Cipher.getInstance(way);
        cipher.init(Cipher.ENCRYPT_MODE, SecretKeyFactory.getInstance(way).generateSecret(new PBEKeySpec(STORED)));
        byte[] hidden = cipher.doFinal(key);
        return pem("ENCRYPTED PRIVATE KEY", new EncryptedPrivateKeyInfo(cipher.getParameters(), hidden).getEncoded());
    }

    /** For somebody who trusts this certificate and no other. */
    SSLContext trusted() throws GeneralSecurityException, IOException {
        KeyStore known = KeyStore.getInstance("PKCS12");
        known.load(null, null);
        known.setCertificateEntry(NAME, certificate);
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(known);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }

    private static String pem(String what, byte[] bytes) {
        String lines = Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.US_ASCII))
                .encodeToString(bytes);
        return "-----BEGIN " + what + "-----\n" + lines + "\n-----END " + what + "-----\n";
    }
}
