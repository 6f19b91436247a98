package tarewright.print;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core.XHTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;

/**
 * The templates and style sheets of the documents: those packed with the program, and over them, file by file, those of one
 * folder.
 *
 * <p>A template is text that another person wrote, so it gets text and nothing else: no Java class, no method, no file outside
 * its folder (a link that leads out of the folder is refused as well), no address.
 */
public final class Templates {
    private static final String PACKED = "/tarewright/templates";

    private final Configuration settings;

    private Templates(TemplateLoader loader) {
        settings = new Configuration(Configuration.VERSION_2_3_35);
        settings.setTemplateLoader(loader);
        settings.setDefaultEncoding("UTF-8");
        settings.setLocalizedLookup(false);
        settings.setLocale(Locale.ROOT);
        settings.setTimeZone(TimeZone.getTimeZone("UTC"));
        settings.setNumberFormat("computer");
        settings.setOutputFormat(XHTMLOutputFormat.INSTANCE);
        settings.setRecognizeStandardFileExtensions(false);
        settings.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_35));
        settings.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        settings.setAPIBuiltinEnabled(false);
        settings.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        settings.setLogTemplateExceptions(false);
        settings.setWrapUncheckedExceptions(true);
        settings.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    }

    /** The packed templates alone. */
    public static Templates packed() {
        return new Templates(new ClassTemplateLoader(Templates.class, PACKED));
    }

    /**
     * The packed templates, and before them the files of the same name in a folder.
     *
     * @param folder of the person's own templates and style sheets; a folder that is not there is an empty one
     */
    public static Templates over(Path folder) {
        boolean onDisk = folder.getFileSystem().equals(FileSystems.getDefault());
        if (!onDisk || !Files.isDirectory(folder)) {
            return packed();
        }
        try {
            TemplateLoader own = new FileTemplateLoader(folder.toFile());
            TemplateLoader ours = new ClassTemplateLoader(Templates.class, PACKED);
            return new Templates(new MultiTemplateLoader(new TemplateLoader[] {own, ours}));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What a template makes of the facts.
     *
     * @param facts maps, lists, strings and truth values only
     * @throws BrokenTemplate if the template, or one that it includes, cannot be read or filled
     */
    String fill(String name, Map<String, Object> facts) {
        try {
            Template template = settings.getTemplate(name);
            StringWriter out = new StringWriter(32_768);
            template.process(facts, out);
            return out.toString();
        } catch (ParseException e) {
            throw new BrokenTemplate(e.getTemplateName(), Optional.of(e.getLineNumber()), Optional.of(e.getColumnNumber()),
                    e.getEditorMessage());
        } catch (TemplateException e) {
            throw new BrokenTemplate(Optional.ofNullable(e.getTemplateSourceName()).orElse(name),
                    Optional.ofNullable(e.getLineNumber()),
                    Optional.ofNullable(e.getColumnNumber()), says(e));
        } catch (IOException | SecurityException e) {
            throw new BrokenTemplate(name, Optional.empty(), Optional.empty(), String.valueOf(e.getMessage()));
        }
    }

    private static String says(TemplateException e) {
        String first = e instanceof InvalidReferenceException ? "nothing of this name: " : "";
        Throwable cause = e.getCause();
        return first + (cause != null && cause.getMessage() != null ? cause.getMessage() : e.getMessageWithoutStackTop());
    }
}
