package tarewright.setting;

/** The sheet of paper. */
public enum Paper { A4, LETTER }
