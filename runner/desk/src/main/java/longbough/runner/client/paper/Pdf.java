package longbough.runner.client.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import longbough.runner.table.Fingerprint;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/** A page of ours as the bytes of a PDF; the same page gives the same bytes. */
public final class Pdf {
  private static final Set<FSFontUseCase> EVERYWHERE = EnumSet.allOf(FSFontUseCase.class);

  private Pdf() {}

  /**
   * The page on paper.
   *
   * @param page well-formed, with everything it needs inside
   */
  public static byte[] of(String page) throws IOException {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (FontFiles fonts = new FontFiles();
        BatikSVGDrawer pictures = new BatikSVGDrawer();
        PdfBoxRenderer renderer = renderer(PaperPictures.sized(page), pictures, fonts)) {
      PDDocument document = renderer.createPDFKeepOpen();
      date(document);
      // The document's name of its own is that of its content.
      byte[] hash = HexFormat.of().parseHex(Fingerprint.of(page.getBytes(StandardCharsets.UTF_8)));
      document.setDocumentId(ByteBuffer.wrap(hash).getLong());
      document.save(out);
    }
    return out.toByteArray();
  }

  private static PdfBoxRenderer renderer(String page, BatikSVGDrawer pictures, FontFiles fonts) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.usePdfUaAccessibility(true);
    builder.withProducer("Longbough");
    builder.useSVGDrawer(pictures);
    // Whatever a page names, nothing is loaded from anywhere.
    builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null);
    font(builder, fonts.regular(), 400);
    font(builder, fonts.semibold(), 600);
    font(builder, fonts.semibold(), 700);
    builder.withHtmlContent(page, null);
    return builder.buildPdfRenderer();
  }

  private static void font(PdfRendererBuilder builder, File file, int weight) {
    builder.useFont(file, "Open Sans", weight, FontStyle.NORMAL, true, EVERYWHERE);
  }

  /** A fixed day in place of that of the writing. */
  private static void date(PDDocument document) throws IOException {
    Calendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    day.clear();
    day.set(2026, Calendar.JANUARY, 1);
    PDDocumentInformation information = document.getDocumentInformation();
    information.setCreationDate(day);
    information.setModificationDate(day);
    PDMetadata metadata = document.getDocumentCatalog().getMetadata();
    String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
    xmp =
        xmp.replaceAll(
            "(<xmp:(CreateDate|ModifyDate|MetadataDate)>)[^<]*(</)", "$12026-01-01T00:00:00Z$3");
    metadata.importXMPMetadata(xmp.getBytes(StandardCharsets.UTF_8));
  }
}
