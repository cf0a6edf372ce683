-- What must never change quietly. The server may add entries and read them, nothing else.

create table ledger_entry (
    school_id   uuid        not null references school,
    id          uuid        not null,
    kind        text        not null,
    happened_at timestamptz not null,         -- when it took place
    entered_at  timestamptz not null,         -- when it was written down
    body        text        not null,         -- canonical JSON; people appear as salted commitments
    primary key (school_id, id),
    constraint kind_is_known check (kind in ('sign-off', 'reversal', 'override', 'result', 'demonstration', 'debrief',
                                             'recommendation', 'authorisation', 'policy', 'role', 'question'))
);
create index ledger_entry_in_order on ledger_entry (school_id, entered_at, id);

-- Opens a commitment of an entry: without its salt nobody can tell whom the entry is about.
create table ledger_salt (
    school_id  uuid  not null,
    entry_id   uuid  not null,
    part       text  not null,                -- subject or actor
    subject_id uuid  not null,
    salt       bytea not null,
    primary key (school_id, entry_id, part),
    foreign key (school_id, entry_id) references ledger_entry,
    foreign key (school_id, subject_id) references subject,
    constraint part_is_known check (part in ('subject', 'actor')),
    constraint salt_has_128_bits check (length(salt) = 16)
);
create index ledger_salt_of_subject on ledger_salt (school_id, subject_id);

-- Who did what, in the transaction that did it.
create table audit_entry (
    school_id   uuid        not null references school,
    id          uuid        not null,
    at          timestamptz not null,
    actor_id    uuid,                         -- null: the program itself
    subject_id  uuid,                         -- whom it concerns, if anybody
    action      text        not null,
    object      text        not null,
    before_hash text,
    after_hash  text,
    request_id  text,
    primary key (school_id, id),
    foreign key (school_id, actor_id) references subject (school_id, id),
    foreign key (school_id, subject_id) references subject
);
create index audit_entry_in_order on audit_entry (school_id, at);

call protect_tenant_table('ledger_entry', 'select, insert');
call protect_tenant_table('ledger_salt', 'select, insert, delete');
call protect_tenant_table('audit_entry', 'select, insert');
