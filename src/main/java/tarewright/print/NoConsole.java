package tarewright.print;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Keeps the layout engine from writing to the console: what it has to say is collected with each print. */
final class NoConsole implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {
        // Collected elsewhere.
    }

    @Override
    public void log(String where, Level level, String message, Throwable thrown) {
        // Collected elsewhere.
    }

    @Override
    public void setLevel(String logger, Level level) {
        // There is no log.
    }

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
        return false;
    }
}
