package yett.rules;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.SecureClassLoader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * Loads the classes of compiled rules from the very bytes that were compiled or checked, so that no
 * file can be exchanged in between.
 */
final class CompiledRules extends SecureClassLoader {
  static final String MODEL_LIST = "META-INF/kie/yett/rules/drools-model";
  private static final String CLASS = ".class";

  private final Map<String, byte[]> entries = new HashMap<>();

  private CompiledRules(byte[] archive) throws IOException {
    super(CompiledRules.class.getClassLoader());
    try (JarInputStream jar = new JarInputStream(new ByteArrayInputStream(archive))) {
      for (JarEntry entry = jar.getNextJarEntry(); entry != null; entry = jar.getNextJarEntry()) {
        entries.put(entry.getName(), jar.readAllBytes());
      }
    }
  }

  /**
   * Loads the rules of an archive.
   *
   * @param archive made by the compiler
   * @throws IOException if it holds no compiled rules
   */
  static KieBase load(byte[] archive) throws IOException, ReflectiveOperationException {
    CompiledRules loader = new CompiledRules(archive);
    byte[] names = loader.entries.get(MODEL_LIST);
    if (names == null) {
      throw new IOException("no compiled rules");
    }
    return load(models(names), loader);
  }

  /** The rules in these classes. */
  static KieBase load(List<String> names, ClassLoader loader) throws ReflectiveOperationException {
    List<Model> models = new ArrayList<>();
    for (String name : names) {
      models.add((Model) loader.loadClass(name).getConstructor().newInstance());
    }
    return KieBaseBuilder.createKieBaseFromModel(models);
  }

  /** The class names in the compiler's list, without its heading line. */
  static List<String> models(byte[] list) {
    return new String(list, StandardCharsets.UTF_8).lines().skip(1).map(String::strip).toList();
  }

  /**
   * Looks for the rules' own classes first. The program's own rules are among the program's
   * classes, and a changed copy of them has classes of the same names.
   */
  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      boolean own = entries.containsKey(name.replace('.', '/') + CLASS);
      return own && findLoadedClass(name) == null
          ? findClass(name)
          : super.loadClass(name, resolve);
    }
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    byte[] bytes = entries.get(name.replace('.', '/') + CLASS);
    if (bytes == null) {
      throw new ClassNotFoundException(name);
    }
    return defineClass(name, bytes, 0, bytes.length);
  }

  /** Drools reads the classes of conditions from here to find equal ones. */
  @Override
  public InputStream getResourceAsStream(String name) {
    byte[] bytes = entries.get(name);
    return bytes == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(bytes);
  }
}
