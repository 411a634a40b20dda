package yett.command.knowledge;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.bundle.Bundle;
import yett.bundle.BundleException;
import yett.bundle.FirmKeys;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.NewFile;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.files.BoundedFile;
import yett.knowledge.AddOn;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** {@code knowledge key}, {@code pack} and {@code unpack}: exchange signed rule bases. */
public record BundleCommands(Desk desk, Console console, StandardStreams output) {
  private static final String KEY =
      "Usage: knowledge key. Makes the firm's key on this computer, once, and shows"
          + " where its public half is and the letters by which people recognise it. Hand out"
          + " the public file. The private one stays here: whoever has it can sign as the"
          + " firm.";

  private static final String PACK =
      "Usage: knowledge pack FOLDER --to FILE [--notes FILE]. Puts the cards, tables, rules, texts"
          + " and cases of a folder into one file, signed with the firm's key (knowledge key). The"
          + " folder needs a version, in its add-on.yaml or on its rule-base card, and no problems."
          + " --notes adds what is new, as knowledge compare --notes writes it.";

  private static final String UNPACK =
      "Usage: knowledge unpack FILE --to FOLDER. First checks that the file is signed"
          + " with a key trusted here (knowledge trust KEY-FILE) and unchanged since; only"
          + " then writes its contents to a new folder. Its rules are then trusted too.";

  /** In bytes. */
  private static final int LARGEST_NOTES = 1 << 20;

  @Command(
      name = {"knowledge", "key"},
      description = "make the firm's key, with which its rule bases are signed",
      help = KEY)
  public void key() {
    FirmKeys.Shown key = unlessRefused(() -> desk.keys().make());
    console.show(
        Block.heading("The firm's key"),
        Block.paragraph(key.name()),
        Block.paragraph(
            "Public half, to hand out: "
                + key.file()
                + ". Whoever gets it types once: knowledge trust "
                + key.file().getFileName()
                + ", and compares the letters above with those that you give them by another route."));
  }

  @Command(
      name = {"knowledge", "pack"},
      description = "put a rule base or an add-on into one signed file",
      help = PACK,
      completionProvider = Completions.FILES)
  public void pack(
      @Arguments List<String> words,
      @Option(longName = "to", description = "the new file") String to,
      @Option(longName = "notes", description = "a file with what is new, in Markdown")
          String notes) {
    UsageException.when(words.size() != 1 || to == null, PACK);
    Path folder = Path.of(words.get(0));
    Path file = NewFile.named(to);
    RuleBase base = RuleBase.read(desk.choice().source(folder)); // tells what is wrong with it
    String version = PackedEdition.of(folder, base);
    String text = notes == null ? "" : text(Path.of(notes));
    SortedMap<String, String> files = KnowledgeSource.folder(folder).files();
    byte[] bytes = unlessRefused(() -> new Bundle(files, text).signed(desk.keys()));
    NewFile.write(file, bytes, output);
    console.say(version + ", " + files.size() + " files, signed.");
  }

  private static String text(Path file) {
    try {
      return BoundedFile.text(file, LARGEST_NOTES);
    } catch (IOException e) {
      throw new UsageException(file + " cannot be read as text in UTF-8.");
    }
  }

  @Command(
      name = {"knowledge", "unpack"},
      description = "take a signed rule base or add-on out of its file",
      help = UNPACK,
      completionProvider = Completions.FILES)
  public void unpack(
      @Arguments List<String> words,
      @Option(longName = "to", description = "the new folder") String to) {
    UsageException.when(words.size() != 1 || to == null, UNPACK);
    Path file = Path.of(words.get(0));
    Path folder = NewFile.named(to);
    Bundle bundle = unlessRefused(() -> Bundle.opened(file.toString(), bytes(file), desk.keys()));
    bundle.unpackTo(folder);
    SortedMap<String, String> rules = new TreeMap<>(bundle.files());
    rules.keySet().removeIf(name -> !name.endsWith(".drl"));
    desk.ruleBases().trusted().trust(rules);
    RuleBase base = RuleBase.read(desk.choice().source(folder));
    console.say(
        folder
            + ": "
            + String.join(", ", base.versions())
            + ". The signature is good. "
            + (bundle.notes().isEmpty()
                ? ""
                : "What is new: " + folder.resolve(Bundle.NOTES) + ". ")
            + (bundle.files().containsKey(AddOn.FILE)
                ? "Use it with --add-on " + folder + "."
                : "Use it with --knowledge " + folder + "."));
  }

  private static byte[] bytes(Path file) {
    try {
      return BoundedFile.bytes(file, Bundle.LARGEST);
    } catch (IOException e) {
      throw new UsageException(file + " cannot be read, or is larger than any bundle.");
    }
  }

  private <T> T unlessRefused(Supplier<T> deed) {
    try {
      return deed.get();
    } catch (BundleException e) {
      output.tell(e.getMessage());
      throw new ExitException(Sysexits.NO_PERMISSION);
    }
  }
}
