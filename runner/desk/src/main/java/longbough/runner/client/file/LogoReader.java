package longbough.runner.client.file;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** Reads a logo within limits and writes its picture anew. */
final class LogoReader {
  static final int MOST_BYTES = 1_000_000;
  static final int MOST_SIDE = 6_000;

  /** Enough for 60 mm at 360 points an inch. */
  private static final int KEPT_WIDTH = 850;

  private static final int KEPT_HEIGHT = 425;

  private LogoReader() {}

  static Logo read(Path file) {
    byte[] bytes = bytes(file);
    if (starts(bytes, 0x89, 'P', 'N', 'G')) {
      return picture(file, bytes, "png");
    } else if (starts(bytes, 0xff, 0xd8, 0xff)) {
      return picture(file, bytes, "jpeg");
    } else if (text(bytes).startsWith("<")) {
      return new SvgLogo(file).read(bytes);
    }
    throw refused(file, "a file of another kind", "a PNG, JPEG or SVG picture", "save it as PNG");
  }

  static InputException refused(Path file, String found, String allowed, String mend) {
    return new InputException(
        List.of(new Problem(file.toString(), 0, 0, "logo", found, allowed, mend)));
  }

  private static byte[] bytes(Path file) {
    if (!Files.isRegularFile(file)) {
      throw refused(
          file,
          "no such file",
          "a picture file",
          "check the name; it stands beside the client file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw refused(
            file, "more than " + MOST_BYTES + " bytes", "up to 1 MB", "save a smaller picture");
      }
      return bytes;
    } catch (IOException e) {
      throw refused(file, "a file that cannot be read", "a readable file", "check its permissions");
    }
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8).replace("\uFEFF", "").stripLeading();
  }

  private static boolean starts(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xff) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static Logo picture(Path file, byte[] bytes, String format) {
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
    ImageReader reader = readers.next();
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      reader.setInput(in, true, true);
      // The size is looked at before a single point is decoded.
      int width = reader.getWidth(0);
      int height = reader.getHeight(0);
      if (width > MOST_SIDE || height > MOST_SIDE) {
        throw refused(
            file,
            width + " x " + height + " points",
            "up to " + MOST_SIDE + " points a side",
            "save a smaller picture; 900 points are plenty");
      }
      return written(reader.read(0));
    } catch (IOException | RuntimeException e) {
      if (e instanceof InputException refused) {
        throw refused;
      }
      throw refused(file, "a damaged picture", "a PNG, JPEG or SVG picture", "save it again");
    } finally {
      reader.dispose();
    }
  }

  private static Logo written(BufferedImage from) throws IOException {
    double scale =
        Math.min(
            1,
            Math.min(
                (double) KEPT_WIDTH / from.getWidth(), (double) KEPT_HEIGHT / from.getHeight()));
    int width = Math.max(1, (int) Math.round(scale * from.getWidth()));
    int height = Math.max(1, (int) Math.round(scale * from.getHeight()));
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D canvas = to.createGraphics();
    canvas.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    canvas.drawImage(from, 0, 0, width, height, null);
    canvas.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(to, "png", out);
    return new Logo("image/png", out.toByteArray(), width, height);
  }
}
