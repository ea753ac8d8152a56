package longbough.runner.yaml;

/**
 * A number that may be given as a word.
 *
 * @param word the word that was given, empty where a number was
 * @param value the number
 */
public record Level(String word, double value) {}
