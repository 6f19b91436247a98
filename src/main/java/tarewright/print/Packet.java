package tarewright.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A packet as it grows: one document is read at a time and written with all its copies. A file that joins documents in memory
 * holds every tag of every copy, which for a class of thirty is more than a small computer has.
 */
final class Packet {
    private static final String PRODUCER = "Tarewright";
    private static final int ID_DIGITS = 32;
    private static final List<COSName> OF_THE_FIRST = List.of(COSName.MARK_INFO, COSName.LANG,
            COSName.getPDFName("ViewerPreferences"), COSName.OUTPUT_INTENTS);

    private final PdfObjects file = new PdfObjects();
    private final int catalogue = file.numbers(1);
    private final int pageTree = file.numbers(1);
    private final int tagTree = file.numbers(1);
    private final int allTags = file.numbers(1);
    private final int outline = file.numbers(1);
    private final COSDictionary head = new COSDictionary();
    private final COSDictionary roles = new COSDictionary();
    private final COSArray pageNodes = new COSArray();
    private final COSArray tags = new COSArray();
    private final COSArray parents = new COSArray();
    private final List<String> titles = new ArrayList<>();
    private final List<Integer> starts = new ArrayList<>();
    private int pages;
    private int key;

    /** Writes a document as often as it is copied. */
    void add(PacketPdf.Part part, boolean doubleSided) throws IOException {
        try (PDDocument document = Loader.loadPDF(part.pdf())) {
            PacketPart its = new PacketPart(document, file, allTags);
            if (head.size() == 0) {
                for (COSName name : OF_THE_FIRST) {
                    head.setItem(name, its.catalogued(name));
                }
            }
            for (Map.Entry<COSName, COSBase> role : its.roles().entrySet()) {
                if (!roles.containsKey(role.getKey())) {
                    roles.setItem(role.getKey(), role.getValue());
                }
            }
            for (int copy = 0; copy < part.copies(); copy++) {
                copy(its, part.title(), doubleSided && its.pageCount() % 2 == 1);
            }
        }
    }

    private void copy(PacketPart part, String title, boolean blankAfter) throws IOException {
        int node = file.numbers(1);
        PacketPart.Copy copy = part.copy(node, key);
        COSArray kids = new COSArray();
        copy.pages().forEach(p -> kids.add(PdfObjects.reference(p)));
        if (blankAfter) {
            kids.add(PdfObjects.reference(blank(part.lastPage().getCOSArray(COSName.MEDIA_BOX), node)));
        }
        COSDictionary its = new COSDictionary();
        its.setItem(COSName.TYPE, COSName.PAGES);
        its.setItem(COSName.PARENT, PdfObjects.reference(pageTree));
        its.setItem(COSName.KIDS, kids);
        its.setInt(COSName.COUNT, kids.size());
        file.object(node, its, PdfObjects::ours);
        pageNodes.add(PdfObjects.reference(node));
        pages += kids.size();
        copy.tags().forEach(t -> tags.add(PdfObjects.reference(t)));
        parents.add(PdfObjects.reference(copy.parents()));
        key = copy.nextKey();
        titles.add(title);
        starts.add(copy.pages().get(0));
    }

    /** As large as the page before it, and nothing on it. */
    private int blank(COSArray size, int node) throws IOException {
        COSDictionary page = new COSDictionary();
        page.setItem(COSName.TYPE, COSName.PAGE);
        page.setItem(COSName.PARENT, PdfObjects.reference(node));
        page.setItem(COSName.MEDIA_BOX, size);
        page.setItem(COSName.RESOURCES, new COSDictionary());
        int number = file.numbers(1);
        file.object(number, page, PdfObjects::ours);
        return number;
    }

    /** The whole file. @param digest of all that it is made of, hexadecimal */
    byte[] bytes(String title, String digest) throws IOException {
        COSDictionary root = new COSDictionary();
        root.setItem(COSName.TYPE, COSName.PAGES);
        root.setItem(COSName.KIDS, pageNodes);
        root.setInt(COSName.COUNT, pages);
        file.object(pageTree, root, PdfObjects::ours);
        tags();
        outline();
        try (PDDocument frame = new PDDocument()) {
            Stamp.of(SafeXml.clean(title), PRODUCER, digest).put(frame);
            int metadata = file.numbers(1);
            file.stream(metadata, frame.getDocumentCatalog().getMetadata().getCOSObject(), PdfObjects::ours);
            head.setItem(COSName.TYPE, COSName.CATALOG);
            head.setItem(COSName.PAGES, PdfObjects.reference(pageTree));
            head.setItem(COSName.STRUCT_TREE_ROOT, PdfObjects.reference(tagTree));
            head.setItem(COSName.OUTLINES, PdfObjects.reference(outline));
            head.setItem(COSName.METADATA, PdfObjects.reference(metadata));
            file.object(catalogue, head, PdfObjects::ours);
            byte[] id = HexFormat.of().parseHex(digest, 0, ID_DIGITS);
            return file.end(catalogue, frame.getDocumentInformation().getCOSObject(), id);
        }
    }

    private void tags() throws IOException {
        COSDictionary all = new COSDictionary();
        all.setItem(COSName.TYPE, COSName.getPDFName("StructElem"));
        all.setItem(COSName.S, COSName.getPDFName("Document"));
        all.setItem(COSName.P, PdfObjects.reference(tagTree));
        all.setItem(COSName.K, tags);
        file.object(allTags, all, PdfObjects::ours);
        COSDictionary byKey = new COSDictionary();
        byKey.setItem(COSName.KIDS, parents);
        int tree = file.numbers(1);
        file.object(tree, byKey, PdfObjects::ours);
        COSDictionary root = new COSDictionary();
        root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
        root.setItem(COSName.ROLE_MAP, roles);
        root.setItem(COSName.K, PdfObjects.reference(allTags));
        root.setItem(COSName.PARENT_TREE, PdfObjects.reference(tree));
        root.setInt(COSName.getPDFName("ParentTreeNextKey"), key);
        file.object(tagTree, root, PdfObjects::ours);
    }

    /** The documents' own bookmarks would number their headings through all copies; a packet is turned by document. */
    private void outline() throws IOException {
        int first = file.numbers(titles.size());
        int last = first + titles.size() - 1;
        for (int i = 0; i < titles.size(); i++) {
            COSDictionary item = new COSDictionary();
            item.setString(COSName.TITLE, titles.get(i));
            item.setItem(COSName.PARENT, PdfObjects.reference(outline));
            if (i > 0) {
                item.setItem(COSName.PREV, PdfObjects.reference(first + i - 1));
            }
            if (first + i < last) {
                item.setItem(COSName.NEXT, PdfObjects.reference(first + i + 1));
            }
            COSArray top = new COSArray();
            top.add(PdfObjects.reference(starts.get(i)));
            top.add(COSName.getPDFName("XYZ"));
            for (int j = 0; j < 3; j++) {
                top.add(COSNull.NULL);
            }
            item.setItem(COSName.DEST, top);
            file.object(first + i, item, PdfObjects::ours);
        }
        COSDictionary all = new COSDictionary();
        all.setItem(COSName.TYPE, COSName.OUTLINES);
        all.setItem(COSName.FIRST, PdfObjects.reference(first));
        all.setItem(COSName.LAST, PdfObjects.reference(last));
        all.setInt(COSName.COUNT, titles.size());
        file.object(outline, all, PdfObjects::ours);
    }
}
