-- Questions as they were posed, papers, sittings, answers, marks.

-- A version of a question, copied here when it is first posed, so that the school's record is complete without the
-- program's files. Named by the SHA-256 of its canonical text.
create table question_version (
    school_id       uuid        not null references school,
    version         text        not null,
    question_id     text        not null,
    canonical       text        not null,
    predecessor     text,
    change          text,
    first_posed_at  timestamptz not null,
    primary key (school_id, version),
    foreign key (school_id, predecessor) references question_version (school_id, version),
    constraint version_is_a_digest check (version ~ '^[0-9a-f]{64}$'),
    constraint change_is_known check (change in ('editorial', 'substantive')),
    constraint change_needs_a_predecessor check ((change is null) = (predecessor is null))
);

-- The rules for a test: how many questions of which topics, how long.
create table blueprint (
    school_id       uuid        not null references school,
    id              uuid        not null,
    stakes          text        not null,
    name            text        not null,
    module          text        not null,
    minutes         integer     not null,
    rules           jsonb       not null,
    entered_at      timestamptz not null,
    primary key (school_id, id),
    unique (school_id, id, stakes),
    constraint stakes_are_known check (stakes in ('progress', 'final')),
    constraint time_is_sensible check (minutes between 1 and 480)
);

-- One assembled set of items. Practice has no blueprint: its paper grows by the item.
create table paper (
    school_id    uuid        not null references school,
    id           uuid        not null,
    stakes       text        not null,
    blueprint_id uuid,
    seed         bigint      not null,
    draw_version integer     not null,        -- of the generator that the seed was fed to
    bank_hash    text        not null,
    assembled_at timestamptz not null,
    primary key (school_id, id),
    unique (school_id, id, stakes),
    foreign key (school_id, blueprint_id, stakes) references blueprint (school_id, id, stakes),
    constraint stakes_are_known check (stakes in ('practice', 'progress', 'final')),
    constraint only_practice_has_no_blueprint check ((stakes = 'practice') = (blueprint_id is null))
);

-- A question as posed to one student: what the student may see. Frozen for ever.
create table item (
    school_id        uuid     not null,
    id               uuid     not null,
    paper_id         uuid     not null,
    position         integer  not null,       -- from 1
    question_id      text     not null,
    question_version text     not null,
    module           text     not null,
    topic            text     not null,
    objective        text     not null,
    level            text     not null,
    safety_critical  boolean  not null,
    seed             bigint   not null,
    drawn            jsonb    not null,       -- the values drawn, by name
    shown            jsonb    not null,       -- stem and options in their order, or stem and unit
    language         text     not null,
    primary key (school_id, id),
    unique (school_id, paper_id, position),
    unique (school_id, paper_id, id),
    foreign key (school_id, paper_id) references paper,
    foreign key (school_id, question_version) references question_version (school_id, version),
    constraint positions_count_from_one check (position >= 1)
);

-- What only marking may see of an item: key, accepted interval, intervals of known mistakes, rationale.
create table item_key (
    school_id uuid  not null,
    item_id   uuid  not null,
    key       jsonb not null,
    primary key (school_id, item_id),
    foreign key (school_id, item_id) references item
);

-- A test opened for an intake by a member of staff.
create table opening (
    school_id    uuid        not null,
    id           uuid        not null,
    stakes       text        not null,
    blueprint_id uuid        not null,
    intake_id    uuid        not null,
    opened_by    uuid        not null,
    opens_at     timestamptz not null,
    closes_at    timestamptz not null,
    place        text        not null,
    primary key (school_id, id),
    unique (school_id, id, stakes),
    foreign key (school_id, blueprint_id, stakes) references blueprint (school_id, id, stakes),
    foreign key (school_id, intake_id) references intake,
    foreign key (school_id, opened_by) references subject (school_id, id),
    constraint opening_closes_after_it_opens check (closes_at > opens_at),
    constraint place_is_not_endless check (length(place) <= 120)
);
create index opening_of_intake on opening (school_id, intake_id, closes_at);

-- One student sitting one paper.
create table sitting (
    school_id      uuid        not null,
    id             uuid        not null,
    stakes         text        not null,
    paper_id       uuid        not null,
    subject_id     uuid        not null,
    opening_id     uuid,
    policy_version integer     not null,
    scope          text        not null,      -- the module of a test, the topic of a practice
    started_at     timestamptz not null,
    deadline_at    timestamptz,               -- null: no clock (practice)
    handed_in_at   timestamptz,               -- null while it is open
    handed_in_by   text,
    annulled_at    timestamptz,
    primary key (school_id, id),
    unique (school_id, id, stakes),
    foreign key (school_id, paper_id, stakes) references paper (school_id, id, stakes),
    foreign key (school_id, subject_id) references subject,
    foreign key (school_id, opening_id, stakes) references opening (school_id, id, stakes),
    foreign key (school_id, policy_version) references policy (school_id, version),
    constraint sitting_ends_after_it_starts check (handed_in_at >= started_at),
    constraint only_practice_has_no_clock check ((stakes = 'practice') = (deadline_at is null)),
    constraint only_practice_has_no_opening check ((stakes = 'practice') = (opening_id is null)),
    constraint handing_in_has_a_hand check ((handed_in_at is null) = (handed_in_by is null)),
    constraint hand_is_known check (handed_in_by in ('student', 'clock', 'staff'))
);
create index sitting_of_subject on sitting (school_id, subject_id, stakes, scope, started_at);

-- A student sits an opened test once: two clicks do not make two sittings.
create unique index sitting_once_per_opening on sitting (school_id, opening_id, subject_id)
    where opening_id is not null and annulled_at is null;

-- One practice of a topic is open at a time.
create unique index practice_one_open on sitting (school_id, subject_id, scope)
    where stakes = 'practice' and handed_in_at is null and annulled_at is null;

