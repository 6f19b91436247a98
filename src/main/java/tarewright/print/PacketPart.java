package tarewright.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * One document on its way into a packet. What is painted (contents, typefaces, drawings) is written once and serves all its
 * copies; pages and tags are written for each copy, since a tag tells its page and a page its tags.
 */
final class PacketPart {
    private static final COSName PART = COSName.getPDFName("Part");
    private static final COSName DOCUMENT = COSName.getPDFName("Document");
    private static final COSName STRUCT_PARENT = COSName.getPDFName("StructParent");
    private static final COSName STRUCT_PARENTS = COSName.getPDFName("StructParents");
    private static final COSName NUMS = COSName.getPDFName("Nums");
    private static final COSName LIMITS = COSName.getPDFName("Limits");
    private static final Set<COSName> PAINTED = Set.of(COSName.CONTENTS, COSName.RESOURCES);

    private final PdfObjects file;
    private final int root;
    private final COSDictionary catalogue;
    private final Map<COSObjectKey, Integer> shared = new HashMap<>();
    private final Map<COSObjectKey, Integer> own = new HashMap<>();
    private final List<COSObject> ownInOrder = new ArrayList<>();
    private final List<COSObject> pages = new ArrayList<>();
    private final List<COSObject> tags = new ArrayList<>();
    private final Map<Integer, COSBase> parents = new TreeMap<>();
    /** Pages and annotations with the number by which the tree of parents knows them. */
    private final Map<COSDictionary, Integer> numbered = new IdentityHashMap<>();

    /** Writes what all copies share. @param root the number of the tag that holds all tags of the packet */
    PacketPart(PDDocument document, PdfObjects file, int root) throws IOException {
        this.file = file;
        this.root = root;
        this.catalogue = document.getDocumentCatalog().getCOSObject();
        pages(catalogue.getCOSDictionary(COSName.PAGES));
        pages.forEach(this::own);
        COSDictionary tree = catalogue.getCOSDictionary(COSName.STRUCT_TREE_ROOT);
        COSBase kids = tree.getItem(COSName.K);
        if (kids instanceof COSArray array) {
            array.forEach(k -> tags.add((COSObject) k));
        } else {
            tags.add((COSObject) kids);
        }
        for (COSObject tag : tags) {
            COSDictionary its = (COSDictionary) tag.getObject();
            if (DOCUMENT.equals(its.getCOSName(COSName.S))) {
                its.setItem(COSName.S, PART);
            }
            its.removeItem(COSName.P);
            own(tag);
        }
        for (int i = 0; i < ownInOrder.size(); i++) {
            COSBase value = ownInOrder.get(i).getObject();
            look(value);
        }
        parents(tree.getCOSDictionary(COSName.PARENT_TREE));
    }

    /** An entry of the document's catalogue, written for the packet's. */
    COSBase catalogued(COSName key) throws IOException {
        COSBase value = catalogue.getItem(key);
        if (value instanceof COSDictionary || value instanceof COSArray) {
            int number = file.numbers(1);
            share(value);
            file.object(number, value, this::sharedNumber);
            return PdfObjects.reference(number);
        }
        if (value instanceof COSObject reference) {
            share(reference);
            return PdfObjects.reference(sharedNumber(reference));
        }
        return value;
    }

    /** The roles of its tags that the standard does not have. */
    COSDictionary roles() {
        COSDictionary its = catalogue.getCOSDictionary(COSName.STRUCT_TREE_ROOT).getCOSDictionary(COSName.ROLE_MAP);
        return its == null ? new COSDictionary() : its;
    }

    int pageCount() {
        return pages.size();
    }

    COSDictionary lastPage() {
        return (COSDictionary) pages.get(pages.size() - 1).getObject();
    }

    /**
     * Where a copy stands in the packet.
     *
     * @param pages its pages in order
     * @param tags its outermost
     * @param parents its leaf of the tree of parents
     * @param nextKey the first number after it that is free in that tree
     */
    record Copy(List<Integer> pages, List<Integer> tags, int parents, int nextKey) {
    }

