import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.JSRInlinerAdapter;

/**
 * Makes the classes of the finished jar ready for the archive of classes, before that is made. The build runs it; it is no part of the program.
 *
 * <p>What a program does for the first time it pays for: each lambda is bound by Java code that runs uncompiled (40 µs each with an archive, against 6 µs for a class that lies in the archive; a run of
 * {@code figures} meets 1,100 of them, a quarter of its time), and so are {@code equals}, {@code hashCode} and {@code toString} of each record. Both become plain classes and plain code here, as a compiler
 * could have made them. Classes of libraries in the format before Java 6, which no archive takes in, get the stack maps of the newer one.
 */
public final class ReadyMade {
    private static final String LAMBDAS = "java/lang/invoke/LambdaMetafactory";
    private static final String RECORDS = "java/lang/runtime/ObjectMethods";
    private static final FileTime DATE = FileTime.fromMillis(1_767_225_600_000L);
    /** Classes of Java 5 that the usual commands load. */
    private static final List<String> OLD = List.of("picocli/", "org/w3c/", "org/apache/commons/logging/");
    private static final List<String> LINKED = List.of("tarewright/");

    private final Map<String, byte[]> made = new TreeMap<>();
    private final Map<String, List<String>> nests = new TreeMap<>();

    private ReadyMade() {
    }

    public static void main(String[] arguments) throws IOException {
        Path jar = Path.of(arguments[0]);
        try (FileSystem files = FileSystems.newFileSystem(URI.create("jar:" + jar.toUri()), Map.of())) {
            new ReadyMade().all(files.getPath("/"));
        }
    }

    private void all(Path root) throws IOException {
        Map<String, byte[]> classes = new TreeMap<>();
        for (String folder : Stream.concat(OLD.stream(), LINKED.stream()).toList()) {
            if (Files.isDirectory(root.resolve(folder))) {
                try (Stream<Path> all = Files.walk(root.resolve(folder))) {
                    for (Path file : all.filter(f -> f.toString().endsWith(".class")).toList()) {
                        classes.put(root.relativize(file).toString(), Files.readAllBytes(file));
                    }
                }
            }
        }
        Map<String, byte[]> changed = new TreeMap<>();
        classes.forEach((name, bytes) -> {
            int version = (bytes[6] & 0xFF) << 8 | bytes[7] & 0xFF;
            if (version < Opcodes.V1_6 && OLD.stream().anyMatch(name::startsWith)) {
                changed.put(name, renewed(bytes, classes));
            } else if (version >= Opcodes.V11 && LINKED.stream().anyMatch(name::startsWith)) {
                Linking linking = new Linking(bytes);
                if (linking.any) {
                    changed.put(name, linking.bytes());
                }
            }
        });
        nests.forEach((host, members) -> changed.put(host + ".class", nest(changed.getOrDefault(host + ".class", classes.get(host + ".class")), members)));
        changed.putAll(made);
        for (Map.Entry<String, byte[]> each : changed.entrySet()) {
            Path file = root.resolve(each.getKey());
            Files.write(file, each.getValue());
            Files.setLastModifiedTime(file, DATE);
        }
    }

    // --- old classes

