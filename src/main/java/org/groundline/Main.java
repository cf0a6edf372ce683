package org.groundline;

import org.groundline.command.GroundlineCommand;

/// Carries out what the command line asks for.
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(GroundlineCommand.execute(args));
    }
}
