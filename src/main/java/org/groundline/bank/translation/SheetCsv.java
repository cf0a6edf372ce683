package org.groundline.bank.translation;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/// A sheet as comma-separated text (RFC 4180). A cell that a spreadsheet would take for a formula
/// is guarded with an apostrophe on the way out and unguarded on the way in.
final class SheetCsv {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final String GUARD = "'";

    /// What a spreadsheet may run (OWASP, *CSV Injection*, names these six), and the guard itself.
    private static final Pattern GUARDED = Pattern.compile("(?s)[-=+@\t\r'].*");

    private static final int MOST_PROBLEMS = 100;

    private SheetCsv() {}

    /// A row and its number in the sheet, where the header is row 1.
    record Numbered(int number, SheetRow row) {}

    static String write(List<SheetRow> rows) {
        StringWriter out = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out)) {
            csv.writeRecord(SheetRow.HEADER);
            rows.forEach(
                    row -> csv.writeRecord(row.cells().stream().map(SheetCsv::guard).toList()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    /// The rows, or none after noting why the text is no sheet.
    static List<Numbered> read(String text, Notes notes) {
        String csv = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        List<List<String>> records = records(csv, notes);
        if (notes.errors() > 0 || !isHeader(records, notes)) {
            return List.of();
        }
        List<Numbered> rows = new ArrayList<>();
        for (int i = 1; i < records.size(); i++) {
            List<String> cells = records.get(i);
            if (!isBlank(cells) && cells.size() == SheetRow.HEADER.size()) {
                rows.add(
                        new Numbered(
                                i + 1, SheetRow.of(cells.stream().map(SheetCsv::clean).toList())));
            } else if (!isBlank(cells) && notes.errors() < MOST_PROBLEMS) {
                notes.add(
                        Rule.SHAPE,
                        i + 1,
                        "row %d has %d cells".formatted(i + 1, cells.size()),
                        "a row has %d; export a new sheet and fill in its column 'translation'"
                                .formatted(SheetRow.HEADER.size()));
            }
        }
        return rows;
    }

    private static boolean isBlank(List<String> cells) {
        return cells.stream().allMatch(String::isBlank);
    }

    private static List<List<String>> records(String csv, Notes notes) {
        List<List<String>> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = rows().ofCsvRecord(csv)) {
            reader.forEach(line -> records.add(line.getFields()));
        } catch (CsvParseException e) {
            notes.add(
                    Rule.SHAPE,
                    records.size() + 1,
                    "row %d cannot be read: %s".formatted(records.size() + 1, e.getMessage()),
                    "save the sheet as comma-separated values in UTF-8");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return records;
    }

    /// Every row counts, also an empty or a short one, so that rows have the numbers that a
    /// spreadsheet shows.
    private static CsvReader.CsvReaderBuilder rows() {
        return CsvReader.builder()
                .skipEmptyLines(false)
                .allowExtraFields(true)
                .allowMissingFields(true);
    }

    private static boolean isHeader(List<List<String>> records, Notes notes) {
        boolean known = !records.isEmpty() && records.getFirst().equals(SheetRow.HEADER);
        if (!known) {
            notes.add(
                    Rule.SHAPE,
                    1,
                    "row 1 does not name the columns of a sheet",
                    "it reads %s, separated by commas, not semicolons"
                            .formatted(String.join(",", SheetRow.HEADER)));
        }
        return known;
    }

    static String guard(String cell) {
        return GUARDED.matcher(cell).matches() ? GUARD + cell : cell;
    }

    static String unguard(String cell) {
        boolean guarded = cell.startsWith(GUARD) && GUARDED.matcher(cell.substring(1)).matches();
        return guarded ? cell.substring(1) : cell;
    }

    /// The text that was exported, or that a translator typed.
    private static String clean(String cell) {
        return Normalizer.normalize(
                unguard(cell).replace("\r\n", "\n").strip(), Normalizer.Form.NFC);
    }
}
