package tarewright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import tarewright.procedure.prepare.Draw;
import tarewright.procedure.prepare.Provision;
import tarewright.procedure.prepare.Supplies;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.RinseAndFill;

/** What is got ready, for other programs: of each thing that is handed out the total, what a group gets, and in what; and what comes off the shelf. */
final class PrepJson {
    private PrepJson() {
    }

    static void into(ObjectNode node, Recipes recipes, Supplies supplies) {
        ObjectNode prep = node.putObject("prep");
        int groups = supplies.procedure().setting().groups();
        ObjectNode handedOut = prep.putObject("handed out");
        // What is measured out of one bottle by mass and by volume has a row for each.
        supplies.provisions().forEach(p -> provision(handedOut.withArray(p.name()).addObject(), p, groups));
        ArrayNode shelf = prep.putArray("off the shelf");
        for (Draw draw : Draw.of(supplies, recipes, List.of())) {
            ObjectNode each = shelf.addObject();
            each.put("what", draw.thing() instanceof Draw.Thing.From from ? from.ingredient().name() : ((Draw.Thing.Block) draw.thing()).block().name());
            draw.stock().ifPresent(s -> each.put("stock", s.name()));
            each.set("take", FiguresJson.figure(draw.amount()));
            draw.onHand().ifPresent(h -> each.set("on hand", FiguresJson.figure(h)));
        }
    }

    private static void provision(ObjectNode node, Provision provision, int groups) {
        ArrayNode uses = node.putArray("uses");
        provision.uses().forEach(u -> uses.add(u.name()));
        provision.fillings().forEach(f -> filling(node.withArray("rinsing and filling").addObject(), f));
        node.set("each", FiguresJson.figure(provision.each()));
        node.set("total", FiguresJson.figure(provision.total()));
        node.set("ready", FiguresJson.figure(provision.ready()));
        node.set("share", FiguresJson.figure(provision.share()));
        provision.bottle().ifPresent(b -> node.set("bottle", FiguresJson.figure(b)));
        node.put("containers", groups);
    }

    private static void filling(ObjectNode node, RinseAndFill filling) {
        node.put("instrument", filling.item().name());
        node.put("rinses", filling.rinses());
        node.set("rinse", FiguresJson.figure(filling.rinse()));
        ArrayNode rests = node.putArray("instruments");
        filling.rests().forEach(r -> {
            ObjectNode rest = rests.addObject();
            rest.put("count", r.count());
            r.stays().ifPresent(s -> {
                rest.put("fillings", r.fillings());
                rest.set("left in it", FiguresJson.figure(s));
            });
        });
        node.set("total", FiguresJson.figure(filling.total()));
    }
}
