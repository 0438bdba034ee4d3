package org.cupwright.app.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a process asked of the system about files, in the order in which it was done, as {@code strace -f -y} writes it.
 *
 * @param calls those that were answered
 */
record Syscalls(List<Call> calls) {
    /** What is traced. */
    static final String TRACED = "openat,write,pwrite64,fsync,fdatasync,rename,renameat,renameat2,unlink";

    private static final Pattern UNFINISHED = Pattern.compile("([0-9]+) +(.*) <unfinished \\.\\.\\.>");
    private static final Pattern RESUMED = Pattern.compile("([0-9]+) +<\\.\\.\\. [a-z0-9]+ resumed>(.*)");
    private static final Pattern WHOLE = Pattern.compile("([0-9]+) +([a-z0-9]+)\\((.*)\\) += (-?[0-9]+).*");
    private static final Pattern OPEN_FILE = Pattern.compile("[0-9]+<([^>]*)>.*");
    private static final Pattern NAMED = Pattern.compile("\"([^\"]*)\"");

    /**
     * One call.
     *
     * @param name what was asked
     * @param paths the file it was asked about, or those that were named: of a renaming the old and the new
     */
    record Call(String name, List<String> paths) {
        boolean writes() {
            return name.equals("write") || name.equals("pwrite64");
        }

        boolean syncs() {
            return name.equals("fsync") || name.equals("fdatasync");
        }

        boolean renames() {
            return name.startsWith("rename");
        }

        String path() {
            return paths.isEmpty() ? "" : paths.get(0);
        }
    }

    static Syscalls of(List<String> lines) {
        Map<String, String> begun = new HashMap<>();
        List<Call> calls = new ArrayList<>();
        for (String line : lines) {
            Matcher unfinished = UNFINISHED.matcher(line);
            Matcher resumed = RESUMED.matcher(line);
            if (unfinished.matches()) {
                begun.put(unfinished.group(1), unfinished.group(2));
            } else {
                String whole = resumed.matches()
                        ? resumed.group(1) + " " + begun.remove(resumed.group(1)) + resumed.group(2)
                        : line;
                Matcher call = WHOLE.matcher(whole);
                if (call.matches() && !call.group(4).startsWith("-")) {
                    calls.add(new Call(call.group(2), paths(call.group(2), call.group(3))));
                }
            }
        }
        return new Syscalls(List.copyOf(calls));
    }

    private static List<String> paths(String name, String arguments) {
        Matcher open = OPEN_FILE.matcher(arguments);
        if (!name.equals("openat") && open.matches()) {
            return List.of(open.group(1));
        }
        return NAMED.matcher(arguments).results().map(found -> found.group(1)).toList();
    }

    /** Where the first call of a kind stands; −1 without any. */
    int first(Predicate<Call> kind) {
        for (int i = 0; i < calls.size(); i++) {
            if (kind.test(calls.get(i))) {
                return i;
            }
        }
        return -1;
    }

    /** What was written into a folder and might not be on the disk yet when that many calls were done. */
    List<String> unsure(String folder, int done) {
        List<String> unsure = new ArrayList<>();
        for (int i = 0; i < done; i++) {
            Call call = calls.get(i);
            String path = call.path();
            if (call.writes() && isKept(path, folder) && !saved(path, i, done)) {
                unsure.add("written and not synced: " + path);
            } else if (call.renames() && isKept(call.paths().get(1), folder)) {
                String into =
                        call.paths().get(1).substring(0, call.paths().get(1).lastIndexOf('/'));
                if (!synced(into, i, done)) {
                    unsure.add("renamed, the folder not synced: " + call.paths().get(1));
                }
            }
        }
        return unsure.stream().distinct().toList();
    }

    /** Data, and no index in memory nor a journal that is gone before anything rests on it. */
    private static boolean isKept(String path, String folder) {
        return path.startsWith(folder + "/")
                && Stream.of("-shm", "-journal", ".lock").noneMatch(path::endsWith)
                && !path.contains("/cache/");
    }

    /** Whether what was written is synced before it gets another name, or is taken away again. */
    private boolean saved(String path, int from, int done) {
        for (int i = from + 1; i < done; i++) {
            Call call = calls.get(i);
            boolean same = call.path().equals(path);
            boolean gone = call.name().equals("unlink") && !path.endsWith("-wal");
            if (same && (call.syncs() || gone)) {
                return true;
            }
            if (same && call.renames()) {
                return false;
            }
        }
        return false;
    }

    private boolean synced(String path, int from, int done) {
        return calls.subList(from + 1, done).stream()
                .anyMatch(call -> call.syncs() && call.path().equals(path));
    }

    /** How often something was given a name that ends so. */
    long renamedTo(String ending) {
        return calls.stream()
                .filter(call -> call.renames() && call.paths().get(1).endsWith(ending))
                .count();
    }
}
