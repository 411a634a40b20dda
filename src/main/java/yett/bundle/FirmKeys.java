package yett.bundle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.files.BoundedFile;
import yett.files.OwnFiles;
import yett.files.WholeFile;

/**
 * The keys on this computer: the firm's own with which it signs, if it was made here, and those
 * whose bundles are used. They are for nobody but their owner to change, and the private one for
 * nobody else to read.
 */
public final class FirmKeys {
  private static final String PRIVATE = "firm-key.pem";
  private static final String PUBLIC = "firm-key-public.pem";
  private static final String TRUSTED = "trusted-keys.pem";

  /** Bytes; hundreds of keys. */
  private static final int LARGEST = 1 << 16;

  private final Path settings;

  /**
   * @param settings folder of what was decided on this computer
   */
  public FirmKeys(Path settings) {
    this.settings = settings;
  }

  /** A public key as people see it: the file to hand out, and the letters to compare. */
  public record Shown(Path file, String name) {}

  /**
   * Makes the firm's key, if there is none; its own bundles are trusted here.
   *
   * @return what is to be handed out
   */
  public Shown make() {
    Path own = settings.resolve(PRIVATE);
    Path shown = settings.resolve(PUBLIC);
    if (!Files.exists(own)) {
      KeyPair pair = Keys.fresh();
      keep(shown, Keys.pem(pair.getPublic()));
      trust(pair.getPublic());
      keep(own, Keys.pem(pair.getPrivate()));
    }
    return new Shown(shown, Keys.name(own(PUBLIC).orElseThrow(this::lost)));
  }

  private BundleException lost() {
    return new BundleException(
        settings.resolve(PUBLIC)
            + " is gone or holds no key. Put it back beside "
            + PRIVATE
            + ", or move both away and make a new key.");
  }

  /**
   * The firm's key to sign with.
   *
   * @throws BundleException if none was made here, or others can read it
   */
  PrivateKey toSign() {
    Path own = settings.resolve(PRIVATE);
    if (!Files.exists(own)) {
      throw new BundleException(
          "There is no key of the firm on this computer. Make one, once, with: knowledge key");
    }
    if (!OwnFiles.isOurs(own)) {
      throw new BundleException(
          own + " is not used: others can write to it or to its folder. Make both yours alone.");
    }
    return Keys.privateKey(text(own));
  }

  PublicKey toShow() {
    return own(PUBLIC).orElseThrow(this::lost);
  }

  private Optional<PublicKey> own(String name) {
    Path file = settings.resolve(name);
    return Files.exists(file) ? Keys.publicKeys(text(file)).stream().findFirst() : Optional.empty();
  }

  /**
   * The one public key of a file.
   *
   * @throws BundleException if it holds none, or several
   */
  public static Named read(Path file) {
    List<PublicKey> keys = Keys.publicKeys(text(file));
    if (keys.size() != 1) {
      throw new BundleException(
          file
              + " holds "
              + (keys.isEmpty() ? "no public key" : "several keys")
              + ". A firm's public key is a file in PEM, as \"knowledge key\" makes it.");
    }
    return new Named(keys.get(0), Keys.name(keys.get(0)));
  }

  /** A public key with the letters by which people tell it from others. */
  public record Named(PublicKey key, String name) {}

  public boolean trusts(PublicKey key) {
    return trusted().contains(key);
  }

  /** Bundles of this key are used from now on. */
  public void trust(PublicKey key) {
    List<PublicKey> all = new ArrayList<>(trusted());
    if (!all.contains(key)) {
      all.add(key);
      keep(settings.resolve(TRUSTED), String.join("", all.stream().map(Keys::pem).toList()));
    }
  }

  private List<PublicKey> trusted() {
    Path file = settings.resolve(TRUSTED);
    if (!Files.exists(file)) {
      return List.of();
    }
    if (!OwnFiles.isOurs(file)) {
      throw new BundleException(
          "The list of trusted keys "
              + file
              + " is not used: it, or its folder, belongs to somebody else or can be written by"
              + " others. Make both yours alone (chmod go-w), or delete the list.");
    }
    return Keys.publicKeys(text(file));
  }

  private void keep(Path file, String text) {
    try {
      OwnFiles.folder(settings);
      WholeFile.replaceOwn(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }

  private static String text(Path file) {
    try {
      return BoundedFile.text(file, LARGEST);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }
}
