package longbough.runner.cli;

import java.util.concurrent.Callable;
import java.util.function.Supplier;

/**
 * A command as the root command lists it. The command object is made only when the user calls it,
 * so that {@code --help} need not load what the command needs.
 *
 * @param name the word the user types
 * @param summary one sentence for the list of commands and the head of the command's own help
 * @param create makes the command, an object with picocli annotations that returns its exit code
 */
record Subcommand(String name, String summary, Supplier<Callable<Integer>> create) {}
