package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tarewright.quantity.Digits;
import tarewright.safety.Air;
import tarewright.safety.AirEstimate;
import tarewright.safety.HoodReason;
import tarewright.safety.LimitCheck;
import tarewright.setting.Setting;

/** What gets into the air: what a gas that is made does there, and when a hood is demanded. */
final class Escapes {
    private static final int FIGURES = 2;
    private static final double MUCH_LIGHTER = 0.9;
    private static final double MUCH_HEAVIER = 1.1;

    private final Draft draft;

    Escapes(Draft draft) {
        this.draft = draft;
    }

    /** Sentences on everything on the bench, and a danger message where a hood is demanded and there is none. */
    List<Piece> pieces(Bench bench) {
        List<Piece> pieces = new ArrayList<>();
        boolean hood = false;
        for (Bottle bottle : bench.all()) {
            Set<String> said = new LinkedHashSet<>();
            List<HoodReason> reasons = bottle.air().map(AirEstimate::hood).orElseGet(() -> Air.handling(bottle.verdict()));
            hood |= !reasons.isEmpty();
            bottle.air().ifPresent(air -> gas(air, said));
            reasons.forEach(r -> said.add(reason(r)));
            if (!said.isEmpty()) {
                List<Text> name = new ArrayList<>(List.of(new Text.Strong(bottle.name())));
                Typeset.join(name, ": " + String.join(" ", said));
                pieces.add(new Piece.Paragraph(name));
            }
        }
        if (hood) {
            pieces.add(0, demand());
        }
        return pieces;
    }

    private Piece demand() {
        Setting.Hood hood = draft.procedure().setting().hood();
        if (hood == Setting.Hood.GIVEN) {
            return draft.paragraph("air.hood");
        }
        String key = hood == Setting.Hood.NONE ? "air.no-hood" : "air.hood-not-said";
        return new Piece.Caution(draft.say("caution.danger"), 0, Text.words(draft.say(key)), List.of(),
                Text.words(draft.say("air.no-hood-avoid")));
    }

    private void gas(AirEstimate air, Set<String> said) {
        if (air.flammable()) {
            said.add(draft.say("air.flammable"));
        }
        if (air.asphyxiant()) {
            said.add(draft.say("air.asphyxiant"));
        }
        air.relativeDensity().ifPresent(d -> {
            if (d < MUCH_LIGHTER) {
                said.add(draft.say("air.lighter"));
            } else if (d > MUCH_HEAVIER) {
                said.add(draft.say("air.heavier"));
            }
        });
        if (air.oneVessel().isEmpty()) {
            said.add(draft.say("air.room-not-known"));
        }
    }

    private String reason(HoodReason reason) {
        String key = "air.why." + word(reason.why());
        if (reason.check().isEmpty()) {
            return draft.say(key, "codes", String.join(", ", reason.codes()));
        }
        LimitCheck check = reason.check().get();
        return draft.say("air.over-limit", "scene", draft.say("air.scene." + word(check.scene())), "found", ppm(check.found()),
                "limit", ppm(check.limit()), "kind", draft.say("air.limit." + word(check.kind())));
    }

    private String ppm(double value) {
        return draft.numbers().localised(Digits.significant(value, FIGURES));
    }

    private static String word(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
