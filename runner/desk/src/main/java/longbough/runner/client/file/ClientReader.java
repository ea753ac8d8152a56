package longbough.runner.client.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import longbough.runner.client.words.Messages;
import longbough.runner.yaml.Fields;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.KeyTable;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Nearest;
import longbough.runner.yaml.YamlSource;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** Reads a client file with its logo and its language, all mistakes together. */
public final class ClientReader {
  private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}");
  private static final KeyTable KEYS = KeyTable.read("longbough/runner/client/file/keys.csv");

  private final Path file;
  private final List<Problem> elsewhere = new ArrayList<>();

  private ClientReader(Path file) {
    this.file = file;
  }

  /** The table of every key that a client file may hold. */
  public static KeyTable keys() {
    return KEYS;
  }

  /**
   * What the file says.
   *
   * @param plans names of the scenario's regimes, one of which may be recommended
   */
  public static Client read(Path file, List<String> plans) {
    return new ClientReader(file).client(plans);
  }

  private Client client(List<String> plans) {
    Mistakes mistakes = new Mistakes(file.toString());
    Fields root = Fields.of(YamlSource.read(file, mistakes), "client_file", KEYS, mistakes);
    Fields consultant =
        root.map("consultant", "consultant").orElse(root.none("consultant", "consultant"));
    Given<String> recommended = root.text("recommended");
    plan(recommended, plans, mistakes);
    Given<String> language = root.text("language");
    language(language, mistakes);
    Client client =
        new Client(
            root.text("title").or(""),
            root.text("date").or(""),
            root.text("reference").or(""),
            root.text("location").or(""),
            root.map("client", "client").map(ClientReader::client).orElse(Party.NONE),
            consultant(consultant),
            logo(consultant.text("logo")),
            root.text("introduction").or(""),
            root.texts("found", "found_line"),
            recommended.or(""),
            root.text("advice").or(""),
            root.text("closing").or(""),
            language.or("en"),
            words(root.text("words")));
    throwIfAny(mistakes);
    return client;
  }

  private static Party client(Fields block) {
    return new Party(block.text("name").or(""), block.texts("address", "address_line"));
  }

  private static Party consultant(Fields block) {
    List<String> lines = new ArrayList<>();
    for (String key : List.of("qualification", "company")) {
      Optional.ofNullable(block.text(key).value()).ifPresent(lines::add);
    }
    lines.addAll(block.texts("address", "address_line"));
    for (String key : List.of("telephone", "email", "website")) {
      Optional.ofNullable(block.text(key).value()).ifPresent(lines::add);
    }
    return new Party(block.text("name").or(""), lines);
  }

  private static void plan(Given<String> wanted, List<String> plans, Mistakes mistakes) {
    if (wanted.present() && !plans.contains(wanted.value())) {
      mistakes.add(
          wanted.place(),
          wanted.field(),
          Mistakes.quoted(wanted.value()),
          "a regime of the scenario: " + String.join(", ", plans),
          "did you mean '" + Nearest.of(wanted.value(), plans) + "'? Otherwise remove the line");
    }
  }

  private static void language(Given<String> tag, Mistakes mistakes) {
    if (tag.present() && !LANGUAGE.matcher(tag.value()).matches()) {
      mistakes.add(
          tag.place(),
          tag.field(),
          Mistakes.quoted(tag.value()),
          "a language tag such as en, de or pt-BR",
          "write the tag of the language in which the words are");
    }
  }

  private Optional<Logo> logo(Given<String> name) {
    return beside(name).flatMap(path -> kept(() -> LogoReader.read(path)));
  }

  private Messages words(Given<String> name) {
    return beside(name).flatMap(path -> kept(() -> Messages.in(path))).orElseGet(Messages::english);
  }

  /** A file named in this one stands beside it, unless its path is absolute. */
  private Optional<Path> beside(Given<String> name) {
    if (!name.present()) {
      return Optional.empty();
    }
    try {
      return Optional.of(file.toAbsolutePath().resolveSibling(name.value()).normalize());
    } catch (InvalidPathException e) {
      elsewhere.add(
          new Problem(
              file.toString(),
              name.place().line(),
              name.place().column(),
              name.field(),
              Mistakes.quoted(name.value()),
              "the name of a file",
              "write its path from this file"));
      return Optional.empty();
    }
  }

  /** What another file holds; its mistakes are kept to be told with those of this one. */
  private <T> Optional<T> kept(Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (InputException e) {
      elsewhere.addAll(e.problems());
      return Optional.empty();
    }
  }

  private void throwIfAny(Mistakes mistakes) {
    List<Problem> all = new ArrayList<>();
    try {
      mistakes.throwIfAny();
    } catch (InputException e) {
      all.addAll(e.problems());
    }
    all.addAll(elsewhere);
    if (!all.isEmpty()) {
      throw new InputException(all);
    }
  }
}
