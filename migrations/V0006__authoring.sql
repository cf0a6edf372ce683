-- What a school does with its question bank. Texts are only ever added; what becomes of them is told by events.

-- One text of one question, as its author wrote it, sound or not.
create table edition (
    school_id   uuid        not null references school,
    id          uuid        not null,
    question_id text        not null,
    number      integer     not null,          -- from 1, by question
    text        text        not null,          -- in the form of a topic file of the bank
    version     text,                          -- null: the text has errors
    predecessor text,                          -- the version it was begun from; null: a new question
    change      text,                          -- whether it asks the same in other words
    written_by  uuid        not null,
    written_at  timestamptz not null,
    primary key (school_id, id),
    unique (school_id, question_id, number),
    foreign key (school_id, written_by) references subject (school_id, id),
    constraint question_id_is_plain check (question_id ~ '^[a-z0-9]+(-[a-z0-9]+)*$' and length(question_id) <= 64),
    constraint editions_count_from_one check (number >= 1),
    constraint text_is_not_endless check (length(text) between 1 and 20000),
    constraint version_is_a_digest check (version ~ '^[0-9a-f]{64}$'),
    constraint predecessor_is_a_digest check (predecessor ~ '^[0-9a-f]{64}$'),
    constraint change_is_known check (change in ('editorial', 'substantive')),
    constraint change_needs_a_predecessor check ((change is null) = (predecessor is null))
);

-- What happened to an edition, or to a question as a whole.
create table bank_event (
    school_id   uuid        not null references school,
    id          uuid        not null,
    kind        text        not null,
    question_id text        not null,
    edition_id  uuid,                          -- null: the question as a whole
    valid_from  date,                          -- days of the school's zone, both included
    valid_until date,
    actor_id    uuid        not null,
    at          timestamptz not null,
    position    bigint      not null generated always as identity,   -- the order of what has the same instant
    remark_id   uuid,                          -- the reason, which may be erased
    primary key (school_id, id),
    foreign key (school_id, edition_id) references edition,
    foreign key (school_id, actor_id) references subject (school_id, id),
    constraint kind_is_known check (kind in ('submitted', 'sent back', 'approved', 'retired', 'withdrawn', 'restored')),
    constraint only_a_question_is_withdrawn check ((kind in ('withdrawn', 'restored')) = (edition_id is null)),
    constraint only_an_approval_is_dated check ((kind = 'approved') = (valid_from is not null)),
    constraint validity_ends_after_it_begins check (valid_until >= valid_from)
);
create index bank_event_of_question on bank_event (school_id, question_id, at);

-- Nothing happens to an edition twice.
create unique index bank_event_once on bank_event (school_id, edition_id, kind) where edition_id is not null;

-- What people write to each other about a question. May be erased.
create table remark (
    school_id   uuid        not null references school,
    id          uuid        not null,
    question_id text        not null,
    edition_id  uuid,
    written_by  uuid        not null,
    written_at  timestamptz not null,
    position    bigint      not null generated always as identity,   -- the order of what has the same instant
    text        text        not null,
    primary key (school_id, id),
    foreign key (school_id, edition_id) references edition,
    foreign key (school_id, written_by) references subject (school_id, id),
    constraint remark_is_not_endless check (length(text) between 1 and 4000)
);
create index remark_of_question on remark (school_id, question_id, written_at);

-- What a school's own questions may refer to beside what is shipped. The highest number counts.
create table own_misconception (
    school_id  uuid        not null references school,
    id         text        not null,
    number     integer     not null,
    wrong      text        not null,
    "right"    text        not null,
    feedback   text        not null,
    entered_by uuid        not null,
    entered_at timestamptz not null,
    primary key (school_id, id, number),
    foreign key (school_id, entered_by) references subject (school_id, id)
);

create table own_source (
    school_id  uuid        not null references school,
    id         text        not null,
    number     integer     not null,
    title      text        not null,
    publisher  text        not null,
    year       text        not null,           -- empty: it bears none
    read       text        not null,
    entered_by uuid        not null,
    entered_at timestamptz not null,
    primary key (school_id, id, number),
    foreign key (school_id, entered_by) references subject (school_id, id),
    constraint read_is_known check (read in ('verified', 'secondary', 'memory'))
);

-- Whose air law the school teaches. The latest counts.
create table jurisdiction_choice (
    school_id uuid        not null references school,
    id        uuid        not null,
    country   text        not null,            -- ISO 3166-1, two letters
    packs     text[]      not null,            -- shipped packs that hold there, such as EU
    chosen_by uuid        not null,
    chosen_at timestamptz not null,
    position  bigint      not null generated always as identity,
    primary key (school_id, id),
    foreign key (school_id, chosen_by) references subject (school_id, id),
    constraint country_is_a_code check (country ~ '^[A-Z]{2}$')
);

call protect_tenant_table('edition', 'select, insert');
call protect_tenant_table('bank_event', 'select, insert');
call protect_tenant_table('remark', 'select, insert, delete');
call protect_tenant_table('own_misconception', 'select, insert');
call protect_tenant_table('own_source', 'select, insert');
call protect_tenant_table('jurisdiction_choice', 'select, insert');