    /** Writes a copy. @param above the node of the tree of pages that holds it @param key the first free one of the tree of parents */
    Copy copy(int above, int key) throws IOException {
        int first = file.numbers(ownInOrder.size());
        numbered.forEach((its, number) -> its.setInt(name(its), key + number));
        for (COSObject page : pages) {
            ((COSDictionary) page.getObject()).setItem(COSName.PARENT, PdfObjects.reference(above));
        }
        for (COSObject tag : tags) {
            ((COSDictionary) tag.getObject()).setItem(COSName.P, PdfObjects.reference(root));
        }
        for (int i = 0; i < ownInOrder.size(); i++) {
            file.object(first + i, ownInOrder.get(i).getObject(), r -> number(r, first));
        }
        COSArray nums = new COSArray();
        int last = key;
        for (Map.Entry<Integer, COSBase> each : parents.entrySet()) {
            last = key + each.getKey();
            nums.add(COSInteger.get(last));
            nums.add(each.getValue());
        }
        COSDictionary leaf = new COSDictionary();
        COSArray limits = new COSArray();
        limits.add(COSInteger.get(key + (parents.isEmpty() ? 0 : parents.keySet().iterator().next())));
        limits.add(COSInteger.get(last));
        leaf.setItem(LIMITS, limits);
        leaf.setItem(NUMS, nums);
        int node = file.numbers(1);
        file.object(node, leaf, r -> number(r, first));
        return new Copy(numbers(pages, first), numbers(tags, first), node, last + 1);
    }

    private static COSName name(COSDictionary numbered) {
        return numbered.containsKey(STRUCT_PARENTS) ? STRUCT_PARENTS : STRUCT_PARENT;
    }

    private List<Integer> numbers(List<COSObject> references, int first) {
        return references.stream().map(r -> number(r, first)).toList();
    }

    private int number(COSObject reference, int first) {
        if (PdfObjects.isOurs(reference)) {
            return PdfObjects.ours(reference);
        }
        Integer its = own.get(reference.getKey());
        return its != null ? first + its : sharedNumber(reference);
    }

    private int sharedNumber(COSObject reference) {
        Integer its = shared.get(reference.getKey());
        if (its == null) {
            throw new IllegalStateException("not of this part: " + reference.getKey());
        }
        return its;
    }

    private void pages(COSDictionary node) {
        for (COSBase kid : node.getCOSArray(COSName.KIDS)) {
            COSObject reference = (COSObject) kid;
            COSDictionary its = (COSDictionary) reference.getObject();
            if (its.containsKey(COSName.KIDS)) {
                pages(its);
            } else {
                its.removeItem(COSName.PARENT);
                pages.add(reference);
            }
        }
    }

    private void own(COSObject reference) {
        if (!shared.containsKey(reference.getKey()) && own.putIfAbsent(reference.getKey(), ownInOrder.size()) == null) {
            ownInOrder.add(reference);
        }
    }

    /** Takes in what a page or a tag leads to. */
    private void look(COSBase value) throws IOException {
        if (value instanceof COSObject reference) {
            if (reference.getObject() instanceof COSStream) {
                share(reference);
            } else {
                own(reference);
            }
        } else if (value instanceof COSDictionary dictionary) {
            for (COSName key : List.of(STRUCT_PARENTS, STRUCT_PARENT)) {
                if (dictionary.getItem(key) instanceof COSNumber number) {
                    numbered.put(dictionary, number.intValue());
                }
            }
            for (Map.Entry<COSName, COSBase> each : dictionary.entrySet()) {
                if (PAINTED.contains(each.getKey())) {
                    share(each.getValue());
                } else {
                    look(each.getValue());
                }
            }
        } else if (value instanceof COSArray array) {
            for (COSBase each : array) {
                look(each);
            }
        }
    }

    /** Writes what is painted, and all that it leads to. */
    private void share(COSBase value) throws IOException {
        if (value instanceof COSObject reference) {
            if (shared.containsKey(reference.getKey())) {
                return;
            }
            COSBase its = reference.getObject();
            int number = file.numbers(1);
            shared.put(reference.getKey(), number);
            share(its);
            if (its instanceof COSStream stream) {
                file.stream(number, stream, this::sharedNumber);
            } else {
                file.object(number, its, this::sharedNumber);
            }
        } else if (value instanceof COSDictionary dictionary) {
            for (COSBase each : dictionary.getValues()) {
                share(each);
            }
        } else if (value instanceof COSArray array) {
            for (COSBase each : array) {
                share(each);
            }
        }
    }

    private void parents(COSDictionary node) {
        COSArray nums = node.getCOSArray(NUMS);
        for (int i = 0; nums != null && i + 1 < nums.size(); i += 2) {
            parents.put(((COSNumber) nums.getObject(i)).intValue(), nums.get(i + 1));
        }
        COSArray kids = node.getCOSArray(COSName.KIDS);
        for (int i = 0; kids != null && i < kids.size(); i++) {
            parents((COSDictionary) kids.getObject(i));
        }
    }
}
