package longbough.runner.wish;

import java.util.List;

/**
 * What a client asks for.
 *
 * @param firstIdea name of the regime the client thought of first; empty where none is named
 * @param byYear year at whose end it shall be there
 * @param untilYear year up to which it shall be kept
 * @param asked the wishes, one or more
 */
public record Wishes(String firstIdea, int byYear, int untilYear, List<Wish> asked) {

  public Wishes {
    asked = List.copyOf(asked);
  }
}
