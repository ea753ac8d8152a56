package longbough.runner.client.file;

import java.util.List;

/**
 * Someone named at the head of the report.
 *
 * @param name of a person or an office
 * @param lines what stands below: qualification, company, address, ways to reach them
 */
public record Party(String name, List<String> lines) {
  /** Nobody named. */
  public static final Party NONE = new Party("", List.of());

  public Party {
    lines = List.copyOf(lines);
  }

  public boolean named() {
    return !name.isEmpty() || !lines.isEmpty();
  }
}
