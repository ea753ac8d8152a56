package longbough.runner.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Puts a fixed day in place of that of the writing into a workbook. */
final class FixedDay {
  private static final String PART = "docProps/core.xml";
  private static final String CREATED = "(<dcterms:created[^>]*>)[^<]*";
  private static final String DAY = "$12026-01-01T00:00:00Z";
  private static final LocalDateTime ENTRIES = LocalDateTime.of(1980, 2, 1, 0, 0);

  private FixedDay() {}

  static void put(Path workbook) throws IOException {
    Path fixed = workbook.resolveSibling(workbook.getFileName() + ".part");
    try {
      copy(workbook, fixed);
      Files.move(fixed, workbook, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fixed);
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (ZipFile in = new ZipFile(from.toFile());
        OutputStream target = Files.newOutputStream(to);
        ZipOutputStream out = new ZipOutputStream(target)) {
      for (ZipEntry part : Collections.list(in.entries())) {
        ZipEntry same = new ZipEntry(part.getName());
        same.setTimeLocal(ENTRIES);
        out.putNextEntry(same);
        try (InputStream content = in.getInputStream(part)) {
          if (part.getName().equals(PART)) {
            String text = new String(content.readAllBytes(), StandardCharsets.UTF_8);
            out.write(text.replaceAll(CREATED, DAY).getBytes(StandardCharsets.UTF_8));
          } else {
            content.transferTo(out);
          }
        }
        out.closeEntry();
      }
    }
  }
}
