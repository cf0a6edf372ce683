-- Who takes part. A subject is the anchor of all records and says nothing about anybody; names and addresses lie in
-- person, which can be erased while the records stay.

create table subject (
    school_id  uuid        not null references school,
    id         uuid        not null,          -- random: a version 7 would tell when somebody came
    created_at timestamptz not null,
    primary key (school_id, id)
);

create table person (
    school_id        uuid not null,
    subject_id       uuid not null,
    given_name       text not null,
    family_name      text not null,
    email            text not null,           -- as typed
    email_normalised text not null,
    primary key (school_id, subject_id),
    foreign key (school_id, subject_id) references subject,
    constraint email_is_one_persons unique (school_id, email_normalised),
    constraint names_are_not_empty check (length(btrim(given_name)) between 1 and 80
                                      and length(btrim(family_name)) between 1 and 80),
    constraint email_is_plausible check (email_normalised ~ '^[^@[:space:]]+@[^@[:space:]]+$'
                                      and length(email_normalised) <= 254)
);

create table credential (
    school_id     uuid        not null,
    subject_id    uuid        not null,
    password_hash text        not null,       -- Argon2id with its parameters
    changed_at    timestamptz not null,
    primary key (school_id, subject_id),
    foreign key (school_id, subject_id) references subject
);

-- Tries to log in, for slowing down guessers. The address is kept as a digest only.
create table login_attempt (
    school_id    uuid        not null references school,
    id           uuid        not null,
    email_digest bytea       not null,
    at           timestamptz not null,
    succeeded    boolean     not null,
    primary key (school_id, id)
);
create index login_attempt_recent on login_attempt (school_id, email_digest, at);

create table session (
    school_id    uuid        not null,
    token_digest bytea       not null,        -- SHA-256 of the cookie's token
    subject_id   uuid        not null,
    created_at   timestamptz not null,
    seen_at      timestamptz not null,
    expires_at   timestamptz not null,
    ended_at     timestamptz,                 -- null while it runs
    primary key (school_id, token_digest),
    foreign key (school_id, subject_id) references subject
);

create table role_grant (
    school_id   uuid        not null,
    id          uuid        not null,
    subject_id  uuid        not null,
    role        text        not null,
    valid_from  timestamptz not null,
    valid_until timestamptz,                  -- null: until further notice
    granted_by  uuid,                         -- null: by the set-up of the school
    granted_at  timestamptz not null,
    primary key (school_id, id),
    foreign key (school_id, subject_id) references subject,
    foreign key (school_id, granted_by) references subject (school_id, id),
    constraint role_is_known check (role in ('student', 'instructor', 'invigilator', 'author', 'reviewer',
                                             'chief instructor', 'inspector', 'operator')),
    constraint role_ends_after_it_begins check (valid_until > valid_from)
);
create index role_grant_of_subject on role_grant (school_id, subject_id);

-- What an instructor may sign for, and until when.
create table authorisation (
    school_id      uuid   not null,
    id             uuid   not null,
    subject_id     uuid   not null,
    number         text   not null,
    discipline     text   not null,
    launch_methods text[] not null,
    issuer         text   not null,
    valid_from     date   not null,           -- days in the school's zone, both included
    valid_until    date   not null,
    primary key (school_id, id),
    foreign key (school_id, subject_id) references subject,
    constraint discipline_is_known check (discipline in ('paraglider', 'hang glider')),
    constraint launch_methods_are_known check (launch_methods <@ array['foot', 'winch', 'aerotow']),
    constraint authorisation_ends_after_it_begins check (valid_until >= valid_from)
);
create index authorisation_of_subject on authorisation (school_id, subject_id);

create table intake (
    school_id uuid not null references school,
    id        uuid not null,
    name      text not null,
    starts_on date not null,
    primary key (school_id, id),
    constraint intake_name_is_used_once unique (school_id, name)
);

create table intake_member (
    school_id  uuid not null,
    intake_id  uuid not null,
    subject_id uuid not null,
    joined_on  date not null,
    primary key (school_id, intake_id, subject_id),
    foreign key (school_id, intake_id) references intake,
    foreign key (school_id, subject_id) references subject
);
create index intake_member_of_subject on intake_member (school_id, subject_id);

-- Every rule number of the school, dated. A version is never edited; the next one replaces it.
create table policy (
    school_id  uuid        not null references school,
    version    integer     not null,
    in_force   timestamptz not null,
    entered_at timestamptz not null,
    entered_by uuid,                          -- null: the default at the set-up of the school
    rules      jsonb       not null,
    primary key (school_id, version),
    foreign key (school_id, entered_by) references subject (school_id, id),
    constraint versions_count_from_one check (version >= 1)
);

-- Free text by people about people: reasons, notes. Records point here and stay when a note is erased.
create table note (
    school_id  uuid        not null,
    id         uuid        not null,
    subject_id uuid        not null,          -- whom it is about
    written_by uuid        not null,
    written_at timestamptz not null,
    text       text        not null,
    primary key (school_id, id),
    foreign key (school_id, subject_id) references subject,
    foreign key (school_id, written_by) references subject (school_id, id),
    constraint note_is_not_endless check (length(text) between 1 and 4000)
);

call protect_tenant_table('subject', 'select, insert');
call protect_tenant_table('person', 'select, insert, update, delete');
call protect_tenant_table('credential', 'select, insert, update, delete');
call protect_tenant_table('login_attempt', 'select, insert, delete');
call protect_tenant_table('session', 'select, insert, update, delete');
call protect_tenant_table('role_grant', 'select, insert, update');
call protect_tenant_table('authorisation', 'select, insert, update');
call protect_tenant_table('intake', 'select, insert, update');
call protect_tenant_table('intake_member', 'select, insert, delete');
call protect_tenant_table('policy', 'select, insert');
call protect_tenant_table('note', 'select, insert, delete');
