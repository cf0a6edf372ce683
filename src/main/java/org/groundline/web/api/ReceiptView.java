package org.groundline.web.api;

import org.groundline.sitting.Receipt;

import java.time.Instant;
import java.util.UUID;

/// Says that an answer is kept; the same for the same answer however often it is sent.
///
/// @param readAs what was read, such as "5.3 km = 5300 m"
record ReceiptView(UUID clientId, UUID item, Instant receivedAt, String readAs) {
    static ReceiptView of(Receipt receipt) {
        return new ReceiptView(
                receipt.clientId(), receipt.item(), receipt.receivedAt(), receipt.echo());
    }
}
