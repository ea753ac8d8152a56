package longbough.runner.client.file;

import java.util.List;
import java.util.Optional;
import longbough.runner.client.words.Messages;

/**
 * What a client file says; everything may be missing.
 *
 * @param title heading of the report, or empty for the scenario's
 * @param date as it is to be printed; the program never puts in the day itself
 * @param reference number of the job
 * @param location where the tree stands
 * @param client who asked
 * @param consultant who answers
 * @param logo of the consultant
 * @param introduction a few sentences before the verdict
 * @param found what was found on site, line by line
 * @param recommended name of the plan that the consultant recommends, or empty
 * @param advice the consultant's own words on the verdict
 * @param closing last words
 * @param language of all words, as a tag such as {@code en}
 * @param words every sentence of the report
 */
public record Client(
    String title,
    String date,
    String reference,
    String location,
    Party client,
    Party consultant,
    Optional<Logo> logo,
    String introduction,
    List<String> found,
    String recommended,
    String advice,
    String closing,
    String language,
    Messages words) {

  /** A report that names nobody, in English. */
  public static Client nobody() {
    return new Client(
        "",
        "",
        "",
        "",
        Party.NONE,
        Party.NONE,
        Optional.empty(),
        "",
        List.of(),
        "",
        "",
        "",
        "en",
        Messages.english());
  }
}
