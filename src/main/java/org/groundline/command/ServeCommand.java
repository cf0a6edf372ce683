package org.groundline.command;

import org.groundline.bank.BankFault;
import org.groundline.bank.BankLocation;
import org.groundline.bank.Questions;
import org.groundline.web.Doors;
import org.jspecify.annotations.Nullable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;

/// Starts the server.
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = {
            "Starts the server and prints its address.",
            "Without --demo an empty server prints a one-time link to set up the first school."
        })
final class ServeCommand implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--port",
            defaultValue = "7070",
            description = "the port to listen on (default: ${DEFAULT-VALUE})")
    private int port;

    @Option(
            names = "--host",
            defaultValue = "127.0.0.1",
            description = "the address to listen on (default: ${DEFAULT-VALUE})")
    private String host = "127.0.0.1";

    @Option(
            names = "--data",
            description =
                    "where the embedded database lies (default: .groundline in the home folder)")
    private @Nullable Path data;

    @Option(names = "--bank", description = "a question bank to use instead of the shipped one")
    private @Nullable Path bank;

    @Option(
            names = "--demo",
            description = "fill an empty server with an invented school and print its log-ins")
    private boolean demo;

    @Override
    public Integer call() throws Exception {
        Questions questions;
        try (BankLocation location =
                bank == null ? BankLocation.shipped() : BankLocation.at(bank)) {
            questions = Questions.load(location.folder());
        } catch (BankFault fault) {
            spec.commandLine().getErr().println(fault.getMessage());
            return 1;
        }
        var server = new Server();
        Runtime.getRuntime().addShutdownHook(new Thread(server::close));
        try {
            start(server, questions);
        } catch (IOException | RuntimeException e) {
            server.close();
            throw e;
        }
        new CountDownLatch(1).await();
        return 0;
    }

    private void start(Server server, Questions questions) throws IOException {
        Path folder = data == null ? Path.of(System.getProperty("user.home"), ".groundline") : data;
        Doors doors =
                server.open(new Server.Start(Settings.of(System.getenv()), folder, questions));
        PrintWriter out = spec.commandLine().getOut();
        String address = "http://localhost:" + server.listen(doors, host, port);
        out.println("Groundline is at " + address);
        if (doors.schools().listSchools().isEmpty()) {
            out.println(
                    "Set up the first school at "
                            + address
                            + "/set-up/"
                            + doors.schools().newSetUpToken());
            out.println("The link works once, for seven days.");
        }
        out.flush();
    }
}
