package org.groundline.authoring;

import org.groundline.error.Refusal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/// The life of one question in a school: its editions and all that happened to them, each in order.
record Life(List<Edition> editions, List<Event> events, LocalDate today) {
    Life {
        editions = List.copyOf(editions);
        events = List.copyOf(events);
    }

    /// The edition that is asked today: of those approved for today the one approved last.
    Optional<Edition> live() {
        return events.stream()
                .filter(event -> event.kind() == Event.Kind.APPROVED)
                .flatMap(event -> event.edition().stream())
                .flatMap(id -> editions.stream().filter(e -> e.id().equals(id)))
                .filter(this::isAskable)
                .reduce((earlier, later) -> later);
    }

    private boolean isAskable(Edition edition) {
        return find(edition, Event.Kind.RETIRED).isEmpty()
                && validity(edition)
                        .filter(days -> days.hasBegun(today) && !days.isOver(today))
                        .isPresent();
    }

    State state(Edition edition) {
        Optional<Event.Validity> validity = validity(edition);
        if (find(edition, Event.Kind.RETIRED).isPresent()) {
            return State.RETIRED;
        }
        if (validity.isPresent()) {
            return approved(edition, validity.get());
        }
        if (find(edition, Event.Kind.SENT_BACK).isPresent()) {
            return State.SENT_BACK;
        }
        return find(edition, Event.Kind.SUBMITTED).isPresent() ? State.SUBMITTED : State.DRAFT;
    }

    private State approved(Edition edition, Event.Validity validity) {
        if (!validity.hasBegun(today)) {
            return State.REVIEWED;
        }
        return live().filter(edition::equals).isPresent() ? State.LIVE : State.RETIRED;
    }

    Optional<Event.Validity> validity(Edition edition) {
        return find(edition, Event.Kind.APPROVED).flatMap(Event::validity);
    }

    Optional<Event> find(Edition edition, Event.Kind kind) {
        return events.stream()
                .filter(
                        e ->
                                e.kind() == kind
                                        && e.edition().filter(edition.id()::equals).isPresent())
                .findFirst();
    }

    /// Whether the question is asked no more, whatever its editions say.
    boolean isWithdrawn() {
        return events.stream()
                .map(Event::kind)
                .filter(kind -> kind == Event.Kind.WITHDRAWN || kind == Event.Kind.RESTORED)
                .reduce((earlier, later) -> later)
                .filter(kind -> kind == Event.Kind.WITHDRAWN)
                .isPresent();
    }

    Optional<Edition> latest() {
        return editions.isEmpty() ? Optional.empty() : Optional.of(editions.getLast());
    }

    /// Refuses unless an edition is the latest one and stands there.
    ///
    /// @param deed what was to be done, such as `approved`
    void requireState(Edition edition, State needed, String deed) {
        if (latest().filter(edition::equals).isEmpty()) {
            throw new Refusal.Conflict(
                    "There is a newer edition of this question; only that one can be %s."
                            .formatted(deed));
        }
        if (state(edition) != needed) {
            throw new Refusal.Conflict(
                    "This edition is %s and cannot be %s.".formatted(state(edition).word(), deed));
        }
    }
}
