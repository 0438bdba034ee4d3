package org.cupwright.app.cli.serve;

import java.nio.file.Path;
import java.util.Optional;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Serving;
import org.cupwright.app.cli.command.Serving.Opened;
import org.cupwright.app.cli.command.Serving.Request;
import org.cupwright.app.cli.command.Serving.Tls;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.intake.SetUpDemo;
import org.cupwright.democourse.DemoCourse;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tools.jackson.databind.node.ObjectNode;

/** Opens the pages. */
@Command(
        name = "serve",
        description = "Opens the office in the browser, for this machine alone unless told otherwise. Ctrl-C ends it.")
public final class ServeCommand extends CourseCommand {
    private static final int MOST_PORT = 65_535;

    @Option(
            names = "--bind",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "The address that is listened at. Default: 127.0.0.1, which this machine alone reaches. Any"
                    + " other needs --certificate and --key, or --behind-proxy.")
    private String bind;

    @Option(
            names = "--port",
            paramLabel = "P",
            defaultValue = "8080",
            description = "The port. Default: 8080; 0 takes one that is free.")
    private int port;

    @Option(
            names = "--demo",
            description =
                    "Opens the invented course, which is set up if it is missing, to whoever sits at this machine.")
    private boolean demo;

    @Option(
            names = "--behind-proxy",
            description = "A server of your own stands before it, which does the encryption and says who asks.")
    private boolean behindProxy;

    @Option(names = "--certificate", paramLabel = "FILE", description = "The certificate for encryption, a PEM file.")
    private Path certificate;

    @Option(names = "--key", paramLabel = "FILE", description = "The certificate's private key, a PEM file.")
    private Path key;

    @Override
    protected void run(Task task) {
        Request request = request(task);
        if (demo && new SetUpDemo(task.session().about(DemoCourse.ID)).ifMissing()) {
            task.err().println(task.texts().say("demo.setUp", DemoCourse.NAME));
        }
        task.serving().serve(request, opened -> tell(task, opened), task.err());
    }

    private Request request(Task task) {
        if (port < 0 || port > MOST_PORT) {
            throw wrong("--port takes 0 to 65535.", "" + port);
        }
        if ((certificate == null) != (key == null)) {
            throw wrong("--certificate and --key go together.", "");
        }
        Optional<Tls> tls = Optional.ofNullable(certificate).map(file -> new Tls(file, key));
        boolean alone = Serving.isLoopback(bind);
        if (demo && !alone) {
            throw wrong("--demo is open to whoever reaches it: it goes with no other --bind.", bind);
        }
        if (!alone && tls.isEmpty() && !behindProxy) {
            throw wrong(
                    "Without encryption others could read along: give --certificate and --key, or --behind-proxy.",
                    bind);
        }
        return new Request(task.dataFolder(), bind, port, demo, behindProxy, tls);
    }

    private static void tell(Task task, Opened opened) {
        task.answer(() -> json(opened), () -> words(opened, task));
    }

    private static ObjectNode json(Opened opened) {
        ObjectNode json = Json.object();
        json.put("address", opened.address());
        opened.code().ifPresent(code -> json.put("code", code));
        return json;
    }

    private static Lines words(Opened opened, Task task) {
        Lines lines = new Lines(task.texts()).say("serve.open", opened.address());
        opened.code().ifPresent(code -> lines.say("serve.code", code));
        return lines;
    }
}
