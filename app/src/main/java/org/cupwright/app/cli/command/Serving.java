package org.cupwright.app.cli.command;

import java.io.PrintStream;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Opens the pages: given to the commands from outside, as they know no pages themselves. */
public interface Serving {
    /**
     * How the pages are to be opened.
     *
     * @param data the data folder
     * @param bind the address of this machine that is listened at
     * @param port the port; 0: any that is free
     * @param demo whether they are of the invented course, open to whoever sits at this machine
     * @param behindProxy whether another server stands before it, which does the encryption
     * @param tls the files for encryption, if it is done here
     */
    record Request(Path data, String bind, int port, boolean demo, boolean behindProxy, Optional<Tls> tls) {}

    /**
     * Certificate and private key, as PEM files.
     *
     * @param certificate the certificate, with those that stand behind it
     * @param key its private key
     */
    record Tls(Path certificate, Path key) {}

    /**
     * Open pages.
     *
     * @param address where they are
     * @param code with which the first superintendent comes in; empty where there is one
     */
    record Opened(String address, Optional<String> code) {}

    /** Whether an address is reached from this machine alone; one that means nothing is not. */
    static boolean isLoopback(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException unknown) {
            return false;
        }
    }

    /** Opens the pages, tells once that they are open, and returns when they are closed. */
    void serve(Request request, Consumer<Opened> opened, PrintStream err);
}
