package longbough.runner.drawing.scene;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import longbough.runner.type.Fonts;

/** Paints a scene as a PNG on white, without a screen. */
public final class PngWriter {
  /** Pixels a unit: a page-wide picture gets 2000 pixels, about 300 a inch at 170 mm. */
  public static final int PIXELS_PER_UNIT = 2;

  private final Graphics2D canvas;
  private final int widthPixels;
  private final int heightPixels;

  private PngWriter(Graphics2D canvas, int widthPixels, int heightPixels) {
    this.canvas = canvas;
    this.widthPixels = widthPixels;
    this.heightPixels = heightPixels;
  }

  /** The scene as the bytes of a PNG file. */
  public static byte[] write(Scene scene) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
      ImageIO.write(paint(scene), "png", stream);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return bytes.toByteArray();
  }

  private static BufferedImage paint(Scene scene) {
    BufferedImage image =
        new BufferedImage(
            scene.width() * PIXELS_PER_UNIT,
            scene.height() * PIXELS_PER_UNIT,
            BufferedImage.TYPE_INT_RGB);
    Graphics2D canvas = prepared(image);
    canvas.setColor(Color.WHITE);
    canvas.fillRect(0, 0, scene.width(), scene.height());
    PngWriter writer = new PngWriter(canvas, image.getWidth(), image.getHeight());
    scene.shapes().forEach(writer::shape);
    canvas.dispose();
    return image;
  }

  private static Graphics2D prepared(BufferedImage image) {
    Graphics2D canvas = image.createGraphics();
    canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    canvas.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    canvas.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    canvas.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    canvas.scale(PIXELS_PER_UNIT, PIXELS_PER_UNIT);
    return canvas;
  }

  private void shape(Shape shape) {
    if (shape instanceof Shape.Path path) {
      fillAndDraw(path2d(path.outline()), path.style());
    } else if (shape instanceof Shape.Ellipse ellipse) {
      double width = 2 * ellipse.radiusX();
      double height = 2 * ellipse.radiusY();
      double left = ellipse.x() - ellipse.radiusX();
      double top = ellipse.y() - ellipse.radiusY();
      fillAndDraw(new Ellipse2D.Double(left, top, width, height), ellipse.style());
    } else if (shape instanceof Shape.Text text) {
      words(text);
    } else if (shape instanceof Shape.Group group) {
      group(group);
    } else if (shape instanceof Shape.Stamps stamps) {
      stamps(stamps);
    }
  }

  /** A group with opacity is painted apart and laid on as one, as SVG does. */
  private void group(Shape.Group group) {
    if (group.opacity() >= 1) {
      group.shapes().forEach(this::shape);
      return;
    }
    BufferedImage apart =
        new BufferedImage(widthPixels, heightPixels, BufferedImage.TYPE_INT_ARGB_PRE);
    Graphics2D inner = prepared(apart);
    PngWriter writer = new PngWriter(inner, widthPixels, heightPixels);
    group.shapes().forEach(writer::shape);
    inner.dispose();
    AffineTransform before = canvas.getTransform();
    Composite composite = canvas.getComposite();
    canvas.setTransform(new AffineTransform());
    float alpha = (float) Math.max(0, group.opacity());
    canvas.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, alpha));
    canvas.drawImage(apart, 0, 0, null);
    canvas.setTransform(before);
    canvas.setComposite(composite);
  }

  /** A mark is painted once and then copied to its places, each to the nearest pixel. */
  private void stamps(Shape.Stamps stamps) {
    Rectangle2D bounds = bounds(stamps.mark());
    int left = (int) Math.floor(bounds.getMinX() * PIXELS_PER_UNIT) - 1;
    int top = (int) Math.floor(bounds.getMinY() * PIXELS_PER_UNIT) - 1;
    int wide = (int) Math.ceil(bounds.getWidth() * PIXELS_PER_UNIT) + 3;
    int high = (int) Math.ceil(bounds.getHeight() * PIXELS_PER_UNIT) + 3;
    BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_ARGB_PRE);
    Graphics2D inner = prepared(image);
    inner.translate(-left / (double) PIXELS_PER_UNIT, -top / (double) PIXELS_PER_UNIT);
    PngWriter writer = new PngWriter(inner, wide, high);
    stamps.mark().paths().forEach(writer::shape);
    inner.dispose();
    AffineTransform before = canvas.getTransform();
    canvas.setTransform(new AffineTransform());
    for (int[] place : stamps.places()) {
      int x = (int) Math.rint(place[0] * PIXELS_PER_UNIT / 10.0);
      int y = (int) Math.rint(place[1] * PIXELS_PER_UNIT / 10.0);
      canvas.drawImage(image, left + x, top + y, null);
    }
    canvas.setTransform(before);
  }

  private static Rectangle2D bounds(Mark mark) {
    Rectangle2D bounds = new Rectangle2D.Double();
    for (Shape.Path path : mark.paths()) {
      Rectangle2D own = path2d(path.outline()).getBounds2D();
      double edge = path.style().strokeWidth() / 2;
      bounds.add(own.getMinX() - edge, own.getMinY() - edge);
      bounds.add(own.getMaxX() + edge, own.getMaxY() + edge);
    }
    return bounds;
  }

  private void fillAndDraw(java.awt.Shape area, Style style) {
    Composite before = canvas.getComposite();
    float alpha = (float) Math.max(0, Math.min(1, style.opacity()));
    canvas.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, alpha));
    if (!style.fill().equals(Style.NONE)) {
      canvas.setColor(Color.decode(style.fill()));
      canvas.fill(area);
    }
    if (!style.stroke().equals(Style.NONE) && style.strokeWidth() > 0) {
      canvas.setColor(Color.decode(style.stroke()));
      canvas.setStroke(stroke(style));
      canvas.draw(area);
    }
    canvas.setComposite(before);
  }

  private static BasicStroke stroke(Style style) {
    float width = (float) style.strokeWidth();
    int cap = BasicStroke.CAP_ROUND;
    int join = BasicStroke.JOIN_ROUND;
    if (style.dash() <= 0) {
      return new BasicStroke(width, cap, join);
    }
    return new BasicStroke(width, cap, join, 1, new float[] {(float) style.dash()}, 0);
  }

  private void words(Shape.Text text) {
    canvas.setColor(Color.decode(text.colour()));
    Font font =
        text.bold()
            ? Fonts.semibold(text.words(), text.size())
            : Fonts.regular(text.words(), text.size());
    canvas.setFont(font);
    double width = canvas.getFontMetrics().getStringBounds(text.words(), canvas).getWidth();
    double share =
        switch (text.anchor()) {
          case START -> 0;
          case MIDDLE -> 0.5;
          case END -> 1;
        };
    canvas.drawString(text.words(), (float) (text.x() - share * width), (float) text.y());
  }

  private static Path2D path2d(Outline outline) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    int at = 0;
    for (int step = 0; step < outline.steps(); step++) {
      switch (outline.step(step)) {
        case Outline.MOVE -> path.moveTo(unit(outline, at++), unit(outline, at++));
        case Outline.LINE -> path.lineTo(unit(outline, at++), unit(outline, at++));
        case Outline.QUAD ->
            path.quadTo(
                unit(outline, at++), unit(outline, at++), unit(outline, at++), unit(outline, at++));
        case Outline.CURVE ->
            path.curveTo(
                unit(outline, at++),
                unit(outline, at++),
                unit(outline, at++),
                unit(outline, at++),
                unit(outline, at++),
                unit(outline, at++));
        default -> path.closePath();
      }
    }
    return path;
  }

  private static double unit(Outline outline, int index) {
    return outline.number(index) / 10.0;
  }
}
