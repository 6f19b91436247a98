package tarewright.command;

/** Where the program starts. */
public final class Main {
    private Main() {
    }

    public static void main(String[] arguments) {
        System.exit(2);
    }
}
