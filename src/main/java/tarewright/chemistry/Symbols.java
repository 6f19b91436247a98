package tarewright.chemistry;

import java.util.List;
import java.util.Set;

/**
 * The symbols of the 118 elements, in the order of their atomic numbers: whether a symbol is an element is known without
 * any table. Source: IUPAC Periodic Table of the Elements, release of 4 May 2022.
 */
public final class Symbols {
    public static final List<String> ALL = List.of((
            "H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga Ge As Se Br Kr "
            + "Rb Sr Y Zr Nb Mo Tc Ru Rh Pd Ag Cd In Sn Sb Te I Xe Cs Ba La Ce Pr Nd Pm Sm Eu Gd Tb Dy Ho Er Tm Yb Lu "
            + "Hf Ta W Re Os Ir Pt Au Hg Tl Pb Bi Po At Rn Fr Ra Ac Th Pa U Np Pu Am Cm Bk Cf Es Fm Md No Lr "
            + "Rf Db Sg Bh Hs Mt Ds Rg Cn Nh Fl Mc Lv Ts Og").split(" "));

    private static final Set<String> KNOWN = Set.copyOf(ALL);

    private Symbols() {
    }

    public static boolean isElement(String symbol) {
        return KNOWN.contains(symbol);
    }
}
