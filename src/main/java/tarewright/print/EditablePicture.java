package tarewright.print;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Base64;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.apache.poi.common.usermodel.PictureType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import tarewright.document.Piece;

/** Drawings as pictures in dots, since word processors do not agree on vectors. */
final class EditablePicture {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    /** 300 dots to the inch. */
    private static final double DOTS_PER_MILLIMETRE = 300 / 25.4;

    private EditablePicture() {
    }

    /** A packed pictogram or sign. @param size in millimetres, both ways */
    static void packed(XWPFParagraph paragraph, String code, String fallback, String spoken, double size) {
        String file = "pictograms/" + code.toLowerCase(java.util.Locale.ROOT) + ".svg";
        put(paragraph, Packed.text(code.matches("[A-Z0-9]+") && Packed.has(file) ? file : "pictograms/" + fallback + ".svg"), spoken, size, size);
    }

    /** @param width in millimetres @param height in millimetres */
    static void put(XWPFParagraph paragraph, String svg, String spoken, double width, double height) {
        put(paragraph, dots(SafeSvg.of(svg), width, height), spoken, width, height);
    }

    static void photograph(XWPFParagraph paragraph, Piece.Photograph photograph) {
        put(paragraph, Base64.getDecoder().decode(photograph.png()), photograph.spoken(), photograph.widthMillimetres(), photograph.heightMillimetres());
    }

    private static void put(XWPFParagraph paragraph, byte[] png, String spoken, double width, double height) {
        XWPFRun run = paragraph.createRun();
        try (ByteArrayInputStream in = new ByteArrayInputStream(png)) {
            run.addPicture(in, PictureType.PNG, "picture.png", emu(width), emu(height))
                    .getCTPicture().getNvPicPr().getCNvPr().setDescr(SafeXml.clean(spoken));
            run.getCTR().getDrawingArray(0).getInlineArray(0).getDocPr().setDescr(SafeXml.clean(spoken));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] dots(SafeSvg drawing, double width, double height) {
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) (width * DOTS_PER_MILLIMETRE));
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, (float) (height * DOTS_PER_MILLIMETRE));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            transcoder.transcode(new TranscoderInput(new StringReader(drawing.markup("picture", "", "picture", "", Medium.PAPER))), new TranscoderOutput(out));
        } catch (TranscoderException e) {
            throw new IllegalStateException("a drawing of ours that cannot be painted", e);
        }
        return out.toByteArray();
    }

    private static int emu(double millimetres) {
        return Units.toEMU(millimetres * POINTS_PER_MILLIMETRE);
    }
}
