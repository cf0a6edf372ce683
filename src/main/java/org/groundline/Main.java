package org.groundline;

/// Starts what the command line asks for.
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println("Groundline");
    }
}
