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
 * Classes of compiled rules, loaded from the very bytes that were compiled or looked at: no file
 * can be exchanged in between.
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
   * @param archive as the compiler made it
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

  /** The rules that these classes hold. */
  static KieBase load(List<String> names, ClassLoader loader) throws ReflectiveOperationException {
    List<Model> models = new ArrayList<>();
    for (String name : names) {
      models.add((Model) loader.loadClass(name).getConstructor().newInstance());
    }
    return KieBaseBuilder.createKieBaseFromModel(models);
  }

  /** The names of the classes in the compiler's list, whose first line is a heading. */
  static List<String> models(byte[] list) {
    return new String(list, StandardCharsets.UTF_8).lines().skip(1).map(String::strip).toList();
  }

  /**
   * Its own classes first: the program's own rules lie among the program's classes, and rules of a
   * changed copy have the same names.
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

  /** The session looks at the classes of conditions, to find those that are the same. */
  @Override
  public InputStream getResourceAsStream(String name) {
    byte[] bytes = entries.get(name);
    return bytes == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(bytes);
  }
}
