package yett.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import yett.files.BoundedFile;
import yett.files.OwnFiles;
import yett.knowledge.FirmSettings;
import yett.knowledge.VanStock;

/** The files in which a firm says who it is, what its own people may do, and what its van has. */
final class FirmFile {
  static final String NAME = "firm.yaml";
  private static final String VAN = "van.yaml";

  /** In bytes: some pages of text. */
  private static final int LARGEST = 1 << 16;

  /** In bytes; a logo is no photograph. */
  private static final int LARGEST_LOGO = 1 << 20;

  private final Path file;

  /**
   * @param settings folder for the settings of this computer
   */
  FirmFile(Path settings) {
    this.file = settings.resolve(NAME);
  }

  /**
   * The settings in the file; without a file, settings that change nothing.
   *
   * @throws yett.knowledge.KnowledgeException if something in it is wrong
   * @throws UncheckedIOException if it cannot be read, or if others could have written it
   */
  FirmSettings read() {
    return text(file).map(t -> FirmSettings.read(file.toString(), t)).orElse(FirmSettings.NONE);
  }

  /**
   * The settings for work at a gate, whatever is wrong with the letterhead.
   *
   * @throws yett.knowledge.KnowledgeException if something else is wrong
   * @throws UncheckedIOException if it cannot be read, or if others could have written it
   */
  FirmSettings forWork() {
    return text(file).map(t -> FirmSettings.forWork(file.toString(), t)).orElse(FirmSettings.NONE);
  }

  /**
   * The stock of the van; empty if there is no list.
   *
   * @throws yett.knowledge.KnowledgeException if something in the list is wrong
   * @throws UncheckedIOException if it cannot be read, or if others could have written it
   */
  Optional<VanStock> van() {
    Path van = file.resolveSibling(VAN);
    return text(van).map(t -> VanStock.read(van.toString(), t));
  }

  private static Optional<String> text(Path file) {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    if (!OwnFiles.isOurs(file)) {
      throw new UncheckedIOException(
          "The settings of the firm "
              + file
              + " are not used: the file, or its folder, belongs to somebody else or can be written"
              + " by others. Make both yours alone (chmod go-w), or delete the file.",
          new IOException("not ours alone"));
    }
    try {
      return Optional.of(BoundedFile.text(file, LARGEST));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the settings of the firm in " + file, e);
    }
  }

  /**
   * The bytes of the firm's logo; empty if the settings name none.
   *
   * @throws UncheckedIOException if it cannot be read
   */
  Optional<byte[]> logo() {
    Optional<String> named = read().letterhead().logo();
    if (named.isEmpty()) {
      return Optional.empty();
    }
    try {
      Path logo = file.resolveSibling(named.get());
      return Optional.of(BoundedFile.bytes(logo, LARGEST_LOGO));
    } catch (IOException | InvalidPathException e) {
      throw new UncheckedIOException(
          "The logo "
              + named.get()
              + " that "
              + file
              + " names cannot be read. Name a PNG or JPEG file of at most 1 MiB, beside the"
              + " settings or with its whole path.",
          e instanceof IOException io ? io : new IOException(e));
    }
  }
}
