package longbough.runner.report;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A reference as paper has room for it: authors and year, by which it is found in the full list of
 * the page for the screen.
 */
public final class BriefReference {
  private static final Pattern TO_YEAR = Pattern.compile("^(.{1,200}?)\\s(?:1[89]|20)\\d\\d\\b");
  private static final String AUTHOR = "\\p{Lu}[^,.]* (?:\\p{Lu}\\.-?)+";
  private static final Pattern TWO = Pattern.compile(AUTHOR + ", " + AUTHOR);
  private static final Pattern AUTHORS = Pattern.compile("^(" + AUTHOR + "), ");

  private BriefReference() {}

  /** The reference up to its year, more than two authors by their first; whole where undated. */
  public static String of(String reference) {
    Matcher dated = TO_YEAR.matcher(reference);
    if (!dated.find()) {
      return reference;
    }
    String upToYear = dated.group();
    if (TWO.matcher(dated.group(1)).matches()) {
      return upToYear;
    }
    Matcher several = AUTHORS.matcher(dated.group(1));
    return several.find()
        ? several.group(1) + " et al." + upToYear.substring(dated.group(1).length())
        : upToYear;
  }
}
