package longbough.runner.yaml;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Bytes read as UTF-8, a byte order mark left out.
 *
 * @param text the text, or null where the bytes aren't UTF-8
 * @param badLine line of the first byte that doesn't fit, from 1; 0 where all do
 */
public record Utf8(String text, int badLine) {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  /** Reads all bytes or none. */
  public static Utf8 of(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(in)
              .toString();
      boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
      return new Utf8(marked ? text.substring(1) : text, 0);
    } catch (CharacterCodingException e) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      return new Utf8(null, line);
    }
  }
}
