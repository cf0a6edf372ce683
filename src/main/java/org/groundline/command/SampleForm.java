package org.groundline.command;

import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/// How a sample asks for a number.
@NullMarked
enum SampleForm {
    TYPED,
    CHOICE;

    static final class Reader implements ITypeConverter<SampleForm> {
        @Override
        public SampleForm convert(String word) {
            return switch (word) {
                case "typed" -> TYPED;
                case "choice" -> CHOICE;
                default ->
                        throw new TypeConversionException("'" + word + "' is not typed or choice");
            };
        }
    }
}
