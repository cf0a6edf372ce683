package org.groundline.command;

import org.groundline.bank.BankFault;
import org.groundline.bank.BankLocation;
import org.groundline.bank.KnownSound;
import org.groundline.bank.Questions;
import org.groundline.demo.DemoSchools;
import org.groundline.ledger.Foundation;
import org.groundline.web.Doors;
import org.jspecify.annotations.Nullable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
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
                    "where the embedded database lies, and which templates of the bank were found sound"
                            + " (default: .groundline in the home folder)")
    private @Nullable Path data;

    @Option(names = "--bank", description = "a question bank to use instead of the shipped one")
    private @Nullable Path bank;

    @Option(
            names = "--demo",
            description = "fill an empty server with an invented school and print its log-ins")
    private boolean demo;

    @Override
    public Integer call() throws Exception {
        Path folder = data == null ? Path.of(System.getProperty("user.home"), ".groundline") : data;
        Questions questions;
        try (BankLocation location =
                bank == null ? BankLocation.shipped() : BankLocation.at(bank)) {
            questions = Questions.load(location.folder(), KnownSound.in(folder));
        } catch (BankFault fault) {
            spec.commandLine().getErr().println(fault.getMessage());
            return 1;
        }
        var server = new Server();
        Runtime.getRuntime().addShutdownHook(new Thread(server::close));
        try {
            start(server, folder, questions);
        } catch (IOException | RuntimeException e) {
            server.close();
            throw e;
        }
        new CountDownLatch(1).await();
        return 0;
    }

    private void start(Server server, Path folder, Questions questions) throws IOException {
        Doors doors =
                server.open(new Server.Start(Settings.of(System.getenv()), folder, questions));
        PrintWriter out = spec.commandLine().getOut();
        Optional<DemoSchools> demoSchool = demo ? demoSchool(server, doors, out) : Optional.empty();
        String address = "http://localhost:" + server.listen(doors, host, port);
        out.println("Groundline is at " + address);
        demoSchool.ifPresent(school -> printLogIns(school, address, out));
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

    /// Makes the demo school on a server without any school; elsewhere finds it.
    private static Optional<DemoSchools> demoSchool(Server server, Doors doors, PrintWriter out) {
        Foundation foundation = doors.foundation();
        var demoSchools =
                new DemoSchools(
                        foundation.database(), foundation.clock(), doors.bank(), server::analyse);
        if (doors.schools().listSchools().isEmpty()) {
            out.println("Making the demo school; this takes some seconds, once.");
            out.flush();
            demoSchools.make();
        } else if (!demoSchools.exists()) {
            out.println(
                    "This server has a school already; the demo school is made on an empty one only.");
            return Optional.empty();
        }
        return Optional.of(demoSchools);
    }

    private static void printLogIns(DemoSchools school, String address, PrintWriter out) {
        out.printf(
                "Demo school at %s/%s; all of it is invented. Log in as%n", address, school.code());
        String line = "  %-31s %-39s %s%n";
        out.printf(line, "role", "e-mail", "password");
        for (DemoSchools.LogIn logIn : school.listLogIns()) {
            out.printf(line, logIn.role(), logIn.email(), logIn.password());
        }
    }
}