create index sitting_running on sitting (school_id, deadline_at)
    where handed_in_at is null and annulled_at is null and deadline_at is not null;

-- What happened to a sitting, in order.
create table sitting_event (
    school_id  uuid        not null,
    id         uuid        not null,
    sitting_id uuid        not null,
    at         timestamptz not null,
    kind       text        not null,
    actor_id   uuid,                          -- null: the clock
    note_id    uuid,
    primary key (school_id, id),
    foreign key (school_id, sitting_id) references sitting,
    foreign key (school_id, actor_id) references subject (school_id, id),
    constraint kind_is_known check (kind in ('started', 'seat opened', 'extended', 'annulled', 'handed in'))
);
create index sitting_event_of_sitting on sitting_event (school_id, sitting_id, at);

-- One device and browser on which a sitting is open; opening it elsewhere starts the next seat.
create table seat (
    school_id  uuid        not null,
    sitting_id uuid        not null,
    number     integer     not null,          -- from 1
    session    bytea       not null,          -- digest of the log-in that holds it
    opened_at  timestamptz not null,
    primary key (school_id, sitting_id, number),
    foreign key (school_id, sitting_id) references sitting,
    constraint seats_count_from_one check (number >= 1)
);

-- A question that the student wants to come back to. Says nothing about right or wrong.
create table flag (
    school_id  uuid not null,
    sitting_id uuid not null,
    item_id    uuid not null,
    primary key (school_id, sitting_id, item_id),
    foreign key (school_id, sitting_id) references sitting,
    foreign key (school_id, item_id) references item
);

-- What a student gave, each time. The last counts: by seat, then sequence.
create table answer (
    school_id   uuid        not null,
    client_id   uuid        not null,         -- chosen by the browser; the same one twice is the same answer
    sitting_id  uuid        not null,
    item_id     uuid        not null,
    stakes      text        not null,
    seat        integer     not null,
    sequence    integer     not null,
    client_time timestamptz,                  -- evidence, never decides
    received_at timestamptz not null,
    raw         text        not null,         -- as typed
    reading     text        not null,         -- a letter, or a decimal in the item's unit
    primary key (school_id, client_id),
    foreign key (school_id, sitting_id, stakes) references sitting (school_id, id, stakes),
    foreign key (school_id, item_id) references item,
    foreign key (school_id, sitting_id, seat) references seat (school_id, sitting_id, number),
    constraint raw_is_short check (length(raw) between 1 and 64),
    constraint reading_is_a_letter_or_a_decimal check (reading ~ '^([A-D]|-?[0-9]{1,20}(\.[0-9]{1,20})?)$')
);
create index answer_of_sitting on answer (school_id, sitting_id, item_id, seat, sequence, received_at);

-- In practice the rationale follows at once, so an item takes one answer.
create unique index answer_once_in_practice on answer (school_id, item_id) where stakes = 'practice';

-- One marking of one sitting. All stay; result says which is current.
create table scoring_run (
    school_id       uuid        not null,
    id              uuid        not null,
    sitting_id      uuid        not null,
    scoring_version integer     not null,
    run_at          timestamptz not null,
    reason          text        not null,
    hundredths      integer     not null,     -- marks gained, in hundredths of a mark
    possible        integer     not null,     -- marks to be had, in hundredths
    passed          boolean     not null,
    primary key (school_id, id),
    unique (school_id, sitting_id, id),
    foreign key (school_id, sitting_id) references sitting,
    constraint reason_is_known check (reason in ('handed in', 'practice', 're-marked')),
    constraint marks_are_possible check (hundredths between 0 and possible)
);

create table mark (
    school_id       uuid    not null,
    run_id          uuid    not null,
    item_id         uuid    not null,
    subject_id      uuid    not null,
    topic           text    not null,
    safety_critical boolean not null,
    hundredths      integer not null,
    possible        integer not null,
    verdict         text    not null,
    misconception   text,
    answer_id       uuid,                     -- the answer that counted; null: unanswered
    primary key (school_id, run_id, item_id),
    foreign key (school_id, run_id) references scoring_run,
    foreign key (school_id, item_id) references item,
    foreign key (school_id, subject_id) references subject,
    foreign key (school_id, answer_id) references answer (school_id, client_id),
    constraint verdict_is_known check (verdict in ('right', 'wrong', 'unanswered')),
    constraint marks_are_possible check (hundredths between 0 and possible),
    constraint unanswered_has_no_answer check ((verdict = 'unanswered') = (answer_id is null))
);
create index mark_by_topic on mark (school_id, run_id, topic) include (subject_id, hundredths, possible);
create index mark_of_item on mark (school_id, item_id);

create table result (
    school_id  uuid not null,
    sitting_id uuid not null,
    current    uuid not null,                 -- the scoring run that counts
    primary key (school_id, sitting_id),
    foreign key (school_id, sitting_id, current) references scoring_run (school_id, sitting_id, id)
);

call protect_tenant_table('question_version', 'select, insert');
call protect_tenant_table('blueprint', 'select, insert');
call protect_tenant_table('paper', 'select, insert');
call protect_tenant_table('item', 'select, insert');
call protect_tenant_table('item_key', 'select, insert');
call protect_tenant_table('opening', 'select, insert, update (closes_at)');
call protect_tenant_table('sitting', 'select, insert, update');
call protect_tenant_table('sitting_event', 'select, insert');
call protect_tenant_table('seat', 'select, insert');
call protect_tenant_table('flag', 'select, insert, delete');
call protect_tenant_table('answer', 'select, insert');
call protect_tenant_table('scoring_run', 'select, insert');
call protect_tenant_table('mark', 'select, insert');
call protect_tenant_table('result', 'select, insert, update (current)');
