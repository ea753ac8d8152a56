package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Runs a command and keeps what it said. */
final class Told {
  static final String SCENARIO =
      """
      title: A tree for a test (invented)
      tree:
        species: tilia-cordata
        trunk_diameter_cm: 48
        height_m: 17
        crown_base_m: 2.5
        crown_spread_m: 11
      climate: maritime_temperate
      years: 6
      members: 20
      seed: 7
      regimes:
        - name: leave alone
          visits: []
        - name: top
          visits:
            - every_years: 7
              operations:
                - top: {at_height_m: 11}
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  int run(Subcommand command, String... args) {
    String[] all = Stream.concat(Stream.of(command.name()), Stream.of(args)).toArray(String[]::new);
    CommandLine line = LongboughCommand.commandLine(List.of(command), all);
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return LongboughCommand.run(line, all);
  }

  String out() {
    return out.toString();
  }

  String err() {
    return err.toString();
  }

  static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
