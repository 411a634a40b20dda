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
 * The keys on this computer: the firm's own for signing, if it was made here, and those of firms
 * whose bundles are used. Only their owner may change them, or read the private one.
 */
public final class FirmKeys {
  private static final String PRIVATE = "firm-key.pem";
  private static final String PUBLIC = "firm-key-public.pem";
  private static final String TRUSTED = "trusted-keys.pem";

  /** In bytes; hundreds of keys. */
  private static final int LARGEST = 1 << 16;

  private final Path settings;

  /**
   * @param settings folder for the settings of this computer
   */
  public FirmKeys(Path settings) {
    this.settings = settings;
  }

  /** A public key to show people: the file to hand out, and the name to compare. */
  public record Shown(Path file, String name) {}

  /**
   * Makes the firm's key if there is none, and trusts the firm's own bundles here.
   *
   * @return the public key to hand out
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
   * The firm's private key for signing.
   *
   * @throws BundleException if none was made here, or if others can read it
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
   * The only public key in a file.
   *
   * @throws BundleException if the file has none, or several
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

  /** A public key with the name by which people tell it from others. */
  public record Named(PublicKey key, String name) {}

  public boolean trusts(PublicKey key) {
    return trusted().contains(key);
  }

  /** Trusts this key: bundles signed with it are used from now on. */
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
