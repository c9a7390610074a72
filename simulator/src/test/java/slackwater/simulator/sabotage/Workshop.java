package slackwater.simulator.sabotage;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * Makes a controller with a fault in it: takes one of its sources, changes it in one place, compiles it in memory, and loads
 * controller, bench and scenes afresh around it. The referee, the yard and the model stay those of the test.
 */
final class Workshop {
    private static final Path SOURCES = Path.of("..", "controller", "src", "main", "java");
    private static final List<String> AFRESH = List.of(
            "slackwater.controller.",
            "slackwater.simulator.bench.",
            "slackwater.simulator.sabotage.Scenes",
            "slackwater.simulator.sabotage.Between");
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();
    /** Kept open from one sabotage to the next, because it knows what is in every jar. */
    private static final JavaFileManager FILES = COMPILER.getStandardFileManager(null, null, StandardCharsets.UTF_8);

    private static final Map<String, byte[]> WHOLE = new ConcurrentHashMap<>();

    /** One change: what is searched for must be there exactly once. */
    record Edit(String file, String search, String replacement) {}

    private Workshop() {}

    /** A loader of the controller with these changes; with none it is whole. */
    static ClassLoader loader(final List<Edit> edits) {
        return new Afresh(edits.isEmpty() ? Map.of() : compile(edited(edits)));
    }

    private static Map<String, String> edited(final List<Edit> edits) {
        final Map<String, String> sources = new LinkedHashMap<>();
        for (final Edit edit : edits) {
            final String source = sources.computeIfAbsent(edit.file(), Workshop::read);
            final int at = source.indexOf(edit.search());
            if (at < 0 || source.indexOf(edit.search(), at + 1) >= 0) {
                throw new IllegalArgumentException(edit.file()
                        + " must say exactly once, so that the sabotage is what its name says: " + edit.search());
            }
            sources.put(edit.file(), source.replace(edit.search(), edit.replacement()));
        }
        return sources;
    }

    private static String read(final String file) {
        try {
            return Files.readString(SOURCES.resolve("slackwater/controller/" + file + ".java"), StandardCharsets.UTF_8);
        } catch (final IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    private static Map<String, byte[]> compile(final Map<String, String> sources) {
        final DiagnosticCollector<JavaFileObject> said = new DiagnosticCollector<>();
        final Memory memory = new Memory(FILES);
        final List<Source> units = new ArrayList<>();
        sources.forEach((file, text) -> units.add(new Source(file, text)));
        final List<String> options = List.of("-proc:none", "-nowarn", "-cp", System.getProperty("java.class.path"));
        if (!COMPILER.getTask(null, memory, said, options, null, units).call()) {
            throw new IllegalArgumentException("the sabotage does not compile: " + said.getDiagnostics());
        }
        final Map<String, byte[]> classes = new LinkedHashMap<>();
        memory.written.forEach((name, bytes) -> classes.put(name, bytes.toByteArray()));
        return classes;
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String text;

        Source(final String file, final String text) {
            super(URI.create("string:///slackwater/controller/" + file + ".java"), Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(final boolean mayIgnoreErrors) {
            return text;
        }
    }

    private static final class Memory extends ForwardingJavaFileManager<JavaFileManager> {
        private final Map<String, ByteArrayOutputStream> written = new LinkedHashMap<>();

        Memory(final JavaFileManager files) {
            super(files);
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                final Location location,
                final String className,
                final JavaFileObject.Kind kind,
                final FileObject sibling) {
            return new SimpleJavaFileObject(URI.create("memory:///" + className), kind) {
                @Override
                public OutputStream openOutputStream() {
                    return written.computeIfAbsent(className, name -> new ByteArrayOutputStream());
                }
            };
        }
    }

    /** Child first for what is under test; everything else is the test's own. */
    private static final class Afresh extends ClassLoader {
        private final Map<String, byte[]> sabotaged;

        Afresh(final Map<String, byte[]> sabotaged) {
            super(Workshop.class.getClassLoader());
            this.sabotaged = sabotaged;
        }

        @Override
        protected Class<?> loadClass(final String name, final boolean isResolving) throws ClassNotFoundException {
            if (AFRESH.stream().noneMatch(name::startsWith)) {
                return super.loadClass(name, isResolving);
            }
            synchronized (getClassLoadingLock(name)) {
                final Optional<Class<?>> known = Optional.ofNullable(findLoadedClass(name));
                return known.isPresent() ? known.get() : define(name);
            }
        }

        private Class<?> define(final String name) {
            final byte[] bytes =
                    Optional.ofNullable(sabotaged.get(name)).orElseGet(() -> WHOLE.computeIfAbsent(name, this::whole));
            return defineClass(name, bytes, 0, bytes.length);
        }

        private byte[] whole(final String name) {
            final String file = name.replace('.', '/') + ".class";
            try (InputStream stream = Optional.ofNullable(getParent().getResourceAsStream(file))
                    .orElseThrow(() -> new IllegalStateException("no class file " + file))) {
                return stream.readAllBytes();
            } catch (final IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }
}
