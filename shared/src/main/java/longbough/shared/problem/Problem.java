package longbough.shared.problem;

/**
 * One mistake found in input, told so that its author can mend it.
 *
 * @param file the file as the user named it, or empty
 * @param line line number from 1, or 0 where there is none
 * @param column column from 1, or 0 where there is none
 * @param field the field concerned, e.g. {@code tree.trunk_diameter_cm}, or empty
 * @param found what was found
 * @param allowed what is allowed
 * @param mend how to mend it
 */
public record Problem(
    String file, int line, int column, String field, String found, String allowed, String mend) {

  /** One readable message of one or two lines. */
  public String message() {
    StringBuilder text = new StringBuilder();
    if (!file.isEmpty()) {
      text.append(file);
      if (line > 0) {
        text.append(", line ").append(line);
        if (column > 0) {
          text.append(", column ").append(column);
        }
      }
      text.append(": ");
    }
    if (!field.isEmpty()) {
      text.append(field).append(": ");
    }
    text.append("found ").append(found);
    if (!allowed.isEmpty()) {
      text.append("; allowed: ").append(allowed);
    }
    if (!mend.isEmpty()) {
      text.append("\n  mend: ").append(mend);
    }
    return text.toString();
  }
}
