import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Enumeration;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Leaves out of the archive of the model's library what only its makers need: the symbols for a
 * debugger, which are three quarters of it. Run from its source when the program is packed.
 */
final class Slim {
  private static final Pattern SYMBOLS = Pattern.compile(".*(\\.pdb|\\.dSYM/.*)");

  private Slim() {}

  /**
   * @param arguments the folder of archives
   */
  public static void main(String[] arguments) throws IOException {
    List<Path> archives;
    try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
      archives = all.filter(p -> p.getFileName().toString().startsWith("onnxruntime-")).toList();
    }
    for (Path archive : archives) { // none in a program without the model
      Path slim = archive.resolveSibling(archive.getFileName() + ".slim");
      copy(archive, slim);
      Files.move(slim, archive, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void copy(Path archive, Path slim) throws IOException {
    try (ZipFile from = new ZipFile(archive.toFile());
        OutputStream file = Files.newOutputStream(slim);
        ZipOutputStream to = new ZipOutputStream(file)) {
      for (Enumeration<? extends ZipEntry> all = from.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        if (!SYMBOLS.matcher(entry.getName()).matches()) {
          ZipEntry same = new ZipEntry(entry.getName());
          same.setLastModifiedTime(entry.getLastModifiedTime());
          to.putNextEntry(same);
          from.getInputStream(entry).transferTo(to);
          to.closeEntry();
        }
      }
    }
  }
}
