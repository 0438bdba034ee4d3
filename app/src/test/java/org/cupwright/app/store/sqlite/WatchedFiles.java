package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The usual files, watched: what was made to last on the disk, and what was given its name, in that order. A crash of
 * the machine cannot be had in a test; the order of these is what decides what it leaves.
 */
final class WatchedFiles extends FileSystemProvider {
    private final FileSystem usual = java.nio.file.FileSystems.getDefault();
    private final FileSystem watched = new Watched();
    private final List<String> seen = new ArrayList<>();

    /** {@code last NAME} and {@code name OLD NEW}, by the names within their folders. */
    List<String> seen() {
        return seen;
    }

    Path path(Path real) {
        return (Path) Proxy.newProxyInstance(
                Path.class.getClassLoader(), new Class<?>[] {Path.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("getFileSystem")) {
                        return watched;
                    }
                    try {
                        Object answer = method.invoke(real, plain(arguments));
                        return answer instanceof Path path ? path(path) : answer;
                    } catch (InvocationTargetException failed) {
                        throw failed.getCause();
                    }
                });
    }

    private Object[] plain(Object[] arguments) {
        Object[] plain = arguments == null ? new Object[0] : arguments.clone();
        for (int i = 0; i < plain.length; i++) {
            plain[i] = plain[i] instanceof Path path ? real(path) : plain[i];
        }
        return plain;
    }

    private Path real(Path path) {
        return usual.getPath(path.toString());
    }

    private static String name(Path path) {
        return path.getFileName().toString();
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        return new Lasting(FileChannel.open(real(path), options, attributes), name(path));
    }

    @Override
    public void move(Path source, Path target, CopyOption... options) throws IOException {
        usual.provider().move(real(source), real(target), options);
        seen.add("name " + name(source) + " " + name(target));
    }

    @Override
    public void delete(Path path) throws IOException {
        usual.provider().delete(real(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        usual.provider().checkAccess(real(path), modes);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return usual.provider().readAttributes(real(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String which, LinkOption... options) throws IOException {
        return usual.provider().readAttributes(real(path), which, options);
    }

    @Override
    public String getScheme() {
        return "watched";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return watched;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return usual.provider().newByteChannel(real(path), options, attributes);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        usual.provider().createDirectory(real(folder), attributes);
    }

    @Override
    public void copy(Path source, Path target, CopyOption... options) throws IOException {
        usual.provider().copy(real(source), real(target), options);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return usual.provider().isSameFile(real(one), real(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return usual.provider().isHidden(real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return usual.provider().getFileStore(real(path));
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        return usual.provider().getFileAttributeView(real(path), type, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        usual.provider().setAttribute(real(path), attribute, value, options);
    }

    /** Tells when its file was made to last. */
    private final class Lasting extends FileChannel {
        private final FileChannel real;
        private final String name;

        Lasting(FileChannel real, String name) {
            this.real = real;
            this.name = name;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            real.force(metaData);
            seen.add("last " + name);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            real.close();
        }

        @Override
        public int read(ByteBuffer to) throws IOException {
            return real.read(to);
        }

        @Override
        public long read(ByteBuffer[] to, int offset, int length) throws IOException {
            return real.read(to, offset, length);
        }

        @Override
        public int write(ByteBuffer from) throws IOException {
            return real.write(from);
        }

        @Override
        public long write(ByteBuffer[] from, int offset, int length) throws IOException {
            return real.write(from, offset, length);
        }

        @Override
        public long position() throws IOException {
            return real.position();
        }

        @Override
        public FileChannel position(long at) throws IOException {
            return real.position(at);
        }

        @Override
        public long size() throws IOException {
            return real.size();
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            return real.truncate(size);
        }

        @Override
        public long transferTo(long position, long count, WritableByteChannel target) throws IOException {
            return real.transferTo(position, count, target);
        }

        @Override
        public long transferFrom(ReadableByteChannel source, long position, long count) throws IOException {
            return real.transferFrom(source, position, count);
        }

        @Override
        public int read(ByteBuffer to, long position) throws IOException {
            return real.read(to, position);
        }

        @Override
        public int write(ByteBuffer from, long position) throws IOException {
            return real.write(from, position);
        }

        @Override
        public MappedByteBuffer map(MapMode mode, long position, long size) throws IOException {
            return real.map(mode, position, size);
        }

        @Override
        public FileLock lock(long position, long size, boolean shared) throws IOException {
            return real.lock(position, size, shared);
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return real.tryLock(position, size, shared);
        }
    }

    /** The file system that its paths name. */
    private final class Watched extends FileSystem {
        @Override
        public FileSystemProvider provider() {
            return WatchedFiles.this;
        }

        @Override
        public void close() {
            // as the usual one, it stays open
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public String getSeparator() {
            return usual.getSeparator();
        }

        @Override
        public Iterable<Path> getRootDirectories() {
            return usual.getRootDirectories();
        }

        @Override
        public Iterable<FileStore> getFileStores() {
            return usual.getFileStores();
        }

        @Override
        public Set<String> supportedFileAttributeViews() {
            return usual.supportedFileAttributeViews();
        }

        @Override
        public Path getPath(String first, String... more) {
            return path(usual.getPath(first, more));
        }

        @Override
        public PathMatcher getPathMatcher(String pattern) {
            return usual.getPathMatcher(pattern);
        }

        @Override
        public UserPrincipalLookupService getUserPrincipalLookupService() {
            return usual.getUserPrincipalLookupService();
        }

        @Override
        public WatchService newWatchService() throws IOException {
            return usual.newWatchService();
        }
    }
}