    private static byte[] renewed(byte[] bytes, Map<String, byte[]> classes) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected String getCommonSuperClass(String one, String other) {
                return common(one, other, classes);
            }
        };
        new ClassReader(bytes).accept(new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visit(int version, int access, String name, String signature, String above, String[] interfaces) {
                super.visit(Opcodes.V1_8, access, name, signature, above, interfaces);
            }

            @Override
            public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
                return new JSRInlinerAdapter(super.visitMethod(access, name, descriptor, signature, exceptions), access, name, descriptor, signature, exceptions);
            }
        }, ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }

    private static String common(String one, String other, Map<String, byte[]> classes) {
        List<String> above = new ArrayList<>();
        for (String each = one; !each.isEmpty(); each = above(each, classes)) {
            above.add(each);
        }
        String each = other;
        while (!above.contains(each)) {
            each = above(each, classes);
        }
        return each;
    }

    /** The class above; of an interface that is Object, as verification has it. */
    private static String above(String name, Map<String, byte[]> classes) {
        byte[] bytes = classes.get(name + ".class");
        if (bytes != null) {
            ClassReader reader = new ClassReader(bytes);
            return (reader.getAccess() & Opcodes.ACC_INTERFACE) != 0 ? "java/lang/Object" : reader.getSuperName();
        }
        try {
            Class<?> here = Class.forName(name.replace('/', '.'), false, ClassLoader.getPlatformClassLoader());
            return name.equals("java/lang/Object") ? "" : here.getSuperclass() == null ? "java/lang/Object" : Type.getInternalName(here.getSuperclass());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] nest(byte[] host, List<String> members) {
        ClassReader reader = new ClassReader(host);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visitEnd() {
                members.forEach(this::visitNestMember);
                super.visitEnd();
            }
        }, 0);
        return writer.toByteArray();
    }

    // --- lambdas and records

    private final class Linking extends ClassVisitor {
        private final ClassReader reader;
        private final ClassWriter writer;
        private final Map<String, Object[]> recordMethods = new TreeMap<>();
        private String name;
        private String host;
        private int version;
        private int count;
        private boolean any;

        Linking(byte[] bytes) {
            super(Opcodes.ASM9);
            reader = new ClassReader(bytes);
            writer = new ClassWriter(reader, 0);
            cv = writer;
            reader.accept(this, 0);
        }

        byte[] bytes() {
            return writer.toByteArray();
        }

        @Override
        public void visit(int version, int access, String name, String signature, String above, String[] interfaces) {
            this.version = version;
            this.name = name;
            this.host = name;
            super.visit(version, access, name, signature, above, interfaces);
        }

        @Override
        public void visitNestHost(String nestHost) {
            host = nestHost;
            super.visitNestHost(nestHost);
        }

        @Override
        public MethodVisitor visitMethod(int access, String method, String descriptor, String signature, String[] exceptions) {
            return new MethodVisitor(Opcodes.ASM9, super.visitMethod(access, method, descriptor, signature, exceptions)) {
                @Override
                public void visitInvokeDynamicInsn(String what, String type, Handle bootstrap, Object... arguments) {
                    if (bootstrap.getOwner().equals(LAMBDAS) && bootstrap.getName().equals("metafactory")) {
                        String lambda = lambda(what, type, (Type) arguments[0], (Handle) arguments[1], (Type) arguments[2]);
                        super.visitMethodInsn(Opcodes.INVOKESTATIC, lambda, "make", type, false);
                        any = true;
                    } else if (bootstrap.getOwner().equals(RECORDS) && (what.equals("equals") || what.equals("hashCode") || what.equals("toString"))) {
                        recordMethods.put(what, arguments);
                        super.visitMethodInsn(Opcodes.INVOKESTATIC, name, "$" + what, type, false);
                        any = true;
                    } else {
                        super.visitInvokeDynamicInsn(what, type, bootstrap, arguments);
                    }
                }
            };
        }

        @Override
        public void visitEnd() {
            recordMethods.forEach((what, arguments) -> {
                String type = what.equals("equals") ? "(L" + name + ";Ljava/lang/Object;)Z" : "(L" + name + ";)" + (what.equals("hashCode") ? "I" : "Ljava/lang/String;");
                MethodVisitor to = cv.visitMethod(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC, "$" + what, type, null, null);
                to.visitCode();
                if (what.equals("equals")) {
                    equalComponents(to, arguments);
                } else if (what.equals("hashCode")) {
                    hashOfComponents(to, arguments);
                } else {
                    textOfComponents(to, arguments);
                }
                to.visitEnd();
            });
            super.visitEnd();
        }

        /** As {@code java.lang.runtime.ObjectMethods} has it: components by equals, floating ones by compare. */
        private void equalComponents(MethodVisitor to, Object[] arguments) {
            Label other = new Label();
            Label differs = new Label();
            to.visitVarInsn(Opcodes.ALOAD, 0);
            to.visitVarInsn(Opcodes.ALOAD, 1);
            to.visitJumpInsn(Opcodes.IF_ACMPNE, other);
            to.visitInsn(Opcodes.ICONST_1);
            to.visitInsn(Opcodes.IRETURN);
            to.visitLabel(other);
            to.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
            to.visitVarInsn(Opcodes.ALOAD, 1);
            to.visitTypeInsn(Opcodes.INSTANCEOF, name);
            to.visitJumpInsn(Opcodes.IFEQ, differs);
            for (int i = 2; i < arguments.length; i++) {
                Handle field = (Handle) arguments[i];
                Type type = Type.getType(field.getDesc());
                to.visitVarInsn(Opcodes.ALOAD, 0);
                to.visitFieldInsn(Opcodes.GETFIELD, name, field.getName(), field.getDesc());
                to.visitVarInsn(Opcodes.ALOAD, 1);
                to.visitTypeInsn(Opcodes.CHECKCAST, name);
                to.visitFieldInsn(Opcodes.GETFIELD, name, field.getName(), field.getDesc());
                switch (type.getSort()) {
                    case Type.LONG -> {
                        to.visitInsn(Opcodes.LCMP);
                        to.visitJumpInsn(Opcodes.IFNE, differs);
                    }
                    case Type.FLOAT, Type.DOUBLE -> {
                        String box = box(type);
                        to.visitMethodInsn(Opcodes.INVOKESTATIC, box, "compare", "(" + type + type + ")I", false);
                        to.visitJumpInsn(Opcodes.IFNE, differs);
                    }
                    case Type.OBJECT, Type.ARRAY -> {
                        to.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "equals", "(Ljava/lang/Object;Ljava/lang/Object;)Z", false);
                        to.visitJumpInsn(Opcodes.IFEQ, differs);
                    }
                    default -> to.visitJumpInsn(Opcodes.IF_ICMPNE, differs);
                }
            }
            to.visitInsn(Opcodes.ICONST_1);
            to.visitInsn(Opcodes.IRETURN);
            to.visitLabel(differs);
            to.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
            to.visitInsn(Opcodes.ICONST_0);
            to.visitInsn(Opcodes.IRETURN);
            to.visitMaxs(4, 2);
        }

        private void hashOfComponents(MethodVisitor to, Object[] arguments) {
            to.visitInsn(Opcodes.ICONST_0);
            for (int i = 2; i < arguments.length; i++) {
                Handle field = (Handle) arguments[i];
                Type type = Type.getType(field.getDesc());
                to.visitIntInsn(Opcodes.BIPUSH, 31);
                to.visitInsn(Opcodes.IMUL);
                to.visitVarInsn(Opcodes.ALOAD, 0);
                to.visitFieldInsn(Opcodes.GETFIELD, name, field.getName(), field.getDesc());
                if (type.getSort() >= Type.ARRAY) {
                    to.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "hashCode", "(Ljava/lang/Object;)I", false);
                } else {
                    to.visitMethodInsn(Opcodes.INVOKESTATIC, box(type), "hashCode", "(" + type + ")I", false);
                }
                to.visitInsn(Opcodes.IADD);
            }
            to.visitInsn(Opcodes.IRETURN);
            to.visitMaxs(4, 1);
        }

        /** {@code Name[first=1, second=2]}. */
        private void textOfComponents(MethodVisitor to, Object[] arguments) {
            String builder = "java/lang/StringBuilder";
            to.visitTypeInsn(Opcodes.NEW, builder);
            to.visitInsn(Opcodes.DUP);
            to.visitMethodInsn(Opcodes.INVOKESPECIAL, builder, "<init>", "()V", false);
            String before = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('$')) + 1).replaceFirst("^[0-9]+", "") + "[";
            for (int i = 2; i < arguments.length; i++) {
                Handle field = (Handle) arguments[i];
                Type type = Type.getType(field.getDesc());
                to.visitLdcInsn(before + field.getName() + "=");
                append(to, "Ljava/lang/String;");
                to.visitVarInsn(Opcodes.ALOAD, 0);
                to.visitFieldInsn(Opcodes.GETFIELD, name, field.getName(), field.getDesc());
                append(to, type.getSort() >= Type.ARRAY ? "Ljava/lang/Object;" : type.equals(Type.BYTE_TYPE) || type.equals(Type.SHORT_TYPE) ? "I" : type.getDescriptor());
                before = ", ";
            }
            to.visitLdcInsn(arguments.length == 2 ? before + "]" : "]");
            append(to, "Ljava/lang/String;");
            to.visitMethodInsn(Opcodes.INVOKEVIRTUAL, builder, "toString", "()Ljava/lang/String;", false);
            to.visitInsn(Opcodes.ARETURN);
            to.visitMaxs(4, 1);
        }

        private void append(MethodVisitor to, String type) {
            to.visitMethodInsn(Opcodes.INVOKEVIRTUAL, "java/lang/StringBuilder", "append", "(" + type + ")Ljava/lang/StringBuilder;", false);
        }

        /** A class of the same nest, so that it reaches the private method that holds the lambda's code. */
        private String lambda(String method, String factory, Type erased, Handle code, Type exact) {
            String own = name + "$$Lambda" + count++;
            Type[] captured = Type.getArgumentTypes(factory);
            String face = Type.getReturnType(factory).getInternalName();
            ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
            out.visit(version, Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC, own, null, "java/lang/Object", new String[] {face});
            out.visitNestHost(host);
            String constructor = Type.getMethodDescriptor(Type.VOID_TYPE, captured);
            MethodVisitor init = out.visitMethod(Opcodes.ACC_PRIVATE, "<init>", constructor, null, null);
            init.visitCode();
            init.visitVarInsn(Opcodes.ALOAD, 0);
            init.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
            for (int i = 0, at = 1; i < captured.length; at += captured[i++].getSize()) {
                out.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, "c" + i, captured[i].getDescriptor(), null, null);
                init.visitVarInsn(Opcodes.ALOAD, 0);
                init.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), at);
                init.visitFieldInsn(Opcodes.PUTFIELD, own, "c" + i, captured[i].getDescriptor());
            }
            init.visitInsn(Opcodes.RETURN);
            init.visitMaxs(0, 0);
            init.visitEnd();
            make(out, own, factory, captured, constructor);
            call(out, own, method, captured, erased, code, exact);
            out.visitEnd();
            made.put(own + ".class", out.toByteArray());
            nests.computeIfAbsent(host, h -> new ArrayList<>()).add(own);
            return own;
        }

        /** Without anything captured there is one object, as there would be. */
        private void make(ClassWriter out, String own, String factory, Type[] captured, String constructor) {
            MethodVisitor make = out.visitMethod(Opcodes.ACC_STATIC, "make", factory, null, null);
            make.visitCode();
            if (captured.length == 0) {
                out.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, "ONE", "L" + own + ";", null, null);
                MethodVisitor first = out.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
                first.visitCode();
                first.visitTypeInsn(Opcodes.NEW, own);
                first.visitInsn(Opcodes.DUP);
                first.visitMethodInsn(Opcodes.INVOKESPECIAL, own, "<init>", constructor, false);
                first.visitFieldInsn(Opcodes.PUTSTATIC, own, "ONE", "L" + own + ";");
                first.visitInsn(Opcodes.RETURN);
                first.visitMaxs(0, 0);
                first.visitEnd();
                make.visitFieldInsn(Opcodes.GETSTATIC, own, "ONE", "L" + own + ";");
            } else {
                make.visitTypeInsn(Opcodes.NEW, own);
                make.visitInsn(Opcodes.DUP);
                for (int i = 0, at = 0; i < captured.length; at += captured[i++].getSize()) {
                    make.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), at);
                }
                make.visitMethodInsn(Opcodes.INVOKESPECIAL, own, "<init>", constructor, false);
            }
            make.visitInsn(Opcodes.ARETURN);
            make.visitMaxs(0, 0);
            make.visitEnd();
        }

        private void call(ClassWriter out, String own, String method, Type[] captured, Type erased, Handle code, Type exact) {
            MethodVisitor to = out.visitMethod(Opcodes.ACC_PUBLIC, method, erased.getDescriptor(), null, null);
            to.visitCode();
            boolean makes = code.getTag() == Opcodes.H_NEWINVOKESPECIAL;
            boolean fixed = makes || code.getTag() == Opcodes.H_INVOKESTATIC;
            List<Type> wanted = new ArrayList<>(fixed ? List.of() : List.of(Type.getObjectType(code.getOwner())));
            wanted.addAll(List.of(Type.getArgumentTypes(code.getDesc())));
            if (makes) {
                to.visitTypeInsn(Opcodes.NEW, code.getOwner());
                to.visitInsn(Opcodes.DUP);
            }
            for (int i = 0; i < captured.length; i++) {
                to.visitVarInsn(Opcodes.ALOAD, 0);
                to.visitFieldInsn(Opcodes.GETFIELD, own, "c" + i, captured[i].getDescriptor());
            }
            Type[] given = erased.getArgumentTypes();
            for (int i = 0, at = 1; i < given.length; at += given[i++].getSize()) {
                to.visitVarInsn(given[i].getOpcode(Opcodes.ILOAD), at);
                Type seen = exact.getArgumentTypes()[i];
                cast(to, given[i], seen);
                convert(to, seen, wanted.get(captured.length + i));
            }
            int how = switch (code.getTag()) {
                case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
                case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
                default -> code.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
            };
            to.visitMethodInsn(how, code.getOwner(), code.getName(), code.getDesc(), code.isInterface());
            Type back = makes ? Type.getObjectType(code.getOwner()) : Type.getReturnType(code.getDesc());
            Type returned = erased.getReturnType();
            if (returned.getSort() == Type.VOID) {
                if (back.getSize() > 0) {
                    to.visitInsn(back.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
                }
            } else {
                convert(to, back, returned);
                cast(to, isReference(back) ? back : returned, returned);
            }
            to.visitInsn(returned.getOpcode(Opcodes.IRETURN));
            to.visitMaxs(0, 0);
            to.visitEnd();
        }
    }

    private static boolean isReference(Type type) {
        return type.getSort() >= Type.ARRAY;
    }

    private static void cast(MethodVisitor to, Type from, Type wanted) {
        if (isReference(from) && isReference(wanted) && !from.equals(wanted) && !wanted.getInternalName().equals("java/lang/Object")) {
            to.visitTypeInsn(Opcodes.CHECKCAST, wanted.getInternalName());
        }
    }

    /** Boxes, unboxes and widens, as an assignment would. */
    private static void convert(MethodVisitor to, Type from, Type wanted) {
        if (isReference(from) && isReference(wanted) || from.equals(wanted)) {
            return;
        }
        if (isReference(wanted)) {
            to.visitMethodInsn(Opcodes.INVOKESTATIC, box(from), "valueOf", "(" + from + ")L" + box(from) + ";", false);
            return;
        }
        Type plain = from;
        if (isReference(from)) {
            plain = plain(from).orElse(wanted);
            if (plain(from).isEmpty()) {
                to.visitTypeInsn(Opcodes.CHECKCAST, box(wanted));
            }
            to.visitMethodInsn(Opcodes.INVOKEVIRTUAL, box(plain), plain.getClassName() + "Value", "()" + plain, false);
        }
        widen(to, plain, wanted);
    }

    private static void widen(MethodVisitor to, Type from, Type wanted) {
        if (from.equals(wanted)) {
            return;
        }
        int instruction = switch (from.getDescriptor() + wanted.getDescriptor()) {
            case "IJ", "SJ", "BJ", "CJ" -> Opcodes.I2L;
            case "ID", "SD", "BD", "CD" -> Opcodes.I2D;
            case "IF", "SF", "BF", "CF" -> Opcodes.I2F;
            case "JD" -> Opcodes.L2D;
            case "JF" -> Opcodes.L2F;
            case "FD" -> Opcodes.F2D;
            case "SI", "BI", "CI", "BS" -> Opcodes.NOP;
            default -> throw new IllegalStateException(from + " is no " + wanted);
        };
        to.visitInsn(instruction);
    }

    private static java.util.Optional<Type> plain(Type boxed) {
        return Stream.of(Type.BOOLEAN_TYPE, Type.CHAR_TYPE, Type.BYTE_TYPE, Type.SHORT_TYPE, Type.INT_TYPE, Type.LONG_TYPE, Type.FLOAT_TYPE, Type.DOUBLE_TYPE)
                .filter(t -> box(t).equals(boxed.getInternalName())).findFirst();
    }

    private static String box(Type plain) {
        return switch (plain.getSort()) {
            case Type.BOOLEAN -> "java/lang/Boolean";
            case Type.CHAR -> "java/lang/Character";
            case Type.BYTE -> "java/lang/Byte";
            case Type.SHORT -> "java/lang/Short";
            case Type.INT -> "java/lang/Integer";
            case Type.LONG -> "java/lang/Long";
            case Type.FLOAT -> "java/lang/Float";
            case Type.DOUBLE -> "java/lang/Double";
            default -> throw new IllegalStateException(plain.getDescriptor());
        };
    }
}
