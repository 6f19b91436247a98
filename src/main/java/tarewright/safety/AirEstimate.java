package tarewright.safety;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.derivation.Figure;

/**
 * What a gas would do to the air of the room. Concentrations are figures in parts per million by volume with their derivation.
 *
 * @param hazards what the gas is classified as
 * @param limits what the tables know of it in air
 * @param oneVessel if one vessel leaks into the room; empty without the room's volume
 * @param allVessels if all of them leak at once
 * @param aroundFace if one vessel goes into 1 m³ around a face
 * @param relativeDensity over that of air at the same temperature and pressure; empty if its molar mass is not known
 * @param checks every limit with what was found, passed or not
 * @param hood why a hood is demanded; none if it is not
 */
public record AirEstimate(Release release, Verdict hazards, Optional<GasLimits> limits, Optional<Figure> oneVessel,
        Optional<Figure> allVessels, Figure aroundFace, OptionalDouble relativeDensity, List<LimitCheck> checks,
        List<HoodReason> hood) {
    public AirEstimate {
        checks = List.copyOf(checks);
        hood = List.copyOf(hood);
    }

    public boolean hoodNeeded() {
        return !hood.isEmpty();
    }

    /** Whether the gas burns in air. */
    public boolean flammable() {
        return hazards.has("H220", "H221");
    }

    /** Whether it harms nobody by itself but takes the place of oxygen. */
    public boolean asphyxiant() {
        return hazards.known() && !hazards.has("H270", "H330", "H331", "H332", "H335");
    }
}
