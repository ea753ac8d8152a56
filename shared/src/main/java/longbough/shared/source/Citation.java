package longbough.shared.source;

/**
 * One entry of the bibliography.
 *
 * @param key short stable key used in data files, e.g. {@code neely1988}
 * @param text the full reference as it is printed in reports
 * @param note how we know it (read, second hand, from memory), or empty
 */
public record Citation(String key, String text, String note) {}
