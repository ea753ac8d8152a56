package longbough.runner.client.file;

import java.util.Base64;

/**
 * A logo as it may stand in a page.
 *
 * @param mediaType {@code image/png} or {@code image/svg+xml}
 * @param bytes the picture as we wrote it
 * @param width in its own units
 * @param height in its own units
 */
public record Logo(String mediaType, byte[] bytes, int width, int height) {

  /** The picture as the address of an image. */
  public String address() {
    return "data:" + mediaType + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }
}
