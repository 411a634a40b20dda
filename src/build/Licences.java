import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Copies the licences and notices out of the archives of the parts, a folder a part, beside the list
 * of all licences. Run from its source when the program is packed.
 */
final class Licences {
  private static final Pattern TEXT =
      Pattern.compile(
          "(META-INF/(.*/)?)?(LICEN[CS]E|NOTICE|COPYING|COPYRIGHT|ABOUT)[^/]*",
          Pattern.CASE_INSENSITIVE);

  private Licences() {}

  /**
   * @param arguments the folder of archives, the list of licences, the folder to write
   */
  public static void main(String[] arguments) throws IOException {
    Path to = Files.createDirectories(Path.of(arguments[2]));
    Files.copy(
        Path.of(arguments[1]), to.resolve("THIRD-PARTY.txt"), StandardCopyOption.REPLACE_EXISTING);
    List<String> without = new ArrayList<>();
    try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
      for (Path archive : all.filter(p -> p.toString().endsWith(".jar")).sorted().toList()) {
        String part = archive.getFileName().toString().replaceFirst("\\.jar$", "");
        if (!copied(archive, to.resolve(part))) {
          without.add(part);
        }
      }
    }
    Files.writeString(
        to.resolve("README.txt"),
        "THIRD-PARTY.txt names the licence of every part of this program. The folders hold the texts"
            + " that\ncome with the parts. These come without; see THIRD-PARTY.txt:\n\n"
            + String.join("\n", without)
            + "\n");
  }

  private static boolean copied(Path archive, Path folder) throws IOException {
    try (ZipFile zip = new ZipFile(archive.toFile())) {
      List<? extends ZipEntry> texts =
          zip.stream()
              .filter(e -> !e.isDirectory() && TEXT.matcher(e.getName()).matches())
              .filter(e -> !e.getName().toLowerCase(Locale.ROOT).endsWith(".class"))
              .toList();
      for (ZipEntry text : texts) {
        Files.createDirectories(folder);
        String name = text.getName().replaceFirst("^.*/", "");
        Files.copy(
            zip.getInputStream(text), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
      }
      return !texts.isEmpty();
    }
  }
}
