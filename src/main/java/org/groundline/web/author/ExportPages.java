package org.groundline.web.author;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Routes;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/// The school's own questions as files, in one archive.
final class ExportPages {
    private final Doors doors;

    ExportPages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        routes.get("/{school}/bank/own-questions.zip", Action.READ_BANK, this::send);
    }

    private void send(Context ctx, Actor actor) throws IOException {
        String name = actor.school().code() + "-questions.zip";
        ctx.contentType("application/zip")
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(archive(doors.ownFiles().of(actor)));
    }

    private static byte[] archive(Map<String, String> files) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var archive = new ZipOutputStream(bytes, UTF_8)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                archive.putNextEntry(new ZipEntry(file.getKey()));
                archive.write(file.getValue().getBytes(UTF_8));
                archive.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
