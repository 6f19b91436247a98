package tarewright.chemistry;

import java.util.List;

/** A formula that is only shown: a letter may stand for a count in it, so it has no composition. */
public record ShownFormula(List<FormulaPart> parts) {
    public ShownFormula {
        parts = List.copyOf(parts);
    }

    /** In ASCII: {@code CuSO4.xH2O}. */
    public String plain() {
        return FormulaParts.plain(parts);
    }

    /** With Unicode's subscripts, superscripts and dot, letters on the line: {@code CuSO₄·xH₂O}. */
    public String unicode() {
        return FormulaParts.unicode(parts);
    }
}
