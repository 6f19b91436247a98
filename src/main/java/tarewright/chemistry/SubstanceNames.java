package tarewright.chemistry;

/** When two names of substances are the same name. */
public final class SubstanceNames {
    private SubstanceNames() {
    }

    /**
     * What two names share if they are the same: letter case, runs of spaces, any kind of hyphen or apostrophe, and a space
     * before or behind a bracket do not count. {@code Copper (II) sulfate} is {@code copper(II) sulfate}, {@code propan 2
     * ol} is {@code propan-2-ol}.
     */
    public static String key(String name) {
        StringBuilder key = new StringBuilder();
        boolean gap = false;
        for (int i = 0; i < name.length(); i++) {
            char c = plain(name.charAt(i));
            if (c == ' ') {
                gap = true;
                continue;
            }
            boolean first = key.length() == 0;
            if (gap && !first && c != '(' && c != ')' && key.charAt(key.length() - 1) != '('
                    && key.charAt(key.length() - 1) != ')') {
                key.append(' ');
            }
            gap = false;
            key.append(c);
        }
        return key.toString();
    }

    private static char plain(char c) {
        if (Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '-' || c >= '\u2010' && c <= '\u2015') {
            return ' ';
        }
        return c == '\u2019' ? '\'' : Character.toLowerCase(c);
    }
}
