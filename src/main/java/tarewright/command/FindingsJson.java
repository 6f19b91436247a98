package tarewright.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tarewright.finding.Finding;
import tarewright.wording.FindingText;

/** Findings as data for other programs. */
final class FindingsJson {
    private FindingsJson() {
    }

    /** One file's findings. */
    static Map<String, Object> of(InputFile file, List<Finding> findings, FindingText words) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("file", file.shown());
        all.put("findings", list(findings, words));
        return all;
    }

    static List<Map<String, Object>> list(List<Finding> findings, FindingText words) {
        return findings.stream().map(words::fields).toList();
    }
}
