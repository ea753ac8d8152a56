package longbough.runner.table;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/** SHA-256 of what a result depends on, so that two results can be told to rest on the same. */
public final class Fingerprint {

  private Fingerprint() {}

  public static String of(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Of every parameter's name, value, unit, range and whether it is sampled. */
  public static String of(ParameterTable table) {
    StringBuilder text = new StringBuilder();
    for (Sourced row : table.rows()) {
      text.append(row.name()).append('\t').append(NumberText.of(row.value())).append('\t');
      text.append(row.unit()).append('\t').append(NumberText.of(row.range().low())).append('\t');
      text.append(NumberText.of(row.range().high()))
          .append('\t')
          .append(row.sampled())
          .append('\n');
    }
    return of(text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
